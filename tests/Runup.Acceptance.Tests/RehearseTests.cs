namespace Runup.Acceptance.Tests;

/// <summary>What <c>runup rehearse</c> says where a set does not do what was asked for, or can't.</summary>
public sealed class RehearseTests
{
    [Fact]
    public async Task A_drive_that_stays_below_the_highest_frequency_is_told_with_where_it_stays()
    {
        using var scratch = new Scratch();
        var run = await Rehearse(scratch, "critical-speeds: []", "critical-speeds: [{speed: 1460 rpm, width: 120 rpm}]");
        run.Status.ShouldBe(0);
        run.Output.ShouldContain("from 0 to 47.8 Hz");
        run.Output.ShouldContain("The drive stays at 47.8 Hz, not at the 50 Hz asked for");
    }

    [Fact]
    public async Task A_ramp_that_the_drive_can_t_hold_is_rehearsed_as_the_drive_holds_it_and_told()
    {
        using var scratch = new Scratch();
        var run = await Rehearse(scratch, "acceleration: 8 s", "acceleration: 3600 s");
        run.Status.ShouldBe(0);
        run.Output.ShouldContain("The ramp up is rehearsed with the 600 s that the settings have; the job asks for 3600 s.");
    }

    [Theory]
    [InlineData("rehearse", "rehearsed")]
    [InlineData("simulate", "simulated")]
    public async Task A_shaft_that_can_t_be_simulated_is_refused_in_a_sentence_by_both_verbs(string verb, string words)
    {
        using var scratch = new Scratch();
        var job = Changed(scratch, "0.035 kg·m²", "1e-9 kg·m²", "0.12 kg·m²", "1e-9 kg·m²");
        var run = await RunupProgram.Call(scratch.Folder, verb, job);
        run.Status.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain($"can't be {words}: inertia of motor and machine: is too small for this motor");
        run.ShowsNoInsides();

        (await RunupProgram.Call(scratch.Folder, "check", job)).Output.ShouldContain("motor.inertia");
    }

    [Fact]
    public async Task A_start_that_fails_says_when_and_why_and_draws_what_there_was()
    {
        using var scratch = new Scratch();
        var job = Changed(scratch, "8 N·m", "8000 N·m");
        var run = await RunupProgram.Call(scratch.Folder, "rehearse", job, "--plot", "trends.svg");
        run.Status.ShouldBe(1);
        run.Output.ShouldContain("stall  at 1");
        run.Output.ShouldContain("not reached");
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "trends.svg"), TestContext.Current.CancellationToken)).ShouldContain("SWP-101: start and stop, rehearsed");
    }

    [Theory]
    [InlineData("60")]
    [InlineData("80")]
    [InlineData("96")]
    public async Task On_a_narrow_screen_no_figure_loses_a_digit(string columns)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["rehearse", Changed(scratch)], environment: ("COLUMNS", columns));
        var wide = await Rehearse(scratch);
        foreach (var row in (string[])["highest current", "highest DC bus", "current at 50 Hz"])
        {
            Figure(run.Output, row).ShouldBe(Figure(wide.Output, row));
        }
    }

    private static double Figure(string output, string row) =>
        double.Parse(output.Split('\n').Single(l => l.StartsWith(row, StringComparison.Ordinal))[row.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[0], System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public async Task A_gap_is_for_one_motor_and_an_unmet_speed_is_no_success()
    {
        using var scratch = new Scratch();
        var both = await RunupProgram.Call(scratch.Folder, "rehearse", Changed(scratch), "--ensemble", "--supply-gap", "1");
        both.Status.ShouldBe(2);
        both.Errors.ShouldContain("--supply-gap is of one motor");

        var heavy = await Rehearse(scratch, "42 N·m", "150 N·m");
        heavy.Output.ShouldContain("not reached");
        heavy.Status.ShouldBe(1);
    }

    private static async Task<Run> Rehearse(Scratch scratch, params string[] changes) => await RunupProgram.Call(scratch.Folder, "rehearse", Changed(scratch, changes));

    private static string Changed(Scratch scratch, params string[] changes) => scratch.DemoJob(text => changes.Chunk(2).Aggregate(text, (at, pair) =>
    {
        at.ShouldContain(pair[0]);
        return at.Replace(pair[0], pair[1], StringComparison.Ordinal);
    }));
}
