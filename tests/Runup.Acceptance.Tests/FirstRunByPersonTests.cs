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

    private static string Job(Scratch scratch, string make) => scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));

    private static Task<Run> FirstRun(Scratch scratch, string job, Func<string, string?> answer, params string[] more) =>
        ScriptedPerson.Call(scratch.Folder, ["first-run", job, "--by", By, "--json", .. more], q => Task.FromResult(answer(q)));
}
