using System.Diagnostics;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;

namespace Runup.Commissioning.Tests.Checks;

public sealed class PumpTests(ITestOutputHelper output)
{
    [Fact]
    public void A_sound_job_has_no_finding_and_may_run()
    {
        var report = Jobs.Pump().Judge();
        foreach (var result in report.Results)
        {
            output.WriteLine(result.ToString());
        }

        foreach (var assumption in report.Assumptions)
        {
            output.WriteLine(assumption.ToString());
        }

        output.WriteLine(MachineFigures.Of(Jobs.Pump().Context()).ToString());
        report.Findings.ShouldBeEmpty();
        report.Verdict.MayRunCoupled.ShouldBeTrue();
    }

    [Fact]
    public void Plan()
    {
        foreach (var job in (Survey.Job[])[Jobs.Pump(), Jobs.Screw(), Jobs.Hoist()])
        {
            foreach (var line in SettingsPlan.For(job.Context(job.Tag[0] == 'F' ? 2.2 : job.Tag[0] == 'H' ? 11 : 7.5)).Lines)
            {
                output.WriteLine($"{line.Setting,-32} {line.Value,-32} {line.Rank} {line.Reason} [{line.Source}] {line.Low}..{line.High}");
            }
        }
    }

    [Fact]
    public void Timing()
    {
        for (var i = 0; i < 30; i++)
        {
            var watch = Stopwatch.StartNew();
            Jobs.Pump().Judge();
            var check = watch.Elapsed.TotalMilliseconds;
            SettingsPlan.For(Jobs.Pump().Context());
            output.WriteLine($"check {check:0.0} ms, plan {watch.Elapsed.TotalMilliseconds - check:0.0} ms");
        }
    }

    [Fact]
    public void Others()
    {
        foreach (var report in (CheckReport[])[Jobs.Screw().Judge(2.2), Jobs.Hoist().Judge(11)])
        {
            foreach (var result in report.Results)
            {
                output.WriteLine(result.ToString());
            }
        }
    }
}
