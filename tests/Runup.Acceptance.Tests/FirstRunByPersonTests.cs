using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary>A scripted person runs the motor at the drive's panel and types in what it shows.</summary>
public sealed class FirstRunByPersonTests
{
    private const string By = "A. Tester";

    public static TheoryData<string> Makes => ["tern", "osprey"];

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task A_first_run_is_typed_in_and_stands_in_the_handover_with_who_typed_it(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        var run = await FirstRun(scratch, job, q => q.Contains("output current at 50 Hz", StringComparison.Ordinal)
            ? $"{ScriptedPerson.AsExpected(q)} A clamp meter 12" : ScriptedPerson.AsExpected(q));
        run.Status.ShouldBe(0, run.Errors);
        run.ShowsNoInsides();
        run.Json.GetProperty("finished").GetBoolean().ShouldBeTrue();
        var steps = run.Json.GetProperty("steps").EnumerateArray().ToList();
        steps.ShouldAllBe(s => s.GetProperty("outcome").GetString() == "passed");
        var readings = steps.SelectMany(s => s.GetProperty("readings").EnumerateArray()).ToList();
        readings.Count.ShouldBe(65);
        readings.ShouldAllBe(r => r.GetProperty("typed_by").GetString() == By && r.GetProperty("within").GetBoolean());
        readings.Select(r => r.GetProperty("read_from").GetString()).Distinct().ShouldBe(["the drive's display", "clamp meter 12", "a watch"], ignoreOrder: true);

        var handover = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");
        var report = await File.ReadAllTextAsync(handover.Json.GetProperty("report").GetString()!, TestContext.Current.CancellationToken);
        report.ShouldContain($"run by {By}");
        report.ShouldContain("clamp meter 12");
        report.ShouldNotContain("bus-loss-proof");
        handover.Json.GetProperty("open").EnumerateArray().ShouldNotContain(o => o.GetProperty("subject").GetString() == "First run");
    }

    [Fact]
    public async Task What_is_not_understood_is_asked_again_in_one_line_each()
    {
        using var scratch = new Scratch();
        var answers = new Queue<string>(
        [
            "perhaps", "yes", "yes it is a test", // on unproved settings
            "s not today", "what", "", "yes", "yes at the door", "yes", "yes", "yes", // signals
            "", "565", "1,2 kV", "12 mA", "14.2 x", "0,1", "q", // standstill
        ]);
        var run = await FirstRun(scratch, Job(scratch, "tern"), _ => answers.Count > 0 ? answers.Dequeue() : "q");
        run.Status.ShouldBe(1, run.Errors);
        run.ShowsNoInsides();
        run.Errors.ShouldContain("'perhaps' is neither yes nor no.");
        run.Errors.ShouldContain("It counts only with the words, such as: yes red mushroom button at the door");
        run.Errors.ShouldContain("This one can't be left out");
        run.Errors.ShouldContain("'what' is not understood.");
        run.Errors.ShouldContain("kV is no unit of it; in A, please");
        run.Errors.ShouldContain("'x' is not understood; a number in Hz");
        var current = Readings(run).Single(r => r.GetProperty("quantity").GetString() == "output current");
        current.GetProperty("measured").GetDouble().ShouldBe(0.012);
    }

