using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Records;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.FirstRun;

/// <summary>Tries to break the rules of running a motor, one by one.</summary>
public sealed class FirstRunSafetyTests
{
    private readonly FirstRunSite site = new();

    [Fact]
    public void No_higher_step_comes_before_the_proof()
    {
        site.Run();
        var proof = site.Log.First(l => l.Op is { Kind: "command", What: "Coast" } && l.At > site.Drive.BusLossAt).At;
        site.Runs.Where(r => r.At < proof).ShouldNotBeEmpty();
        site.Runs.Where(r => r.At < proof).ShouldAllBe(r => r.Hz == 5);
        site.StepsBegun.ToList().IndexOf("bus-loss-proof").ShouldBe(3);
    }

    [Fact]
    public void In_the_proof_nothing_at_all_is_sent_between_the_last_renewal_and_the_look()
    {
        site.Run();
        var lost = site.Drive.BusLossAt!.Value;
        var before = site.Log.Last(l => l.At <= lost);
        before.Op.What.ShouldBe("Run", "the last frame before the silence is a renewal, not a reading that restarts the time-out");
        (lost - before.At).TotalSeconds.ShouldBe(0.4, 0.01);
    }

    [Fact]
    public void Before_any_run_command_the_bus_time_out_is_at_most_0_4_s_and_the_source_is_the_bus()
    {
        long? timeout = null;
        site.Bench.Script = op =>
        {
            if (op is { Kind: "command", What: "Run" })
            {
                timeout ??= site.Drive.Held["260"];
                site.Drive.Held["260"]!.Value.ShouldBeInRange(1, 4);
                site.Drive.Held["261"]!.Value.ShouldBeOneOf(1, 2);
                site.Drive.Held["240"].ShouldBe(0, "it must not start by itself");
            }

            return Mishap.None;
        };
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        timeout.ShouldBe(4);
    }

    [Theory]
    [InlineData("260")]
    [InlineData("261")]
    [InlineData("220")]
    [InlineData("221")]
    [InlineData("152")]
    public void A_drive_that_does_not_take_what_the_guided_run_needs_is_not_run(string number)
    {
        var liar = new FirstRunSite(BenchSite.Plan.With(Setting.BusLossAction, "none"));
        var own = liar.Drive.Held[number]!.Value;
        liar.Drive.Lies[number] = _ => own;
        liar.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        liar.Runs.ShouldBeEmpty();
    }

    [Fact]
    public void A_drive_that_does_not_notice_the_loss_of_the_bus_is_stopped_and_not_run_again()
    {
        site.Drive.IgnoresBusLoss = true;
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        report.Proof.ShouldBeNull();
        site.Runs.ShouldAllBe(r => r.Hz == 5);
        site.StepsBegun.ShouldNotContain("uncoupled-5-hz");
        site.Drive.State.ShouldBe(PowerState.SwitchedOn);
        site.Drive.Hertz.ShouldBe(0, 1e-9);
        report.NotPutBack.ShouldBeEmpty();
    }

    [Fact]
    public void A_drive_that_notices_it_only_after_more_than_a_second_is_not_run()
    {
        site.Drive.NoticesLate = TimeSpan.FromSeconds(0.8);
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        site.Runs.ShouldAllBe(r => r.Hz == 5);
    }

    [Fact]
    public void A_drive_that_notices_it_late_but_within_the_second_is_proved_with_its_own_figure()
    {
        site.Drive.NoticesLate = TimeSpan.FromSeconds(0.4);
        site.Run().Proof!.BeganAfter.TotalSeconds.ShouldBe(0.8, 0.02);
    }

    [Fact]
    public void A_drive_that_a_mere_reading_brings_back_is_not_run()
    {
        site.Drive.FramesReviveIt = true;
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        site.Runs.ShouldAllBe(r => r.Hz == 5);
    }

