using System.Text;
using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary>A scripted person types at the terminal, as one does who stands before the drive's own display.</summary>
public sealed class ByHandTests
{
    private const string Enter = "\n";
    private const string Prompt = ", b, q: ";
    private static readonly string[] Confirmed =
        ["--by", "A. Tester", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending", "--confirm", "told-to-keep", "--confirm", "power-cycle"];

    public static TheoryData<string> Makes => ["tern", "osprey"];

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task A_sheet_is_entered_by_eye_and_told_apart_from_one_that_was_read_back(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        var run = await RunupProgram.Call(scratch.Folder, ["enter", job, "--by-hand", "--json", .. Confirmed], Enters(400));
        run.Status.ShouldBe(0, run.Errors);
        var json = run.Json;
        json.GetProperty("failed").GetArrayLength().ShouldBe(0);
        json.GetProperty("verified").GetInt32().ShouldBe(0);
        json.GetProperty("verified_by_eye").GetInt32().ShouldBe(json.GetProperty("written").GetInt32());
        json.GetProperty("written").GetInt32().ShouldBeGreaterThan(10);
        json.GetProperty("proved_after_power_cycle").GetBoolean().ShouldBeFalse();
        json.GetProperty("seen_after_power_cycle").GetBoolean().ShouldBeTrue();
        json.GetProperty("by_hand").GetBoolean().ShouldBeTrue();

        var handover = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");
        handover.Json.GetProperty("open").EnumerateArray().ShouldContain(o => o.GetProperty("subject").GetString() == "Verified by eye");
        var report = await File.ReadAllTextAsync(handover.Json.GetProperty("report").GetString()!, TestContext.Current.CancellationToken);
        report.ShouldContain("verified by eye on the drive");
        report.ShouldNotContain("verified by read-back");
    }

    [Theory]
    [InlineData("tern", "131", "104")]
    [InlineData("osprey", "2110h", "2101h")]
    public async Task What_chooses_a_unit_is_asked_first_and_twice(string make, string chooser, string power)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["read", Job(scratch, make), "--by-hand", "--by", "A. Tester"], "hp\nhp\n7,457\nq\n");
        run.Status.ShouldBe(1);
        var lines = run.Errors.Split('\n');
        var first = Array.FindIndex(lines, l => l.Contains($"  {chooser}  ", StringComparison.Ordinal));
        first.ShouldBeLessThan(Array.FindIndex(lines, l => l.Contains($"  {power}  ", StringComparison.Ordinal)) is var at and >= 0 ? at : int.MaxValue);
        run.Errors.ShouldContain("Look once more");
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task Only_part_is_asked_and_which_is_said_and_all_asks_every_one(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        var part = await RunupProgram.Call(scratch.Folder, ["read", job, "--by-hand", "--json"], Enters(400));
        part.Status.ShouldBe(0, part.Errors);
        part.Errors.ShouldContain("--all: every one");
        var few = part.Json.GetProperty("parameters").GetArrayLength();
        few.ShouldBeInRange(25, 60);

        var whole = await RunupProgram.Call(scratch.Folder, ["read", job, "--by-hand", "--all", "--json"], Enters(400));
        whole.Status.ShouldBe(0, whole.Errors);
        whole.Json.GetProperty("parameters").GetArrayLength().ShouldBeGreaterThan(100);
    }

