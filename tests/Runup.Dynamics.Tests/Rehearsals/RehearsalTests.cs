using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Rehearsals;

public sealed class RehearsalTests
{
    private static readonly Rehearsal Pumping = new()
    {
        System = PumpSet,
        Settings = ByPlate,
        Script = Rehearsal.StartAndStop(50, Seconds(3), Seconds(60)),
    };

    [Fact]
    public void A_start_and_stop_tells_its_events_times_and_extremes()
    {
        var result = Ran(Pumping);

        result.Events.Select(e => e.What.Name()).ShouldBe(["start", "at-speed", "stop", "standstill"]);
        result.Events.ShouldBe(result.Events.OrderBy(e => e.TimeS));
        result.TimeToSpeedS!.Value.ShouldBe(5, 0.01);
        result.TimeToStopS!.Value.ShouldBeInRange(5, 6.5);
        result.PeakCurrentA.ShouldBeInRange(14, 21.6);
        result.PeakDcBusV.ShouldBeInRange(563, 600);
        result.Tripped.ShouldBeNull();
        result.Breakdown.ShouldBeNull();
    }

    [Fact]
    public void The_trace_has_a_sample_every_ten_milliseconds_in_every_column()
    {
        var trace = Ran(Pumping).Trace;

        trace.TimeS.Zip(trace.TimeS.Skip(1), (a, b) => b - a).ShouldAllBe(step => Math.Abs(step - 0.01) < 1e-9);
        new[] { trace.FrequencyHz, trace.SpeedRpm, trace.CurrentA, trace.VoltageV, trace.DcBusV, trace.TorqueNm, trace.MotorThermalPercent }
            .ShouldAllBe(column => column.Count == trace.Count);
        trace.CurrentA.Max().ShouldBeLessThanOrEqualTo(Ran(Pumping).PeakCurrentA + 1e-9);
        trace.FrequencyHz.Max().ShouldBe(50);
    }

    [Fact]
    public void The_current_at_speed_is_that_before_the_first_stop_as_where_a_hoist_lifts_before_it_lowers()
    {
        var once = Rehearsal.StartAndStop(50, Seconds(3), Seconds(60));

        var twice = Ran(Pumping with { Script = [.. once, .. Rehearsal.StartAndStop(25, Seconds(3), Seconds(60))] });

        twice.CurrentAtSpeedA.ShouldBe(Ran(Pumping).CurrentAtSpeedA);
        twice.CurrentAtSpeedA!.Value.ShouldBeInRange(5, twice.PeakCurrentA);
    }

    [Fact]
    public void A_trace_is_kept_in_chunks_that_are_full_but_for_the_last_and_read_as_one()
    {
        var trace = Ran(Pumping with { Script = Rehearsal.StartAndStop(50, Seconds(12), Seconds(60)) }).Trace;

        trace.Chunks.Count.ShouldBe((trace.Count + TraceChunk.Length - 1) / TraceChunk.Length);
        trace.Chunks.Count.ShouldBeGreaterThan(1);
        trace.Chunks.SkipLast(1).ShouldAllBe(chunk => chunk.Count == TraceChunk.Length);
        trace.Chunks.SelectMany(chunk => chunk[TraceQuantity.SpeedRpm].ToArray()).ShouldBe(trace.SpeedRpm);
        Enumerable.Range(0, trace.Count).Select(place => trace.TimeS[place]).ShouldBe(trace.TimeS);
    }

    [Fact]
    public void Steps_of_a_script_follow_one_another()
    {
        var result = Ran(Pumping with
        {
            Settings = ByPlate with { QuickStop = Seconds(8) },
            Script =
            [
                new ScriptStep.Start(10),
                new ScriptStep.UntilAtSpeed(Seconds(10)),
                new ScriptStep.Wait(Seconds(1)),
                new ScriptStep.SetFrequency(30),
                new ScriptStep.UntilAtSpeed(Seconds(10)),
                new ScriptStep.Stop(StopKind.QuickStop),
                new ScriptStep.UntilStandstill(Seconds(30)),
            ],
        });

        result.Events.Select(e => e.What.Name()).ShouldBe(["start", "at-speed", "at-speed", "stop", "standstill"]);
        result.TimeToSpeedS!.Value.ShouldBe(1, 0.05);
    }

