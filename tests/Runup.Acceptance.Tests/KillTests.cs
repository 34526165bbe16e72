using System.Diagnostics;
using System.Text;
using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary>
/// The program is killed again and again at seeded moments of an entry; whatever was under way, the next entry says what had
/// been done and finishes, and no parameter ends unverified and unnamed.
/// </summary>
public sealed class KillTests
{
    private const int KillsForEachDrive = 5;
    private static readonly int Drives = Environment.GetEnvironmentVariable("RUNUP_LONG") is null ? 2 : 40;
    private static readonly string[] Confirmed = ["--by", "A. Tester", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending"];

    [Fact]
    public async Task No_parameter_ends_unverified_and_unnamed_whenever_the_program_is_killed()
    {
        var duringWrites = 0;
        for (var seed = 1; seed <= Drives; seed++)
        {
            duringWrites += await OneDrive(seed);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{Drives * KillsForEachDrive} kills, {duringWrites} drives whose last entry went on with one that had been cut off");
        duringWrites.ShouldBeGreaterThan(0);
    }

    private static async Task<int> OneDrive(int seed)
    {
        var random = new Random(seed);
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        await using var simulator = await Simulator.Start(scratch, job);
        var length = await WholeEntry(job);
        for (var kill = 0; kill < KillsForEachDrive; kill++)
        {
            using var process = RunupProgram.Start(scratch.Folder, ["enter", job, "--link", simulator.Link, "--json", .. Confirmed]);
            process.StandardInput.Close();
            await RecordGrows(scratch.Folder, process);
            await Task.Delay(length * random.NextDouble(), TestContext.Current.CancellationToken);
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        }

        var (last, resumed) = await Finish(scratch, job, simulator);
        last.GetProperty("failed").GetArrayLength().ShouldBe(0, last.ToString());
        last.GetProperty("proved_after_power_cycle").GetBoolean().ShouldBeTrue(last.ToString());

        var sheet = (await RunupProgram.Call(scratch.Folder, "sheet", job, "--json")).Json.EnumerateArray()
            .Where(l => l.GetProperty("parameter").ValueKind == JsonValueKind.String && l.GetProperty("raw").ValueKind == JsonValueKind.Number).ToList();
        (last.GetProperty("verified").GetInt32() + last.GetProperty("skipped").GetInt32()).ShouldBe(sheet.Count);
        var held = (await RunupProgram.Call(scratch.Folder, "read", job, "--link", simulator.Link, "--json")).Json.GetProperty("parameters").EnumerateArray()
            .ToDictionary(p => p.GetProperty("parameter").GetString()!, p => p.GetProperty("raw").GetInt64());
        foreach (var line in sheet)
        {
            held[line.GetProperty("parameter").GetString()!].ShouldBe(line.GetProperty("raw").GetInt64(), $"seed {seed}, parameter {line.GetProperty("parameter")}");
        }

        return resumed ? 1 : 0;
    }

    /// <summary>How long an entry goes on after it has begun its record, on a drive and a folder of its own.</summary>
    private static async Task<TimeSpan> WholeEntry(string job)
    {
        using var scratch = new Scratch();
        var copy = scratch.Write("swp-101.job.yaml", await File.ReadAllTextAsync(job));
        await using var simulator = await Simulator.Start(scratch, copy);
        using var process = RunupProgram.Start(scratch.Folder, ["enter", copy, "--link", simulator.Link, .. Confirmed]);
        process.StandardInput.Close();
        await RecordGrows(scratch.Folder, process);
        var begun = Stopwatch.GetTimestamp();
        await process.WaitForExitAsync();
        return Stopwatch.GetElapsedTime(begun);
    }

    /// <summary>Waits until a program writes into the record, or has ended.</summary>
    private static async Task RecordGrows(string folder, Process process)
    {
        var before = Sizes(folder);
        while (!process.HasExited && Sizes(folder) == before)
        {
            await Task.Delay(2);
        }
    }

    private static string Sizes(string folder) => string.Join(
        ' ', new DirectoryInfo(folder).GetFiles("runup.db*").OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => $"{f.Name}{f.Length}{f.LastWriteTimeUtc.Ticks}"));

    /// <summary>An entry that is not killed; its person switches the drive off and on when asked.</summary>
    private static async Task<(JsonElement Json, bool Resumed)> Finish(Scratch scratch, string job, Simulator simulator)
    {
        using var process = RunupProgram.Start(scratch.Folder, ["enter", job, "--link", simulator.Link, "--json", .. Confirmed]);
        var output = process.StandardOutput.ReadToEndAsync();
        var asked = new StringBuilder();
        var buffer = new char[256];
        while (await process.StandardError.ReadAsync(buffer) is > 0 and var count)
        {
            asked.Append(buffer, 0, count);
            if (asked.ToString().Contains("[power-cycle] yes or no: ", StringComparison.Ordinal))
            {
                await simulator.PowerCycle();
                await process.StandardInput.WriteLineAsync("yes");
                await process.StandardInput.FlushAsync();
                asked.Clear();
            }
        }

        await process.WaitForExitAsync();
        var text = await output;
        process.ExitCode.ShouldBe(0, text + asked);
        var json = JsonDocument.Parse(text).RootElement;
        return (json, json.GetProperty("resumed").GetBoolean());
    }
}