    [Fact]
    public void A_trip_of_the_proof_that_nobody_resets_at_the_drive_ends_the_first_run()
    {
        var coasting = new FirstRunSite(BenchSite.Plan.With(Setting.BusLossAction, "coast"));
        var report = coasting.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Tripped>().Cause.ShouldBe(TripCause.BusTimeout);
        coasting.Drive.FaultResetSeen.ShouldBeFalse();
        coasting.Drive.State.ShouldBe(PowerState.Fault);
    }

    [Fact]
    public void A_trip_ends_the_first_run_with_its_cause_and_is_never_reset()
    {
        site.Drive.TripsAbove10Hz = TripCause.Overcurrent;
        var report = site.Run();
        var tripped = report.Ending.ShouldBeOfType<FirstRunEnding.Tripped>();
        tripped.Cause.ShouldBe(TripCause.Overcurrent);
        tripped.Step.ShouldBe("uncoupled-range");
        site.Drive.FaultResetSeen.ShouldBeFalse();
        site.Drive.State.ShouldBe(PowerState.Fault);
        site.StepsBegun.Last().ShouldBe(GuidedSettings.PutBackStep);
        report.NotPutBack.ShouldBeEmpty();
        LastRun().ShouldBeLessThan(site.Log.First(l => l.Op is { Kind: "command", What: "Coast" } && l.At >= LastRun()).At + TimeSpan.FromTicks(1));
    }

    [Theory]
    [InlineData(HoldEnd.Released)]
    [InlineData(HoldEnd.FocusLost)]
    [InlineData(HoldEnd.PageHidden)]
    [InlineData(HoldEnd.SecondTouch)]
    public void Whatever_ends_the_hold_stops_the_motor_at_once(HoldEnd why)
    {
        TimeSpan? ended = null;
        site.Person.OnHold = (hold, request) => At(request, "uncoupled-range", TimeSpan.FromSeconds(3), () =>
        {
            site.Drive.Pass();
            ended = site.Drive.Now;
            hold.Release(why);
        });
        site.Person.Declines.Add("step-again");
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>().Step.ShouldBe("uncoupled-range");
        StopsWithin(ended!.Value, TimeSpan.FromMilliseconds(10));
        LastRun().ShouldBeLessThanOrEqualTo(ended.Value);
    }

    [Fact]
    public void A_hold_that_ends_while_an_answer_is_awaited_stops_the_motor_without_waiting_for_it()
    {
        TimeSpan? ended = null;
        var silent = false;
        site.Bench.Script = op =>
        {
            var lost = silent && op.Kind == "status";
            silent &= !lost;
            return lost ? Mishap.ReplyLost : Mishap.None;
        };
        site.Person.OnHold = (hold, request) =>
        {
            At(request, "uncoupled-range", TimeSpan.FromMilliseconds(3000), () => silent = true);
            At(request, "uncoupled-range", TimeSpan.FromMilliseconds(3140), () =>
            {
                silent.ShouldBeFalse("an answer is awaited by now");
                site.Drive.Pass();
                ended = site.Drive.Now;
                hold.Release(HoldEnd.Released);
            });
        };
        site.Person.Declines.Add("step-again");
        site.Run();
        StopsWithin(ended!.Value, TimeSpan.FromMilliseconds(10));
    }

    [Fact]
    public void A_renewal_that_is_not_answered_is_given_up_after_200_ms_and_the_motor_stopped()
    {
        TimeSpan? lost = null;
        site.Bench.Script = op =>
        {
            if (op is { What: "Run", Raw: 2500 } && lost is null)
            {
                lost = site.Drive.Now;
                return Mishap.RequestLost;
            }

            return Mishap.None;
        };
        site.Person.Declines.Add("go-on-outside-of-what-is-expected");
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.Stopped>().Why.ShouldContain("not answered");
        StopsWithin(lost!.Value, TimeSpan.FromMilliseconds(210));
    }

