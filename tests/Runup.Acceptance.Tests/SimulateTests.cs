using System.Diagnostics;
using System.Text.Json;

namespace Runup.Acceptance.Tests;

public sealed class SimulateTests
{
    private static readonly string Site = Path.Combine(RunupProgram.Root, "demo", "ostrevad");

    [Fact]
    public async Task A_folder_s_drives_are_all_served_and_named_in_one_line()
    {
        using var scratch = new Scratch();
        using var process = RunupProgram.Start(scratch.Folder, "simulate", Site, "--json");
        try
        {
            var drives = JsonDocument.Parse((await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))!).RootElement.GetProperty("drives").EnumerateArray().ToList();
            drives.Select(d => d.GetProperty("tag").GetString()).Order(StringComparer.Ordinal).ShouldBe(["AB-201", "DF-401", "DG-601", "FS-301", "GH-501", "SWP-101"]);
            drives.Select(d => d.GetProperty("link").GetString()).Distinct().Count().ShouldBe(6);

            var fan = drives.Single(d => d.GetProperty("tag").GetString() == "DG-601").GetProperty("link").GetString()!;
            File.Copy(Path.Combine(Site, "dg-601.job.yaml"), Path.Combine(scratch.Folder, "dg-601.job.yaml"));
            var read = await RunupProgram.Call(scratch.Folder, "read", "dg-601.job.yaml", "--link", fan, "--json");
            read.Status.ShouldBe(0, read.Errors);
            read.Json.GetProperty("identity").GetString()!.ShouldContain("Osprey");
        }
        finally
        {
            await End(process);
        }
    }

    [Fact]
    public async Task A_person_beside_the_simulated_drives_types_what_they_do()
    {
        using var scratch = new Scratch();
        using var process = RunupProgram.Start(scratch.Folder, "simulate", Site);
        try
        {
            (await Typed(process, "status DG-601")).ShouldStartWith("stopped: 0.00 Hz, 0.00 A, DC bus ");
            (await Typed(process, "reset DG-601")).ShouldBe("nothing happens: there is no trip to reset");
            (await Typed(process, "run 20 Hz")).ShouldStartWith("of which drive? One of these tags would do: AB-201");
            (await Typed(process, "run gh-501 20")).ShouldContain("no unit");
            (await Typed(process, "run GH-501 20 Hz")).ShouldBe("run at the panel to 20 Hz");
            (await Typed(process, "run 10 Hz reverse GH-501")).ShouldBe("nothing happens: only forward is permitted");
            (await Typed(process, "stop GH-501")).ShouldBe("stopping");
            (await Typed(process, "stop SWP-101")).ShouldBe("nothing happens: it does not run from its panel");
            (await Typed(process, "power-cycle SWP-101")).ShouldBe("off and on again");
            (await Typed(process, "lift GH-501")).ShouldContain("is not known");
            (await Typed(process, "fault open u SWP-101")).ShouldBe("phase U to the motor is open");
            (await Typed(process, "fault SWP-101 earth V 20 ohm")).ShouldBe("phase V to the motor touches earth through 20 ohm");
            (await Typed(process, "fault short U W SWP-101")).ShouldBe("phases U and W to the motor touch");
            (await Typed(process, "fault short U U SWP-101")).ShouldContain("'short U U' is no fault that is known; open U");
            (await Typed(process, "fault earth U 20 SWP-101")).ShouldContain("no unit");
            (await Typed(process, "fault none SWP-101")).ShouldBe("nothing is wrong between drive and motor any more");
            (await Typed(process, "supply two-phases FS-301")).ShouldBe("nothing happens: its supply has one phase only");
            (await Typed(process, "supply two-phases SWP-101")).ShouldBe("a phase of the supply is missing");
            (await Typed(process, "supply off SWP-101")).ShouldBe("the supply is gone");
            (await Typed(process, "supply on SWP-101")).ShouldBe("the supply is there, with all its phases");
            (await Typed(process, "supply sideways SWP-101")).ShouldContain("supply off, supply on or supply two-phases would do");
            (await Typed(process, "input 4 on AB-201")).ShouldStartWith("nothing happens: its input 4 is for nothing");
            (await Typed(process, "input four on AB-201")).ShouldContain("input 3 on would do");
            (await Typed(process, "uncouple AB-201")).ShouldBe("the motor turns alone");
            (await Typed(process, "couple AB-201")).ShouldBe("the machine is on the motor's shaft");
            (await Typed(process, "tuned AB-201")).ShouldBe("it has not measured its motor");
            (await Typed(process, "tune AB-201")).ShouldStartWith("it measures its motor, which stays at rest");
            (await Typed(process, "tune turning AB-201")).ShouldBe("nothing happens: it is measuring its motor already");
            (await Typed(process, "tuned AB-201")).ShouldBe("it is still measuring");
        }
        finally
        {
            await End(process);
        }
    }

    [Fact]
    public async Task Two_jobs_of_one_tag_are_refused_with_both_files_named()
    {
        using var scratch = new Scratch();
        File.Copy(Path.Combine(Site, "dg-601.job.yaml"), Path.Combine(scratch.Folder, "dg-601.job.yaml"));
        File.Copy(Path.Combine(Site, "dg-601.job.yaml"), Path.Combine(scratch.Folder, "copy.job.yaml"));

        var run = await RunupProgram.Call(scratch.Folder, "simulate", ".");

        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("copy.job.yaml and ./dg-601.job.yaml have the same tag 'DG-601'");
    }

    [Fact]
    public async Task Ports_beyond_the_last_are_refused_before_anything_is_served()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "simulate", Site, "--tcp", "65533");
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("6 drives");
        run.ShowsNoInsides();
    }

    private static async Task<string> Typed(Process process, string line)
    {
        await process.StandardInput.WriteLineAsync(line);
        await process.StandardInput.FlushAsync();
        return (await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken))!;
    }

    private static async Task End(Process process)
    {
        await process.StandardInput.WriteLineAsync("end");
        await process.StandardInput.FlushAsync();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        await process.WaitForExitAsync(patience.Token);
    }
}
