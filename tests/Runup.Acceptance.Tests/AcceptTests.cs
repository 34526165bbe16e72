namespace Runup.Acceptance.Tests;

/// <summary>A person takes responsibility for what the checks find.</summary>
public sealed class AcceptTests
{
    private const string By = "N. Ostre";
    private const string Because = "the pump's <check> valve & the tide need it";

    [Fact]
    public async Task An_accepted_blocker_stays_a_blocker_and_the_handover_names_who_accepted_it_and_why()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(InHorsepower);

        var accepted = await RunupProgram.Call(scratch.Folder, "check", job, "--accept", "plate.power-unit", "--by", By, "--because", Because);

        accepted.Status.ShouldBe(1, accepted.Errors);
        accepted.Output.ShouldContain("plate.power-unit (blocker) is accepted by N. Ostre as it is now");
        accepted.Output.ShouldContain("Settings may be entered:   NO");
        var page = await Handover(scratch, job);
        page.ShouldContain("Accepted by N. Ostre");
        page.ShouldContain("the pump&#39;s &lt;check&gt; valve &amp; the tide need it");
        page.ShouldContain("HELD UP");
    }

    [Fact]
    public async Task Checking_again_shows_what_was_accepted_earlier_and_whether_it_still_is_so()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(InHorsepower);
        var accepted = await RunupProgram.Call(scratch.Folder, "check", job, "--accept", "plate.power-unit", "--by", By, "--because", Because, "--json");
        var told = accepted.Json.GetProperty("accepted").EnumerateArray().ShouldHaveSingleItem();
        told.GetProperty("id").GetString().ShouldBe("plate.power-unit");
        told.GetProperty("by").GetString().ShouldBe(By);
        told.GetProperty("as_it_is_now").GetBoolean().ShouldBeTrue();

        (await RunupProgram.Call(scratch.Folder, "check", job)).Output.ShouldContain("as it was accepted");
        scratch.DemoJob(text => text.Replace("{value: 7.5 kW, from: plate}", "{value: 6 hp, from: plate}", StringComparison.Ordinal));
        (await RunupProgram.Call(scratch.Folder, "check", job)).Output.ShouldContain("CHANGED SINCE");
    }

    [Fact]
    public async Task When_the_finding_changes_the_acceptance_no_longer_covers_it_and_the_report_says_so()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(InHorsepower);
        (await RunupProgram.Call(scratch.Folder, "check", job, "--accept", "plate.power-unit", "--by", By, "--because", Because)).Status.ShouldBe(1);

        scratch.DemoJob(text => text.Replace("{value: 7.5 kW, from: plate}", "{value: 6 hp, from: plate}", StringComparison.Ordinal));
        var page = await Handover(scratch, job);

        page.ShouldContain("Not accepted as it is now.");
        page.ShouldContain("It has changed since N. Ostre accepted it");
    }

    [Theory]
    [InlineData("--by: it is missing", "--accept", "plate.power-unit", "--because", "so")]
    [InlineData("--because: it is missing", "--accept", "plate.power-unit", "--by", "N. Ostre", "--because", " ")]
    [InlineData("'plate.powr' is no finding; one of these would do: plate.power-unit", "--accept", "plate.powr", "--by", "N. Ostre", "--because", "so")]
    [InlineData("there is nothing to accept of plate.poles", "--accept", "plate.poles", "--by", "N. Ostre", "--because", "so")]
    [InlineData("--by and --because go with --accept", "--by", "N. Ostre")]
    public async Task What_is_missing_is_said_and_nothing_is_recorded(string said, params string[] options)
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(InHorsepower);

        var run = await RunupProgram.Call(scratch.Folder, ["check", job, .. options]);

        run.Status.ShouldBe(2);
        run.Errors.ShouldContain(said);
        File.Exists(Path.Combine(Path.GetDirectoryName(job)!, "runup.db")).ShouldBeFalse();
    }

    private static string InHorsepower(string text) => text.Replace("{value: 7.5 kW, from: plate}", "{value: 7.5 hp, from: plate}", StringComparison.Ordinal);

    private static async Task<string> Handover(Scratch scratch, string job)
    {
        var run = await RunupProgram.Call(scratch.Folder, "handover", job, "--json");
        run.Status.ShouldBe(0, run.Errors);
        return await File.ReadAllTextAsync(run.Json.GetProperty("report").GetString()!, TestContext.Current.CancellationToken);
    }
}
