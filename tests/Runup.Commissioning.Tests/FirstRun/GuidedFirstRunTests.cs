using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;
using Runup.Settings;

namespace Runup.Commissioning.Tests.FirstRun;

public sealed class GuidedFirstRunTests
{
    private readonly FirstRunSite site = new();

    [Fact]
    public void A_first_run_goes_through_all_steps_in_order()
    {
        var report = site.Run();

        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>(string.Join("; ", report.Steps.Select(s => $"{s.Step} {s.Outcome} {s.Remark}")));
        report.Steps.Select(s => s.Step).ShouldBe(
            ["signals", "standstill", "set-up", "bus-loss-proof", "uncoupled-5-hz", "uncoupled-10-hz", "uncoupled-range", "uncoupled-ramps", "couple", "coupled-ramps", "coupled-range"]);
        report.Steps.ShouldAllBe(s => s.Outcome == "passed");
        report.NotPutBack.ShouldBeEmpty();
    }

    [Fact]
    public void The_jobs_own_settings_are_in_force_again_and_proved_at_the_end()
    {
        var before = site.Drive.Held;
        var report = site.Run();

        foreach (var number in before.Numbers)
        {
            site.Drive.Held[number].ShouldBe(before[number], number);
        }

        report.RunSource.ShouldBe("terminals");
        site.Records.Bodies.OfType<RecordBody.ControlLeft>().ShouldHaveSingleItem().RunSource.ShouldBe("terminals");
        var asLeft = site.Records.Bodies.OfType<RecordBody.ParametersRead>().Last();
        asLeft.Moment.ShouldBe("as-left");
        asLeft.Values["260"].ShouldBe(before["260"]);
        var writes = site.Bench.Sent("write").Select(o => o.What).ToList();
        writes[^2..].ShouldBe(["220", "240"], ignoreOrder: true, "what can make the motor start is put back last");
    }

    [Fact]
    public void The_time_to_the_stop_reaction_is_measured_within_a_few_milliseconds()
    {
        var proof = site.Run().Proof!;
        proof.BeganAfter.TotalSeconds.ShouldBe(0.4, 0.02);
        proof.SeenAfter.ShouldBeLessThanOrEqualTo(TimeSpan.FromSeconds(1));
        var reading = site.Records.Bodies.OfType<RecordBody.ReadingTaken>().Single(r => r.Step == "bus-loss-proof");
        reading.Measured!.Value.ShouldBe(0.4, 0.02);
        reading.High.ShouldBe(1);
        reading.Within.ShouldBe(true);
    }

    [Fact]
    public void A_drive_that_coasts_on_bus_loss_is_proved_too_and_its_trip_reset_by_the_person()
    {
        var coasting = new FirstRunSite(BenchSite.Plan.With(Setting.BusLossAction, "coast"));
        coasting.Person.Says = thing =>
        {
            if (thing.What == "trip-of-the-proof-reset-at-the-drive")
            {
                coasting.Drive.ResetAtPanel();
            }

            return null;
        };
        var report = coasting.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        report.Proof!.SeenAfter.ShouldBeLessThanOrEqualTo(TimeSpan.FromSeconds(1));
        coasting.Drive.FaultResetSeen.ShouldBeFalse();
    }

    [Fact]
    public void Readings_are_held_against_their_prediction_at_each_frequency()
    {
        var report = site.Run();
        var range = report.Steps.Single(s => s.Step == "coupled-range").Readings;
        range.Count.ShouldBe(4 * 6);
        range.ShouldContain(r => r.Quantity == "output voltage at 37.5 Hz" && Math.Abs(r.Measured!.Value - 300) < 1 && r.Within == true);
        range.ShouldContain(r => r.Quantity == "speed at 50 Hz" && Math.Abs(r.Measured!.Value - 1500) < 0.01);
        var still = report.Steps.Single(s => s.Step == "standstill").Readings.Single(r => r.Quantity == "DC bus voltage");
        still.Expected!.Value.ShouldBe(565.7, 0.1);
        still.Measured.ShouldBe(561);
    }

    [Fact]
    public void Trends_are_kept_as_measured_and_as_predicted()
    {
        site.Run();
        var ramps = site.Records.Bodies.OfType<RecordBody.Trend>().Where(t => t.Step == "coupled-ramps").ToList();
        ramps.Count.ShouldBe(2);
        var measured = ramps.Single(t => !t.Predicted);
        measured.Columns.Take(4).ShouldBe(["time_s", "output_frequency_Hz", "output_current_A", "dc_bus_V"]);
        measured.Rows.ShouldAllBe(r => r.Count == measured.Columns.Count);
        measured.Rows.Max(r => r[1]).ShouldBe(50, 0.01);
        measured.Rows[^1][1].ShouldBe(0, 0.06);
        measured.Rows.Zip(measured.Rows.Skip(1)).ShouldAllBe(p => p.First[0] <= p.Second[0]);
    }

    [Fact]
    public void Where_both_directions_are_permitted_reverse_is_tried_at_the_lowest_frequency()
    {
        var both = new FirstRunSite(BenchSite.Plan.With(Setting.PermittedDirection, "both"));
        var report = both.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>(string.Join("; ", report.Steps.Select(s => $"{s.Step} {s.Outcome} {s.Remark}")));
        both.Runs.Min(r => r.Hz).ShouldBe(-5);
    }

    [Fact]
    public void A_job_that_is_run_from_the_bus_with_a_short_time_out_needs_fewer_changes()
    {
        var plan = BenchSite.Plan.With(Setting.RunCommandSource, "bus").With(Setting.FrequencyReferenceSource, "bus").With(Setting.BusTimeout, 0.3)
            .With(Setting.MinimumFrequency, 0).With(Setting.RestartAfterPowerLoss, "off");
        var bus = new FirstRunSite(plan);
        var report = bus.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        report.Proof!.BeganAfter.TotalSeconds.ShouldBe(0.3, 0.02);
        bus.Bench.Sent("write").ShouldBeEmpty();
        report.RunSource.ShouldBe("bus");
    }

    [Fact]
    public void A_step_that_the_person_ended_may_be_done_again_after_its_checks()
    {
        var released = false;
        site.Person.OnHold = (hold, request) =>
        {
            if (request.Step == "uncoupled-10-hz" && !released)
            {
                released = true;

                // Kept by the hold: a timer that nobody keeps is swept away before its time.
                var release = site.Bench.Time.CreateTimer(_ => hold.Release(HoldEnd.Released), null, TimeSpan.FromSeconds(1), Timeout.InfiniteTimeSpan);
                hold.Lost.Register(release.Dispose);
            }
        };
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        report.Steps.Where(s => s.Step == "uncoupled-10-hz").Select(s => s.Outcome).ShouldBe(["stopped", "passed"]);
        site.Person.Asked.Count(a => a is { What: "nobody-in-reach", Step: "uncoupled-10-hz" }).ShouldBe(2);
    }

    [Fact]
    public void A_first_run_that_was_cut_off_does_not_make_the_next_one_forget_the_jobs_own_settings()
    {
        var own = site.Drive.Held;
        site.Records.Cut = () =>
        {
            if (site.Records.All.Count > 0 && site.Records.All[^1].Body is RecordBody.StepBegun { Step: "uncoupled-5-hz" })
            {
                throw new CutOffException();
            }
        };
        Should.Throw<CutOffException>(() => site.Run());
        site.Drive.Held["220"].ShouldNotBe(own["220"]);

        site.Records.Cut = null;
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        foreach (var number in own.Numbers)
        {
            site.Drive.Held[number].ShouldBe(own[number], number);
        }
    }
}
