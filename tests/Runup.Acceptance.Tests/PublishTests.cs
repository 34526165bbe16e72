using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Runup.Acceptance.Tests;

/// <summary>The folder to hand out, run where there is no SDK, no home and nothing in the environment.</summary>
public sealed class PublishTests
{
    private static readonly string Runtime = RuntimeInformation.OSArchitecture is Architecture.Arm64 ? "linux-arm64" : "linux-x64";

    [Fact]
    public async Task The_folder_to_hand_out_needs_nothing_but_itself()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the folder for Linux is tried under Linux");
        using var scratch = new Scratch();
        var folder = Path.Combine(scratch.Folder, "a folder with blanks");
        Begins(await Run(Path.Combine(RunupProgram.Root, "runup"), scratch.Folder, bare: false, "publish", folder, Runtime), $"{Path.Combine(folder, Runtime)} (");

        var program = Path.Combine(folder, Runtime, "runup");
        var elsewhere = Directory.CreateDirectory(Path.Combine(scratch.Folder, "some where else")).FullName;
        File.Copy(Path.Combine(folder, Runtime, "demo", "ostrevad", "swp-101.job.yaml"), Path.Combine(elsewhere, "swp-101.job.yaml"));
        Begins(await Run(program, elsewhere, bare: true, "--version"), "0.");
        Begins(await Run(program, elsewhere, bare: true, "check", "swp-101.job.yaml", "--json"), "{");
        Begins(await Run(program, elsewhere, bare: true, "sheet", "swp-101.job.yaml", "--must", "--xlsx", "s.xlsx"), "SWP-101: ");
        Begins(await Run(program, elsewhere, bare: true, "demo", "a demo"), "");
        Directory.EnumerateFiles(Path.Combine(elsewhere, "a demo", "handover")).Select(Path.GetFileName).ShouldContain("SWP-101.handover.html");
        File.ReadAllText(Path.Combine(folder, Runtime, "README.txt")).ShouldContain("runup --help");

        var again = await Run(Path.Combine(RunupProgram.Root, "runup"), scratch.Folder, bare: false, "publish", folder, Runtime);
        again.Status.ShouldBe(2);
    }

    [Fact]
    public async Task A_system_that_is_not_served_is_said()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the script for Linux is tried under Linux");
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "publish", "out", "amiga-68000");
        run.Status.ShouldBe(2);
        run.Errors.ShouldBe("runup: there is no runtime 'amiga-68000' to publish for; win-x64, linux-x64 or linux-arm64 would do\n");
        Directory.Exists(Path.Combine(scratch.Folder, "out")).ShouldBeFalse();
    }

    [Fact]
    public async Task All_three_systems_get_a_program_of_their_own()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.GetEnvironmentVariable("RUNUP_LONG") is not null, "the slow lane publishes for every system");
        using var scratch = new Scratch();
        (await Run(Path.Combine(RunupProgram.Root, "runup"), scratch.Folder, bare: false, "publish", "out")).Status.ShouldBe(0);

        // Marks of the formats: PE with the machine's number after its header (8664h), ELF with the machine at byte 18 (3Eh, B7h).
        var windows = Bytes("win-x64", "runup.exe");
        BitConverter.ToUInt16(windows, BitConverter.ToInt32(windows, 0x3C) + 4).ShouldBe((ushort)0x8664);
        Bytes("linux-x64", "runup")[18].ShouldBe((byte)0x3E);
        Bytes("linux-arm64", "runup")[18].ShouldBe((byte)0xB7);
        foreach (var system in (string[])["win-x64", "linux-x64", "linux-arm64"])
        {
            File.Exists(Path.Combine(scratch.Folder, "out", system, "data", "drives", "tern.drive.yaml")).ShouldBeTrue();
            File.Exists(Path.Combine(scratch.Folder, "out", system, "demo", "ostrevad", "swp-101.job.yaml")).ShouldBeTrue();
        }

        File.ReadAllText(Path.Combine(scratch.Folder, "out", "win-x64", "README.txt")).ShouldContain("\r\n");

        byte[] Bytes(string system, string file) => File.ReadAllBytes(Path.Combine(scratch.Folder, "out", system, file));
    }

    private static void Begins((int Status, string Output, string Errors) run, string output)
    {
        run.Status.ShouldBe(0, run.Errors);
        run.Output.TrimStart().ShouldStartWith(output);
    }

    private static async Task<(int Status, string Output, string Errors)> Run(string program, string folder, bool bare, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        if (bare)
        {
            start.Environment.Clear();
            start.Environment["PATH"] = "/usr/bin:/bin";
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(10));
        await process.WaitForExitAsync(limit.Token);
        return (process.ExitCode, await output, await errors);
    }
}
