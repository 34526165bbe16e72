using Runup.Commissioning.Checks;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;

namespace Runup.Commissioning.Tests.Checks;

public sealed class DemoTests
{
    public static TheoryData<string> Site => [.. DemoFiles.Site];

    [Fact]
    public void Both_slips_of_the_pen_in_the_pump_as_surveyed_are_found_and_hold_up_entry()
    {
        var report = CheckList.Judge(DemoFiles.Context("as-surveyed", "swp-101.job.yaml"));
        report.Verdict.EntryBlockedBy.ShouldBe(["plate.power-unit", "plate.base-frequency"]);
        report.Verdict.MayRunCoupled.ShouldBeFalse();
        ((CheckResult.Violated)report.Of("plate.power-unit")).Explanation.ShouldContain("7.5 kW");
        ((CheckResult.Violated)report.Of("plate.base-frequency")).Limit.ShouldBe(50);
    }

    [Fact]
    public void All_three_slips_in_the_feed_screw_as_surveyed_are_found_and_nothing_else()
    {
        var report = CheckList.Judge(DemoFiles.Context("as-surveyed", "fs-301.job.yaml"));
        report.Findings.Select(f => f.Id).ShouldBe(["plate.power-unit", "plate.voltage-connection", "plate.poles"], ignoreOrder: true);
        report.Verdict.MayBeEntered.ShouldBeFalse();
        ((CheckResult.Violated)report.Of("plate.power-unit")).Explanation.ShouldContain("1.1 kW");
        ((CheckResult.Violated)report.Of("plate.voltage-connection")).Remedy.ShouldContain("delta");
        ((CheckResult.Violated)report.Of("plate.poles")).Limit.ShouldBe(4);
    }

    [Fact]
    public void The_blower_as_first_wished_for_stops_too_soon_and_is_told_the_ramp_that_the_site_then_has()
    {
        var stop = (CheckResult.Violated)CheckList.Judge(DemoFiles.Context("as-surveyed", "ab-201.job.yaml")).Of("machine.deceleration");
        stop.Severity.ShouldBe(Severity.Caution);
        stop.Remedy.ShouldContain("30 s");
        DemoFiles.Job("ab-201.job.yaml").Operation.Deceleration!.Value.Seconds.ShouldBe(30);
    }

    // What a drives engineer would say of the sets, beyond "it fits".
    [Theory]
    [InlineData("swp-101.job.yaml")]
    [InlineData("ab-201.job.yaml", "plate.voltage-connection", "control.analogue-scaling")]
    [InlineData("fs-301.job.yaml")]
    [InlineData("df-401.job.yaml", "machine.low-speed-cooling")]
    [InlineData("gh-501.job.yaml", "machine.hoist", "machine.overhauling")]
    [InlineData("dg-601.job.yaml", "machine.critical-speed")]
    public void The_sets_as_corrected_have_these_findings_and_no_blocker(string file, params string[] findings)
    {
        var report = CheckList.Judge(DemoFiles.Context(file));
        report.Findings.Select(f => f.Id).ShouldBe(findings, ignoreOrder: true);
        report.Verdict.MayRunCoupled.ShouldBeTrue();
    }

    [Fact]
    public void The_site_has_six_sets_three_on_each_make()
    {
        var jobs = DemoFiles.Site.Select(file => DemoFiles.Job(file)).ToList();
        jobs.Count.ShouldBe(6);
        jobs.Count(j => j.Drive.Profile.Value == "tern").ShouldBe(3);
        jobs.Count(j => j.Drive.Profile.Value == "osprey").ShouldBe(3);
    }

    [Theory]
    [MemberData(nameof(Site))]
    public void Each_set_comes_up_and_stops_in_its_rehearsal(string file)
    {
        var context = DemoFiles.Context(file);
        var profile = DemoFiles.ProfileOf(context.Job);
        var plan = Commissioning.Plan.SettingsPlan.For(context);
        var outcome = JobRehearsal.Of(context, plan, profile, profile.FindSize(context.Job.Drive.Size.Value)!, cancellation: TestContext.Current.CancellationToken);
        var result = outcome.ShouldBeOfType<RehearsalOutcome.Ran>().Result;
        result.Tripped.ShouldBeNull();
        result.TimeToSpeedS.ShouldNotBeNull().ShouldBe(context.Job.Operation.Acceleration!.Value.Seconds, 0.5);
        result.TimeToStopS.ShouldNotBeNull().ShouldBe(context.Job.Operation.Deceleration!.Value.Seconds, 1);
    }
}
