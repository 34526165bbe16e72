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
            (await Typed(process, "run 20 Hz")).ShouldStartWith("of which drive? One of these tags would do: AB-201");
            (await Typed(process, "run gh-501 20")).ShouldContain("no unit");
            (await Typed(process, "run GH-501 20 Hz")).ShouldBe("run at the panel to 20 Hz");
            (await Typed(process, "run 10 Hz reverse GH-501")).ShouldBe("nothing happens: only forward is permitted");
            (await Typed(process, "stop GH-501")).ShouldBe("stopping");
            (await Typed(process, "stop SWP-101")).ShouldBe("nothing happens: it does not run from its panel");
            (await Typed(process, "power-cycle SWP-101")).ShouldBe("off and on again");
            (await Typed(process, "lift GH-501")).ShouldContain("is not known");
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