    [Fact]
    public void A_hold_that_stops_beating_ends_within_300_ms()
    {
        TimeSpan? last = null;
        site.Person.OnHold = (hold, request) =>
        {
            if (request.Step == "uncoupled-range")
            {
                // A process that is gone beats no more: a hold of which nobody keeps the beat.
                var mute = site.Bench.Time.CreateTimer(_ =>
                {
                    site.Drive.Pass();
                    last = site.Drive.Now;
                    site.Person.Silence = true;
                }, null, TimeSpan.FromMilliseconds(3050), Timeout.InfiniteTimeSpan);
                hold.Lost.Register(mute.Dispose);
            }
        };
        site.Person.Declines.Add("step-again");
        site.Run();
        var beat = last!.Value - TimeSpan.FromMilliseconds(50);
        StopsWithin(beat, TimeSpan.FromMilliseconds(310));
        LastRun().ShouldBeLessThanOrEqualTo(last.Value);
    }

    [Fact]
    public void Each_beat_allows_one_command_and_one_round_of_readings()
    {
        site.Bench.Latency = TimeSpan.FromMilliseconds(2);
        site.Run(TimeSpan.FromMilliseconds(1));
        var range = Between("coupled-range");
        var runs = range.Count(l => l.Op.What == "Run");
        var first = range.First(l => l.Op.What == "Run").At;
        var last = range.Last(l => l.Op.What == "Run").At;
        runs.ShouldBeLessThanOrEqualTo((int)((last - first) / RunHold.Period) + 2, "a beat may wait to be used when the run begins");
        range.Where(l => l.At >= first && l.At <= last).Count(l => l.Op.Kind == "status").ShouldBeLessThanOrEqualTo(runs);
        range.Where(l => l.At >= first && l.At <= last).ShouldAllBe(l => l.Op.Kind == "status" || l.Op.What == "Run");
    }

