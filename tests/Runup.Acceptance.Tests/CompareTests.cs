namespace Runup.Acceptance.Tests;

public sealed class CompareTests
{
    [Fact]
    public async Task A_drive_asked_now_is_held_against_the_plan_and_nothing_is_recorded()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        await using var simulator = await Simulator.Start(scratch, job);
        var before = Directory.GetFileSystemEntries(scratch.Folder).Order(StringComparer.Ordinal).ToList();
        var run = await RunupProgram.Call(scratch.Folder, "compare", simulator.Link, "swp-101.job.yaml:plan", "--json", "--fail-on-difference");
        run.Status.ShouldBe(1, run.Errors);
        var ramp = run.Json.EnumerateArray().Single(d => d.GetProperty("setting").GetString() == "deceleration-time");
        ramp.EnumerateObject().Select(p => p.Name).ShouldBe(["setting", "parameter", "left", "right", "consequence"]);
        (ramp.GetProperty("parameter").GetString(), ramp.GetProperty("left").GetString(), ramp.GetProperty("right").GetString()).ShouldBe(("172", "5.00 s", "12.00 s"));
        Directory.GetFileSystemEntries(scratch.Folder).Order(StringComparer.Ordinal).ShouldBe(before);
    }

    [Fact]
    public async Task A_table_that_somebody_filled_in_is_held_against_the_plan()
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        scratch.Write("found.csv", "parameter,value\n151,75\n");
        var run = await RunupProgram.Call(scratch.Folder, "compare", "swp-101.job.yaml:plan", "found.csv");
        run.Status.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("turns the machine at up to 2210 rpm; it is for 1800 rpm");
        run.Output.ShouldContain("1 of 1 parameters differ.");
    }

    [Fact]
    public async Task What_does_not_differ_is_said_and_passes()
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        var run = await RunupProgram.Call(scratch.Folder, "compare", "swp-101.job.yaml:plan", "swp-101.job.yaml:plan", "--fail-on-difference");
        run.Status.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("Nothing differs in ");
    }

    [Theory]
    [InlineData("swp-101.job.yaml", "swp-101.job.yaml:plan", "runup: 'swp-101.job.yaml' names no side of a comparison; one of these would do: JOB:defaults, JOB:plan")]
    [InlineData("swp-101.job.yaml:as-left", "swp-101.job.yaml:plan", "runup: the record of SWP-101 holds no values as left; `runup enter ")]
    [InlineData("a.csv", "b.csv", "runup: neither 'a.csv' nor 'b.csv' says which drive it is of; --job JOB would do")]
    [InlineData("nothing.csv", "swp-101.job.yaml:plan", "nothing.csv:1:1")]
    [InlineData("nothing.json", "swp-101.job.yaml:plan", "nothing.json")]
    public async Task A_side_that_cannot_be_had_says_what_would_do(string a, string b, string error)
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        var run = await RunupProgram.Call(scratch.Folder, "compare", a, b);
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain(error);
        run.ShowsNoInsides();
        Directory.GetFileSystemEntries(scratch.Folder).Length.ShouldBe(1, "looking makes no record");
    }
}
