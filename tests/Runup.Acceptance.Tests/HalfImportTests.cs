using System.Diagnostics;

namespace Runup.Acceptance.Tests;

/// <summary>An import that ends in the middle leaves a good profile as it is.</summary>
public sealed class HalfImportTests
{
    private const string Good = "drive-profile: 1\n# a person's work of half an hour\n";
    private const int Limit = 8 * 1024;

    private static readonly string Table = Path.Combine(RunupProgram.Root, "tests", "Runup.Files.Tests", "Suggestion", "Tables", "rail.csv");

    /// <summary>The system ends a program that writes beyond a limit on the size of files: here after 8 KiB of a draft of 25.</summary>
    [Fact]
    public async Task What_is_cut_off_while_it_writes_leaves_the_profile_and_the_next_import_goes_through()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "there is no limit on the size of files here");
        using var scratch = new Scratch();
        var profile = Path.Combine(scratch.Folder, "wren.drive.yaml");
        await File.WriteAllTextAsync(profile, Good, TestContext.Current.CancellationToken);
        (await RunupProgram.Call(scratch.Folder, "--version")).Status.ShouldBe(0);

        var status = await Limited(scratch.Folder, $"ulimit -f {Limit / 1024}; exec '{RunupProgram.Root}/runup' profile import '{Table}' --to wren --replace");
        status.ShouldNotBe(0);
        new FileInfo(profile + ".part").Length.ShouldBeInRange(1, Limit);
        (await File.ReadAllTextAsync(profile, TestContext.Current.CancellationToken)).ShouldBe(Good);

        (await RunupProgram.Call(scratch.Folder, "profile", "import", Table, "--to", "wren", "--replace")).Status.ShouldBe(0);
        new FileInfo(profile).Length.ShouldBeGreaterThan(2 * Limit);
        File.Exists(profile + ".part").ShouldBeFalse();
    }

    [Fact]
    public async Task What_cannot_be_written_is_said_and_leaves_the_profile()
    {
        using var scratch = new Scratch();
        var profile = Path.Combine(scratch.Folder, "wren.drive.yaml");
        await File.WriteAllTextAsync(profile, Good, TestContext.Current.CancellationToken);
        Directory.CreateDirectory(profile + ".part");
        var run = await RunupProgram.Call(scratch.Folder, "profile", "import", Table, "--to", "wren", "--replace");
        run.Status.ShouldNotBe(0);
        run.Errors.Trim().Split('\n').Count(l => l.Contains("wren.drive.yaml.part", StringComparison.Ordinal) && l.Contains("would do", StringComparison.Ordinal)).ShouldBe(1);
        run.ShowsNoInsides();
        (await File.ReadAllTextAsync(profile, TestContext.Current.CancellationToken)).ShouldBe(Good);
    }

    private static async Task<int> Limited(string folder, string command)
    {
        var start = new ProcessStartInfo("/bin/bash", ["-c", command]) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };

        // Both make the runtime itself write large files at its start.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        using var process = Process.Start(start) ?? throw new InvalidOperationException("The shell did not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(3));
        await process.WaitForExitAsync(limit.Token);
        await Task.WhenAll(output, errors);
        return process.ExitCode;
    }
}
