using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Checks;
using Runup.Dynamics;
using Runup.Engineering.Mechanics;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Rehearsal;

public sealed class RehearsalTests(ITestOutputHelper output)
{
    [Fact]
    public void The_pumps_first_ramp_meets_no_limit_and_takes_the_time_of_its_ramps()
    {
        var ran = Rehearse(DemoFiles.Job("swp-101.job.yaml"), "7.5-400");
        output.WriteLine(string.Join(", ", ran.Events.Select(e => $"{e.TimeS:0.00} {e.What}")) + $" {ran.PeakCurrentA:0.0} A {ran.PeakDcBusV:0} V up {ran.TimeToSpeedS} down {ran.TimeToStopS}");
        ran.Tripped.ShouldBeNull();
        ran.Events.Select(e => e.What).ShouldBe([TraceEventKind.Start, TraceEventKind.AtSpeed, TraceEventKind.Stop, TraceEventKind.Standstill]);
        ran.TimeToSpeedS!.Value.ShouldBeInRange(7.9, 8.6);
        ran.TimeToStopS!.Value.ShouldBeInRange(10, 12.6);
        ran.PeakCurrentA.ShouldBeInRange(11, 18.7);
    }

    [Fact]
    public void A_ramp_planned_for_a_blowers_inertia_neither_trips_nor_is_stretched_far()
    {
        var job = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(3)) })
            .With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(3)), Deceleration = new(Duration.FromSeconds(4)) });
        var plan = SettingsPlan.For(JobContext.For(job, DemoFiles.TernSize("7.5-400").Rating)).Values;
        var ran = Rehearse(job, "7.5-400");
        output.WriteLine(string.Join(", ", ran.Events.Select(e => $"{e.TimeS:0.00} {e.What}")) + $" {ran.PeakCurrentA:0.0} A {ran.PeakDcBusV:0} V up {ran.TimeToSpeedS} down {ran.TimeToStopS}");
        ran.Tripped.ShouldBeNull();
        ran.TimeToSpeedS!.Value.ShouldBeLessThan((1.1 * plan.Number(Setting.AccelerationTime)!.Value) + 1);
        ran.TimeToStopS!.Value.ShouldBeLessThan((1.2 * plan.Number(Setting.DecelerationTime)!.Value) + 1);
    }

    [Fact]
    public void Without_inertia_there_is_no_rehearsal()
    {
        var context = JobContext.For(Jobs.Pump().With((MachineSurvey m) => m with { Inertia = null }), DemoFiles.TernSize("7.5-400").Rating);
        JobRehearsal.Of(context, SettingsPlan.For(context), DemoFiles.Tern, DemoFiles.TernSize("7.5-400")).ShouldBeNull();
    }

    [Theory]
    [InlineData("7.5-400", 0.12, 1.6)]
    [InlineData("7.5-400", 0.6, 3)]
    [InlineData("7.5-400", 3, 8)]
    public void The_shortest_run_up_of_the_integration_is_that_of_the_time_domain_engine(string size, double inertia, double ramp)
    {
        // The drive is asked for less than it can: it then rides its current limit, as the integration assumes.
        var job = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(inertia)) });
        var context = JobContext.For(job, DemoFiles.TernSize(size).Rating);
        var shortest = ((Acceleration.Reached)context.Printed.Motion!.Acceleration!).Shortest.Seconds;
        var held = SettingsPlan.For(context).Values.With(Setting.AccelerationTime, ramp / 4).With(Setting.VfCharacteristic, "linear");
        var run = JobRehearsal.To(RehearsalSystem.Of(context)!, held, ElectricalFrequency.FromHertz(50)).ShouldBeOfType<RehearsalOutcome.Ran>().Result;
        output.WriteLine($"{shortest:0.000} s by integration, {run.TimeToSpeedS:0.000} s in the time domain; {run.Tripped}");
        run.TimeToSpeedS!.Value.ShouldBeInRange(0.8 * shortest, 1.6 * shortest);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Steady_predictions_and_the_time_domain_engine_agree(bool coupled)
    {
        var context = JobContext.For(DemoFiles.Job("swp-101.job.yaml"), DemoFiles.TernSize("7.5-400").Rating);
        var plan = SettingsPlan.For(context);
        var settings = ControlSettings.From(JobRehearsal.Held(plan, DemoFiles.Tern, DemoFiles.TernSize("7.5-400")), context.Rating);
        var predictions = FirstRunPredictions.Of(context, plan, DemoFiles.Tern, DemoFiles.TernSize("7.5-400"))!;
        var system = RehearsalSystem.Of(context)!;
        system = coupled ? system : system with { Machine = RehearsalSystem.Uncoupled(system.Machine) };
        foreach (var frequency in (double[])[20, 25, 35, 50])
        {
            var drive = new DriveSimulation(system, settings) { Order = new(true, frequency, StopKind.ByMethod) };
            for (var tick = 0; tick < 14_000; tick++)
            {
                drive.Tick();
            }

            var seen = drive.Readings;
            Agrees(ReadingKind.OutputCurrent, seen.OutputCurrentA, 0.03);
            Agrees(ReadingKind.OutputVoltage, seen.OutputVoltageV, 0.02);
            Agrees(ReadingKind.Speed, seen.SpeedRpm, 0.005);
            Agrees(ReadingKind.DcBusVoltage, seen.DcBusV, 0.05);
            Agrees(ReadingKind.OutputFrequency, seen.OutputFrequencyHz, 0.001);
            if (coupled)
            {
                Agrees(ReadingKind.Torque, seen.TorquePercent!.Value, 0.06);
            }

            void Agrees(ReadingKind kind, double measured, double share)
            {
                var predicted = predictions.Steady(kind, frequency, coupled ? Coupling.Coupled : Coupling.Uncoupled);
                output.WriteLine($"{frequency} Hz {kind}: {predicted.Value:0.00} ({predicted.Low:0.0} to {predicted.High:0.0}) predicted, {measured:0.00} seen");
                measured.ShouldBe(predicted.Value!.Value, (share * Math.Abs(predicted.Value.Value)) + 0.05, $"{kind} at {frequency} Hz");
                predicted.Within(measured).ShouldBe(true);
            }
        }
    }

    [Fact]
    public void A_hoist_is_rehearsed_lifting_and_lowering_and_its_brake_waits_for_the_motor()
    {
        var hoist = Jobs.Hoist() with { Control = Jobs.Hoist().Control with { BrakeRelay = new(3) } };
        var ran = Rehearse(hoist.With((OperationSurvey o) => o with { Directions = new("both"), Acceleration = new(Duration.FromSeconds(3)), Deceleration = new(Duration.FromSeconds(3)) }), "11-400");
        output.WriteLine(string.Join(", ", ran.Events.Select(e => $"{e.TimeS:0.00} {e.What}")));

        ran.Tripped.ShouldBeNull();
        var standstills = ran.Events.Where(e => e.What == TraceEventKind.Standstill).Select(e => e.TimeS).ToList();
        standstills.Count.ShouldBe(2);

        // Lifting takes power, lowering brings it back: the chopper switches after the first stop only.
        ran.Events.First(e => e.What == TraceEventKind.ChopperOn).TimeS.ShouldBeGreaterThan(standstills[0]);
        var trace = ran.Trace;
        trace.SpeedRpm.Max().ShouldBe(1460, 40);
        trace.SpeedRpm.Min().ShouldBe(-1540, 40);

        // Before the brake opens at the start of the lift nothing sags, and at the end it holds.
        Enumerable.Range(0, trace.Count).Where(i => trace.TimeS[i] < standstills[0]).ShouldAllBe(i => trace.SpeedRpm[i] > -5);
        trace.SpeedRpm[^1].ShouldBe(0);
    }

    [Fact]
    public void Three_motors_read_as_three_times_one_in_prediction_and_engine()
    {
        var three = Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Count = new(3) } };
        var context = JobContext.For(three, DemoFiles.TernSize("22-400").Rating);
        var plan = SettingsPlan.For(context);
        var settings = ControlSettings.From(JobRehearsal.Held(plan, DemoFiles.Tern, DemoFiles.TernSize("22-400")), context.Rating);
        var predictions = FirstRunPredictions.Of(context, plan, DemoFiles.Tern, DemoFiles.TernSize("22-400"))!;
        var drive = new DriveSimulation(RehearsalSystem.Of(context)!, settings) { Order = new(true, 50, StopKind.ByMethod) };
        for (var tick = 0; tick < 14_000; tick++)
        {
            drive.Tick();
        }

        var seen = drive.Readings;
        seen.OutputCurrentA.ShouldBe(3 * 12.6, 1.5);
        predictions.Steady(ReadingKind.OutputCurrent, 50, Coupling.Coupled).Value!.Value.ShouldBe(seen.OutputCurrentA, 0.03 * seen.OutputCurrentA);
        predictions.Steady(ReadingKind.Torque, 50, Coupling.Coupled).Value!.Value.ShouldBe(seen.TorquePercent!.Value, 3);
        predictions.Steady(ReadingKind.Speed, 50, Coupling.Coupled).Value!.Value.ShouldBe(seen.SpeedRpm, 3);
    }

    private static RehearsalResult Rehearse(Job job, string size)
    {
        var context = JobContext.For(job, DemoFiles.TernSize(size).Rating);
        return JobRehearsal.Of(context, SettingsPlan.For(context), DemoFiles.Tern, DemoFiles.TernSize(size)).ShouldBeOfType<RehearsalOutcome.Ran>().Result;
    }
}