    [Fact]
    public void A_drive_that_does_not_obey_the_stop_is_left_to_its_own_time_out()
    {
        TimeSpan? ended = null;
        site.Person.OnHold = (hold, request) => At(request, "coupled-range", TimeSpan.FromSeconds(3), () =>
        {
            site.Drive.Pass();
            ended = site.Drive.Now;
            site.Drive.IgnoresStop = true;
            hold.Release(HoldEnd.Released);
        });
        var report = site.Run();

        report.Ending.ShouldBeOfType<FirstRunEnding.FellSilent>().Step.ShouldBe("coupled-range");
        var after = site.Log.Where(l => l.At >= ended!.Value).ToList();
        after.Count(l => l.Op is { Kind: "command", What: "Stop" }).ShouldBe(1);
        after.Count(l => l.Op.Kind == "status").ShouldBeLessThanOrEqualTo(2);
        after.ShouldAllBe(l => l.At <= ended!.Value + TimeSpan.FromMilliseconds(200));
        after.Count.ShouldBeLessThanOrEqualTo(3);
        report.NotPutBack.Keys.ShouldContain("220");

        site.Later(TimeSpan.FromSeconds(20));
        (site.Drive.BusLossAt!.Value - ended!.Value).ShouldBeLessThan(TimeSpan.FromSeconds(1));
        site.Drive.Hertz.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void A_cable_pulled_while_the_motor_runs_leaves_it_to_the_drives_own_time_out()
    {
        TimeSpan? pulled = null;
        site.Person.OnHold = (_, request) => At(request, "coupled-ramps", TimeSpan.FromSeconds(4), () =>
        {
            site.Drive.Pass();
            pulled = site.Drive.Now;
            site.Bench.Link!.Dead = true;
        });
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.FellSilent>();
        site.Later(TimeSpan.FromSeconds(30));
        site.Drive.Hertz.ShouldBe(0, 1e-9);
        (site.Drive.BusLossAt!.Value - pulled!.Value).ShouldBeLessThan(TimeSpan.FromSeconds(1));
        site.Bench.Log.Count(l => l.At > pulled + TimeSpan.FromSeconds(1)).ShouldBe(0);
    }

    [Fact]
    public void A_link_that_becomes_slow_does_not_keep_the_motor_alive()
    {
        site.Person.OnHold = (hold, request) => At(request, "uncoupled-range", TimeSpan.FromSeconds(3), () => site.Bench.Link!.Latency = TimeSpan.FromMilliseconds(260));
        site.Person.Declines.Add("step-again");
        var report = site.Run();
        report.Ending.ShouldNotBeOfType<FirstRunEnding.Finished>();
        site.Later(TimeSpan.FromSeconds(30));
        site.Drive.Hertz.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Every_step_asks_for_its_checks_by_name_and_no_motor_turns_where_one_is_declined()
    {
        foreach (var what in (string[])["machine-stop-tested", "safe-torque-off-open-or-motor-isolated", "no-run-command-pending", "uncoupled", "safe-torque-off-closed", "nobody-in-reach"])
        {
            var fresh = new FirstRunSite();
            fresh.Person.Declines.Add(what);
            fresh.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain(what);
            fresh.Runs.ShouldBeEmpty(what);
        }
    }

    [Fact]
    public void Where_the_real_stop_device_is_must_be_said_and_stands_beside_every_control_that_runs_the_motor()
    {
        site.Run();
        site.Person.Holds.ShouldNotBeEmpty();
        site.Person.Holds.ShouldAllBe(h => h.Warning.Contains("no emergency stop") && h.Warning.Contains("no safe torque off") && h.Warning.Contains("red button at the door"));

        var mute = new FirstRunSite();
        mute.Person.Says = thing => thing.What == "machine-stop-tested" ? new PersonSays.Yes("A. Person") : null;
        mute.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        mute.Runs.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("at-standstill")]
    [InlineData("coupled")]
    [InlineData("guards-on")]
    public void Nothing_runs_coupled_before_coupling_guards_and_standstill_are_confirmed(string what)
    {
        site.Person.Says = thing => thing.What == what && thing.Step == "couple" ? new PersonSays.No("not yet") : null;
        site.Run();
        site.StepsBegun.ShouldNotContain("coupled-ramps");
        site.StepsBegun.ShouldNotContain("coupled-range");
    }

    [Fact]
    public void A_reading_outside_stops_the_motor_and_ends_the_first_run_unless_a_person_goes_on_by_name()
    {
        site.Predictions.CurrentFactor = 2;
        site.Person.Declines.Add("go-on-outside-of-what-is-expected");
        var report = site.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>().Step.ShouldBe("uncoupled-5-hz");
        site.Runs.ShouldAllBe(r => r.Hz == 5);
        report.NotPutBack.ShouldBeEmpty();
        site.Drive.Hertz.ShouldBe(0, 1e-9);

        var goesOn = new FirstRunSite();
        goesOn.Predictions.CurrentFactor = 2;
        goesOn.Run().Ending.ShouldBeOfType<FirstRunEnding.Finished>();
        goesOn.Records.Bodies.OfType<RecordBody.Confirmed>().ShouldContain(c => c.What == "go-on-outside-of-what-is-expected" && c.Note!.Contains("red button"));
    }

    [Fact]
    public void In_the_range_a_reading_outside_ends_the_climb()
    {
        site.Predictions.CurrentFactor = 2;
        site.Person.Says = thing => thing.What == "go-on-outside-of-what-is-expected" && thing.Step == "uncoupled-range" ? new PersonSays.No("no") : null;
        site.Run();
        site.Runs.Max(r => r.Hz).ShouldBe(12.5);
    }

    [Theory]
    [InlineData(LoadKind.Hoisting, false)]
    [InlineData(LoadKind.Constant, true)]
    public void A_hoist_or_a_load_that_drives_the_motor_gets_no_command_of_any_kind(LoadKind load, bool drives)
    {
        var hoist = new FirstRunSite(load: load);
        hoist.Task = hoist.Task with { LoadDrivesMotor = drives };
        hoist.Person.Declines.Add("go-on-outside-of-what-is-expected");
        var report = hoist.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>("the readings at standstill are outside what runs, and nobody runs it here");
        hoist.Bench.Sent("command").ShouldBeEmpty();
        hoist.Bench.Sent("write").ShouldBeEmpty();
        FirstRunPlan.For(hoist.Task).OwnControlOnly.ShouldNotBeNull();
        FirstRunPlan.For(hoist.Task).Steps.ShouldAllBe(s => s is FirstRunStep.Signals || s is FirstRunStep.Standstill || s is FirstRunStep.Watched);
    }

    [Fact]
    public void A_hoist_run_from_its_own_control_is_read_and_compared()
    {
        var hoist = new FirstRunSite(load: LoadKind.Hoisting);
        hoist.Person.Says = thing =>
        {
            if (thing.What == "steady-from-own-control")
            {
                hoist.Drive.State = PowerState.OperationEnabled;
                hoist.Drive.HoldAt(double.Parse(thing.Step.Split('-')[2]));
            }

            return null;
        };
        hoist.Person.Declines.Clear();
        var report = hoist.Run();
        report.Ending.ShouldBeOfType<FirstRunEnding.Finished>(string.Join("; ", report.Steps.Select(s => $"{s.Step} {s.Outcome} {s.Remark}")));
        report.Steps.Count(s => s.Step.StartsWith("own-control", StringComparison.Ordinal)).ShouldBe(3);
        hoist.Bench.Sent("command").ShouldBeEmpty();
        hoist.Bench.Sent("write").ShouldBeEmpty();
    }

    [Fact]
    public void Findings_that_forbid_to_turn_the_motor_or_to_couple_it_are_heeded()
    {
        site.Task = site.Task with { Verdict = new Verdict([], ["drive.voltage"], ["drive.voltage"]) };
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("drive.voltage");
        site.Log.ShouldBeEmpty();

        var coupled = new FirstRunSite();
        coupled.Task = coupled.Task with { Verdict = new Verdict([], [], ["machine.breakaway"]) };
        coupled.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("machine.breakaway");
        coupled.StepsBegun.ShouldNotContain("coupled-ramps");
    }

    [Fact]
    public async Task A_drive_that_does_not_hold_the_sheet_or_whose_entry_was_cut_off_is_not_run()
    {
        site.Drive.Held = site.Drive.Held.With("151", 600);
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("151");
        site.Runs.ShouldBeEmpty();

        var open = new FirstRunSite();
        await open.Records.Append(BenchSite.Tag, new RecordBody.EntryBegun("x", ["105"], false), default);
        open.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("cut off");
        open.Log.ShouldBeEmpty();
    }

    [Fact]
    public void A_motor_that_turns_already_or_a_drive_in_a_trip_is_not_taken_over()
    {
        site.Drive.State = PowerState.OperationEnabled;
        site.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>();
        site.Bench.Sent("command").ShouldBeEmpty();

        var tripped = new FirstRunSite();
        tripped.Drive.TripNow(TripCause.EarthFault);
        tripped.Run().Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("earth-fault");
        tripped.Drive.FaultResetSeen.ShouldBeFalse();
    }

    [Fact]
    public void What_another_master_left_in_the_command_word_is_taken_out_before_the_bus_becomes_the_source()
    {
        site.Run();
        var coast = site.Log.FindIndex(l => l.Op is { Kind: "command", What: "Coast" });
        var source = site.Log.FindIndex(l => l.Op is { Kind: "write", What: "220" });
        coast.ShouldBeInRange(0, source - 1);
    }

    [Fact]
    public void The_jobs_own_run_source_is_put_back_only_when_no_run_command_is_pending()
    {
        site.Person.Says = thing => thing is { What: "no-run-command-pending", Step: GuidedSettings.PutBackStep } ? new PersonSays.No("contact closed") : null;
        var report = site.Run();
        report.NotPutBack.Keys.ShouldContain("220");
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>().Step.ShouldBe(GuidedSettings.PutBackStep);
        report.RunSource.ShouldBe("bus");
    }

    [Fact]
    public void A_motor_that_gives_no_readings_is_not_run_blind()
    {
        site.Person.OnHold = (_, request) =>
        {
            if (request.Step == "uncoupled-range")
            {
                var rounds = 0;
                site.Bench.Script = op => op.Kind == "status" && ++rounds is >= 20 and < 22 ? Mishap.Refused : Mishap.None;
            }
        };
        site.Person.Declines.Add("go-on-outside-of-what-is-expected");
        var stopped = site.Run().Ending.ShouldBeOfType<FirstRunEnding.Stopped>();
        stopped.Step.ShouldBe("uncoupled-range");
        stopped.Why.ShouldContain("no readings");
        site.Drive.Hertz.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void A_drive_that_was_never_read_before_is_kept_as_found_before_the_guided_run_writes()
    {
        var found = site.Drive.Held;
        site.Run();
        var bodies = site.Records.Bodies.ToList();
        var asFound = bodies.FindIndex(b => b is RecordBody.ParametersRead { Moment: "as-found" });
        asFound.ShouldBeInRange(0, bodies.FindIndex(b => b is RecordBody.WriteIntended) - 1);
        ((RecordBody.ParametersRead)bodies[asFound]).Values["260"].ShouldBe(found["260"]);
    }

    [Fact]
    public void Of_a_motor_that_is_a_magnet_it_is_said_that_its_terminals_are_live_while_it_turns()
    {
        var magnet = new FirstRunSite();
        magnet.Task = magnet.Task with { Job = BenchJob.Of(kind: MotorKind.PermanentMagnet) };
        FirstRunPlan.For(magnet.Task).Steps[0].Checks.ShouldContain(c => c.Words.Contains("live while its shaft turns"));
        FirstRunPlan.For(site.Task).Steps[0].Checks.ShouldNotContain(c => c.Words.Contains("live while its shaft turns"));
    }

    [Fact]
    public void One_setting_that_cannot_be_put_back_does_not_keep_the_others_and_is_named()
    {
        site.Person.OnHold = (_, request) =>
        {
            if (request.Step == "coupled-range")
            {
                site.Drive.RefusesToWrite.Add("152");
            }
        };
        var own = site.Drive.Held;
        var report = site.Run();
        report.NotPutBack.Keys.ShouldBe(["152"]);
        site.Drive.Held["260"].ShouldBe(own["260"]);
        site.Drive.Held["220"].ShouldBe(own["220"]);
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>().Step.ShouldBe(GuidedSettings.PutBackStep);
    }

    [Fact]
    public void A_first_run_that_is_interrupted_stops_the_motor_and_puts_the_settings_back()
    {
        using var stop = new CancellationTokenSource();
        site.Person.OnHold = (hold, request) => At(request, "uncoupled-range", TimeSpan.FromSeconds(3), () =>
        {
            stop.Cancel();
            hold.Release(HoldEnd.Released);
        });
        var report = site.Run(cancellation: stop.Token);
        report.Ending.ShouldBeOfType<FirstRunEnding.Stopped>();
        site.Drive.Hertz.ShouldBe(0, 1e-9);
        report.NotPutBack.ShouldBeEmpty();
    }

    private TimeSpan LastRun() => site.Runs.Last().At;

    private List<(TimeSpan At, BenchOp Op)> Between(string step)
    {
        // Steps follow one another; the coupled range is the last that runs.
        step.ShouldBe("coupled-range");
        var prepared = site.Log.FindLastIndex(l => l.Op is { Kind: "command", What: "Prepare" });
        return site.Log[prepared..];
    }

    private void StopsWithin(TimeSpan from, TimeSpan time)
    {
        var stop = site.Log.First(l => l.At >= from && l.Op is { Kind: "command", What: "Stop" }).At;
        (stop - from).ShouldBeLessThanOrEqualTo(time);
        site.Drive.Hertz.ShouldBe(0, 1e-9);
    }

    private void At(HoldRequest request, string step, TimeSpan after, Action act)
    {
        if (request.Step == step)
        {
            ITimer? timer = null;
            timer = site.Bench.Time.CreateTimer(_ =>
            {
                act();
                timer!.Dispose();
            }, null, after, Timeout.InfiniteTimeSpan);
        }
    }
}