    [Fact]
    public void A_trip_ends_the_script_and_keeps_half_a_second_more()
    {
        var heavy = PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(2) } };

        var result = Ran(Pumping with { System = heavy, Settings = ByPlate with { Deceleration = Seconds(1), OvervoltageControl = false } });

        result.Tripped.ShouldBe(TripCause.Overvoltage);
        var trip = result.Events.Single(e => e.What == TraceEventKind.Trip);
        result.Trace.TimeS[^1].ShouldBe(trip.TimeS + 0.5, 0.02);
        result.PeakDcBusV.ShouldBeGreaterThanOrEqualTo(820);
        result.TimeToStopS.ShouldBeNull();
    }

    [Fact]
    public void Limits_that_act_are_events_once()
    {
        var heavy = PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1.5) } };

        var result = Ran(Pumping with { System = heavy, Settings = ByPlate with { Acceleration = Seconds(1), Deceleration = Seconds(1) } });

        result.Events.Count(e => e.What == TraceEventKind.CurrentLimit).ShouldBe(1);
        result.Events.ShouldContain(e => e.What == TraceEventKind.OvervoltageControl);
        result.TimeToSpeedS!.Value.ShouldBeGreaterThan(2);
    }

    [Fact]
    public void A_wait_for_what_never_comes_ends_at_its_limit()
    {
        var blocked = PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(5000) } };

        var result = Ran(Pumping with { System = blocked, Script = [new ScriptStep.Start(50), new ScriptStep.UntilAtSpeed(Seconds(4))] });

        result.Trace.TimeS[^1].ShouldBe(4, 0.01);
        result.TimeToSpeedS.ShouldBeNull();
        result.Events.Select(e => e.What.Name()).ShouldBe(["start", "current-limit"]);
    }

    [Fact]
    public void What_cannot_be_simulated_is_refused_with_everything_that_is_wrong()
    {
        var nothing = Inertia.FromKilogramSquareMetres(0);
        var massless = PumpSet with { Machine = Pump with { MachineInertia = nothing, MotorInertia = nothing } };
        var contradictory = ByPlate with { MinimumFrequency = ElectricalFrequency.FromHertz(60), Acceleration = Seconds(0) };

        var refused = (Pumping with { System = massless, Settings = contradictory }).Run().ShouldBeOfType<RehearsalOutcome.Refused>();

        refused.Problems.Select(p => p.Subject).ShouldBe(["inertia of motor and machine", "acceleration-time", "minimum-frequency"], ignoreOrder: true);
        Should.Throw<ArgumentException>(() => new DriveSimulation(massless, contradictory)).Message.ShouldContain("inertia");
    }

    [Theory]
    [InlineData(0.42, 1e-7)]
    [InlineData(1e6, 0.95)]
    public void A_motor_that_cannot_be_is_refused(double statorOhm, double leakageOhm)
    {
        var motor = Motor with
        {
            StatorResistance = Resistance.FromOhms(statorOhm),
            StatorLeakage = Reactance.FromOhms(leakageOhm),
            RotorLeakage = Reactance.FromOhms(leakageOhm),
        };

        (Pumping with { System = PumpSet with { Motor = motor } }).Run().ShouldBeOfType<RehearsalOutcome.Refused>()
            .Problems.Single().Subject.ShouldBe("leakage reactances");
    }

    [Fact]
    public void Hardly_any_inertia_is_refused_like_none()
    {
        var almost = Inertia.FromKilogramSquareMetres(1e-7);

        (Pumping with { System = PumpSet with { Machine = Pump with { MachineInertia = almost, MotorInertia = almost } } }).Run()
            .ShouldBeOfType<RehearsalOutcome.Refused>()
            .Problems.Single().Subject.ShouldBe("inertia of motor and machine");
    }

    [Fact]
    public void A_supply_whose_peak_trips_the_drive_is_refused() =>
        (Pumping with { System = PumpSet with { SupplyVoltage = LineVoltage.FromVolts(600) } }).Run().ShouldBeOfType<RehearsalOutcome.Refused>();

    [Fact]
    public void A_run_whose_numbers_run_away_stops_says_when_and_keeps_its_trace()
    {
        // A load that drives the shaft with the square of its speed: infinitely fast within a second.
        var wild = new LoadCurve.Quadratic(Torque.FromNewtonMetres(-10), ShaftSpeed.FromRpm(100));
        var rehearsal = Pumping with { System = PumpSet with { Machine = Pump with { Load = wild } } };

        var result = Ran(rehearsal);

        var breakdown = result.Breakdown.ShouldNotBeNull();
        breakdown.AtS.ShouldBeInRange(0.01, 5);
        breakdown.Why.ShouldNotBeEmpty();
        result.Tripped.ShouldBeNull();
        result.Trace.Count.ShouldBeGreaterThan(1);
        result.Trace.TimeS[^1].ShouldBeLessThanOrEqualTo(breakdown.AtS);
        result.Trace.CurrentA.ShouldAllBe(a => double.IsFinite(a));
        result.Trace.SpeedRpm.ShouldAllBe(n => double.IsFinite(n));
    }

    [Fact]
    public void A_run_can_be_cancelled()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Should.Throw<OperationCanceledException>(() => Pumping.Run(null, source.Token));
    }

    [Fact]
    public void Progress_rises_to_one()
    {
        var told = new Told();

        Pumping.Run(told);

        told.Values.ShouldBe(told.Values.Order());
        told.Values.Count.ShouldBeGreaterThan(10);
        told.Values[^1].ShouldBe(1);
    }

    private static RehearsalResult Ran(Rehearsal rehearsal) => rehearsal.Run().ShouldBeOfType<RehearsalOutcome.Ran>().Result;

    private sealed class Told : IProgress<double>
    {
        internal List<double> Values { get; } = [];

        public void Report(double value) => Values.Add(value);
    }
}