    [Fact]
    public async Task Nonsense_gets_one_line_that_says_what_the_display_could_show()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["read", Job(scratch, "tern"), "--by-hand"], "\n\n\n900\nvolts\ns\n400,0,0\n\nq\n");
        run.Errors.Split('\n').Count(l => l.Contains("it can't show: of size 7.5-400 it shows 100 to 500 V.", StringComparison.Ordinal)).ShouldBe(3);
        run.Errors.ShouldContain("Say why it is left out");
        run.Status.ShouldBe(1);
        run.ShowsNoInsides();
    }

    [Fact]
    public async Task Without_the_confirmations_nothing_is_asked_to_be_set()
    {
        using var scratch = new Scratch();
        var job = Job(scratch, "tern");
        (await RunupProgram.Call(scratch.Folder, ["read", job, "--by-hand"], Enters(400))).Status.ShouldBe(0);
        var run = await RunupProgram.Call(scratch.Folder, ["enter", job, "--by-hand", "--json"], "yes\nno\n");
        run.Status.ShouldBe(4);
        run.Errors.ShouldNotContain("SET IT TO");
        run.Errors.ShouldContain("Before the first write: ");
        run.Json.GetProperty("written").GetInt32().ShouldBe(0);
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task Who_stops_keeps_all_and_the_next_call_goes_on_with_the_next_question(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        var answers = 0;
        for (var calls = 0; ; calls++)
        {
            calls.ShouldBeLessThan(40);
            var run = await RunupProgram.Call(scratch.Folder, ["enter", job, "--by-hand", "--json", .. Confirmed], calls % 2 == 0 ? $"{Enters(7)}q\n" : Enters(7));
            answers += 7;
            if (run.Status == 0)
            {
                run.Json.GetProperty("failed").GetArrayLength().ShouldBe(0);
                run.Json.GetProperty("resumed").GetBoolean().ShouldBeTrue();
                break;
            }

            run.Status.ShouldBe(1, run.Errors);
            run.Errors.ShouldContain("NOT FINISHED");
            run.Errors.ShouldContain("call again to go on");
        }

        // Fewer than when each call began anew: what was answered stays answered.
        answers.ShouldBeLessThan(150);
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task Killed_at_any_question_it_goes_on_with_what_was_under_way(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        for (var kill = 0; kill < 3; kill++)
        {
            await KillAfter(scratch, job, 15 + kill);
        }

        var last = await RunupProgram.Call(scratch.Folder, ["enter", job, "--by-hand", "--json", .. Confirmed], Enters(400));
        last.Status.ShouldBe(0, last.Errors);
        last.Json.GetProperty("failed").GetArrayLength().ShouldBe(0);
        last.Json.GetProperty("resumed").GetBoolean().ShouldBeTrue();
        last.Json.GetProperty("under_way_at_cut").ValueKind.ShouldBe(JsonValueKind.String);
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task Restore_by_hand_asks_for_what_was_found(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        (await RunupProgram.Call(scratch.Folder, ["enter", job, "--by-hand", .. Confirmed], Enters(400))).Status.ShouldBe(0);
        var run = await RunupProgram.Call(scratch.Folder, ["restore", job, "--by-hand", .. Confirmed], Enters(400));
        run.Status.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("put back to as found");
        run.Errors.ShouldContain("as it was found");
    }

    [Fact]
    public async Task What_was_read_by_hand_is_the_same_drive_over_a_link()
    {
        using var scratch = new Scratch();
        var job = Job(scratch, "tern");
        var hand = await RunupProgram.Call(scratch.Folder, ["read", job, "--by-hand", "--json"], Enters(400));
        await using var simulator = await Simulator.Start(scratch, job);
        var link = await RunupProgram.Call(scratch.Folder, "read", job, "--link", simulator.Link, "--json");
        link.Json.GetProperty("identity").GetString().ShouldBe(hand.Json.GetProperty("identity").GetString());
    }

    [Theory]
    [InlineData("--by-hand", "--link", "tcp://127.0.0.1:9/1")]
    [InlineData("--all", "--link", "tcp://127.0.0.1:9/1")]
    public async Task Two_ways_at_once_are_bad_input(params string[] ways)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["read", Job(scratch, "tern"), .. ways]);
        run.Status.ShouldBe(2);
        run.ShowsNoInsides();
    }

    private static string Job(Scratch scratch, string make) => scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));

    private static string Enters(int count) => string.Concat(Enumerable.Repeat(Enter, count));

    /// <summary>Answers some questions and kills the program while it waits for the next.</summary>
    private static async Task KillAfter(Scratch scratch, string job, int answers)
    {
        using var process = RunupProgram.Start(scratch.Folder, ["enter", job, "--by-hand", .. Confirmed]);
        var (asked, buffer) = (new StringBuilder(), new char[256]);
        for (var answered = 0; await process.StandardError.ReadAsync(buffer, TestContext.Current.CancellationToken) is > 0 and var count;)
        {
            asked.Append(buffer, 0, count);
            if (!asked.ToString().EndsWith(Prompt, StringComparison.Ordinal))
            {
                continue;
            }

            if (answered++ == answers)
            {
                break;
            }

            asked.Clear();
            await process.StandardInput.WriteAsync(Enter.AsMemory(), TestContext.Current.CancellationToken);
            await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        }

        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }
}