    [Fact]
    public async Task A_reading_outside_is_looked_at_twice_says_where_to_look_first_and_stops_the_climb()
    {
        using var scratch = new Scratch();
        var looked = 0;
        var run = await FirstRun(scratch, Job(scratch, "tern"), q => q switch
        {
            _ when q.Contains("OUTSIDE:", StringComparison.Ordinal) => looked++ == 0 ? "9,9" : "",
            _ when q.Contains("output current at 20 Hz", StringComparison.Ordinal) => "99",
            _ when q.Contains("[go-on-outside", StringComparison.Ordinal) => "no",
            _ => ScriptedPerson.AsExpected(q),
        });
        run.Status.ShouldBe(1, run.Errors);
        run.Errors.ShouldContain("OUTSIDE: 99.0 A is above what is accepted");
        run.Errors.ShouldContain("Look first at a brake that is on");
        run.Errors.ShouldContain("Stop the motor, and wait until the shaft stands.");
        var current = Readings(run).Single(r => r.GetProperty("quantity").GetString() == "output current at 20 Hz");
        current.GetProperty("measured").GetDouble().ShouldBe(9.9);
        current.GetProperty("within").GetBoolean().ShouldBeFalse();
        run.Json.GetProperty("steps").EnumerateArray().Count(s => s.GetProperty("attempts").GetInt32() > 0).ShouldBe(3);

        var again = await FirstRun(scratch, Job(scratch, "tern"), ScriptedPerson.AsExpected);
        again.Status.ShouldBe(0, again.Errors);
        again.Errors.ShouldContain("2 of 9 steps are done already");
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public async Task Killed_or_left_at_any_question_it_goes_on_there_with_its_checks_asked_anew(string make)
    {
        using var scratch = new Scratch();
        var job = Job(scratch, make);
        var asked = 0;
        for (var calls = 1; ; calls++)
        {
            calls.ShouldBeLessThan(20);
            var (left, kills) = (25, calls % 2 == 0);
            var run = await FirstRun(scratch, job, q =>
            {
                asked += q.Contains("Reads?", StringComparison.Ordinal) ? 1 : 0;
                return left-- > 0 ? ScriptedPerson.AsExpected(q) : kills ? null : "q";
            });
            if (run.Status == 0)
            {
                Readings(run).Count.ShouldBe(65);
                run.Json.GetProperty("steps").EnumerateArray().ShouldAllBe(s => s.GetProperty("attempts").GetInt32() == 1);
                break;
            }

            if (!kills)
            {
                run.Status.ShouldBe(1, run.Errors);
                run.Errors.ShouldContain("call again to go on");
            }
        }

        // Each once, but for the one under way whenever it was cut off: what was typed in stays.
        asked.ShouldBeLessThan(65 + 20);
    }

    [Fact]
    public async Task A_step_left_out_is_named_and_one_done_can_be_done_again()
    {
        using var scratch = new Scratch();
        var job = Job(scratch, "tern");
        var run = await FirstRun(scratch, job, q => q.Contains("uncoupled", StringComparison.Ordinal) && q.Contains("Enter = begin", StringComparison.Ordinal)
            ? "s the pump is built onto its motor" : ScriptedPerson.AsExpected(q));
        run.Status.ShouldBe(0, run.Errors);
        run.Errors.ShouldContain("Say how it is known that the motor turns the right way.");
        run.Json.GetProperty("steps").EnumerateArray().Count(s => s.GetProperty("outcome").GetString() == "skipped").ShouldBe(3);
        var handover = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");
        handover.Json.GetProperty("open").ToString().ShouldContain("It was skipped: the pump is built onto its motor.");

        var again = await FirstRun(scratch, job, ScriptedPerson.AsExpected, "--again", "coupled-ramps");
        again.Status.ShouldBe(0, again.Errors);
        again.Json.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("step").GetString() == "coupled-ramps").GetProperty("attempts").GetInt32().ShouldBe(2);
        (await FirstRun(scratch, job, ScriptedPerson.AsExpected, "--again", "lunch")).Status.ShouldBe(2);
    }

    [Fact]
    public async Task Nothing_is_asked_where_the_checks_forbid_to_turn_the_motor()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("explosive-zone: none", "explosive-zone: 1", StringComparison.Ordinal));
        var run = await FirstRun(scratch, job, ScriptedPerson.AsExpected);
        run.Status.ShouldBe(4, run.Errors);
        run.Errors.ShouldContain("the checks forbid to turn the motor");
        run.Errors.ShouldNotContain("yes or no");
        run.Json.GetProperty("finished").GetBoolean().ShouldBeFalse();
    }

    private static List<JsonElement> Readings(Run run) => [.. run.Json.GetProperty("steps").EnumerateArray().SelectMany(s => s.GetProperty("readings").EnumerateArray())];

    private static string Job(Scratch scratch, string make) => scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));

    private static Task<Run> FirstRun(Scratch scratch, string job, Func<string, string?> answer, params string[] more) =>
        ScriptedPerson.Call(scratch.Folder, ["first-run", job, "--by", By, "--json", .. more], q => Task.FromResult(answer(q)));
}
