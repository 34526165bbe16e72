using Runup.Commissioning.Checks;

namespace Runup.Commissioning.Tests.Checks;

public sealed class DemoTests
{
    [Fact]
    public void Both_slips_of_the_pen_in_the_pump_as_surveyed_are_found_and_hold_up_entry()
    {
        var report = CheckList.Judge(JobContext.For(DemoFiles.Job("as-surveyed", "swp-101.job.yaml"), DemoFiles.TernSize("7.5-400").Rating));
        report.Verdict.EntryBlockedBy.ShouldBe(["plate.power-unit", "plate.base-frequency"]);
        report.Verdict.MayRunCoupled.ShouldBeFalse();
        ((CheckResult.Violated)report.Of("plate.power-unit")).Explanation.ShouldContain("7.5 kW");
        ((CheckResult.Violated)report.Of("plate.base-frequency")).Limit.ShouldBe(50);
    }

    [Fact]
    public void The_corrected_pump_has_no_finding()
    {
        var report = CheckList.Judge(JobContext.For(DemoFiles.Job("swp-101.job.yaml"), DemoFiles.TernSize("7.5-400").Rating));
        report.Findings.ShouldBeEmpty();
        report.Verdict.MayRunCoupled.ShouldBeTrue();
    }
}
