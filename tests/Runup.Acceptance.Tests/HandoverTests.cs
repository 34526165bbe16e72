using System.Security.Cryptography;
using Microsoft.Data.Sqlite;
using Runup.Commissioning.Handover;

namespace Runup.Acceptance.Tests;

/// <summary>What a person holds in hand at the end.</summary>
[Collection(DemoRun.Name)]
public sealed class HandoverTests(DemoRun demo)
{
    [Fact]
    public async Task A_set_of_which_nothing_was_done_says_so_and_has_no_restore_file()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();

        var run = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");

        run.Status.ShouldBe(0, run.Errors);
        run.Json.GetProperty("restore").GetString().ShouldBeNull();
        run.Json.GetProperty("open").EnumerateArray().Select(o => o.GetProperty("subject").GetString()).ShouldContain("Entry");
        var page = await File.ReadAllTextAsync(run.Json.GetProperty("report").GetString()!);
        page.ShouldContain("Nothing was entered into the drive.");
        page.ShouldContain("No step of it was done: the motor was not run under Runup.");
    }

    [Fact]
    public async Task The_demo_ends_with_files_that_agree_with_its_record()
    {
        demo.Run.Status.ShouldBe(0, demo.Run.Errors);
        demo.Run.Output.ShouldContain("SWP-101.handover.html");
        var folder = Path.Combine(demo.Folder, "handover");
        var report = await File.ReadAllBytesAsync(Path.Combine(folder, "SWP-101.handover.html"));
        var restore = RestoreText.Read(await File.ReadAllTextAsync(Path.Combine(folder, "SWP-101.restore.json"))).ShouldBeOfType<RestoreReading.Read>().File;
        var recorded = Bodies(Path.Combine(demo.Folder, "runup.db"));

        recorded.ShouldContain(b => b.Body.Contains(Convert.ToHexStringLower(SHA256.HashData(report)), StringComparison.Ordinal));
        recorded.Select(b => b.Hash).ShouldContain(restore.ChainHead);
        System.Text.Encoding.UTF8.GetString(report).ShouldContain(restore.ChainHead);
        System.Text.Encoding.UTF8.GetString(report).ShouldContain(restore.Checksum);
        restore.Parameters.Single(p => p.Parameter == "107").Display.ShouldBe("1460");
    }

    [Fact]
    public async Task Tags_that_differ_only_in_signs_have_files_of_their_own()
    {
        using var scratch = new Scratch();
        var names = new List<string>();
        foreach (var (tag, name) in ((string, string)[])[("SWP/101", "a"), ("SWP 101", "b"), ("SWP-101", "c")])
        {
            var job = scratch.Write($"{name}.job.yaml", await File.ReadAllTextAsync(scratch.DemoJob(text => text.Replace("tag: SWP-101", $"tag: {tag}", StringComparison.Ordinal))));
            var run = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");
            names.Add(Path.GetFileName(run.Json.GetProperty("report").GetString()!));
        }

        names.Distinct(StringComparer.OrdinalIgnoreCase).Count().ShouldBe(3);
        names[2].ShouldBe("SWP-101.handover.html");
    }

    internal static List<(string Hash, string Body)> Bodies(string database)
    {
        using var connection = new SqliteConnection($"Data Source={database};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT hash, body FROM entries ORDER BY sequence";
        using var reader = command.ExecuteReader();
        var bodies = new List<(string, string)>();
        while (reader.Read())
        {
            bodies.Add((reader.GetString(0), reader.GetString(1)));
        }

        return bodies;
    }
}
