using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>Faults between drive and motor, and what the drive does about them.</summary>
public sealed class OutputFaultTests
{
    private static readonly OutputFault OpenV = new OutputFault.PhaseOpen(OutputPhase.V);

    [Theory]
    [InlineData(OutputPhase.U, 50)]
    [InlineData(OutputPhase.V, 25)]
    [InlineData(OutputPhase.W, 10)]
    public void A_phase_that_opens_trips_as_motor_phase_after_its_delay(OutputPhase phase, double hertz)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(hertz) };
        drive.Run(8);
        drive.Fault = new OutputFault.PhaseOpen(phase);

        drive.Run(0.09).State.ShouldBe(DriveState.Running);
        drive.Run(0.4).Trip.ShouldBe(TripCause.MotorPhase);
    }

    [Theory]
    [InlineData("vf", OutputPhase.U)]
    [InlineData("vf", OutputPhase.V)]
    [InlineData("sensorless-vector", OutputPhase.U)]
    [InlineData("sensorless-vector", OutputPhase.V)]
    [InlineData("encoder-vector", OutputPhase.U)]
    [InlineData("encoder-vector", OutputPhase.W)]
    public void A_start_with_a_phase_open_does_not_turn_the_motor_and_trips(string control, OutputPhase phase)
    {
        var settings = ControlSettings.From(MotorSettings.With(Setting.ControlMethod, control), Drive);
        var drive = new DriveSimulation(PumpSet, settings) { Fault = new OutputFault.PhaseOpen(phase), Order = Forward(50) };

        var at = drive.Run(1);

        at.Trip.ShouldBe(TripCause.MotorPhase);
        at.SpeedRpm.ShouldBe(0, 5);
    }

    [Fact]
    public void Without_output_an_open_phase_is_not_seen()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Fault = OpenV };

        drive.Run(5).State.ShouldBe(DriveState.Stopped);
    }

    [Fact]
    public void Where_the_watch_is_off_the_motor_goes_on_with_two_phases_and_more_current()
    {
        var settings = ControlSettings.From(MotorSettings.With(Setting.OutputPhaseLoss, "off"), Drive);
        var drive = new DriveSimulation(PumpSet, settings) { Order = Forward(30) };
        var before = drive.Run(8);
        drive.Fault = OpenV;
        drive.Run(1);
        var (mean, highest) = (0.0, 0.0);
        for (var i = 0; i < 500; i++)
        {
            drive.Tick();
            mean += drive.Readings.OutputCurrentA / 500;
            highest = Math.Max(highest, drive.Readings.OutputCurrentA);
        }

        drive.Readings.State.ShouldBe(DriveState.Running, drive.Readings.Trip.ToString());
        drive.Readings.SpeedRpm.ShouldBe(before.SpeedRpm, 40);
        highest.ShouldBeGreaterThan(1.4 * before.OutputCurrentA);
        mean.ShouldBeGreaterThan(before.OutputCurrentA);
    }

    [Fact]
    public void A_conductor_that_is_whole_again_runs_as_if_nothing_had_been()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(30) };
        var before = drive.Run(8);
        drive.Fault = OpenV;
        drive.Run(0.08);
        drive.Fault = null;

        var at = drive.Run(3);

        drive.Fault.ShouldBeNull();
        at.State.ShouldBe(DriveState.Running, at.Trip.ToString());
        at.SpeedRpm.ShouldBe(before.SpeedRpm, 0.01);
        at.OutputCurrentA.ShouldBe(before.OutputCurrentA, 0.001);
        at.DcBusV.ShouldBe(before.DcBusV, 0.05);
    }

    /// <summary>The plant with a fault that carries no current goes as the plain one does, started, stopped and coasting.</summary>
    [Theory]
    [InlineData(StopKind.ByMethod)]
    [InlineData(StopKind.Coast)]
    public void On_a_supply_without_earth_an_earth_fault_changes_nothing(StopKind stop)
    {
        var (without, with) = (PumpSet with { SupplyEarthed = false }, ByPlate with { Acceleration = Seconds(1), SwingDamping = default });
        var plain = new DriveSimulation(without, with) { Order = Forward(50) };
        var faulty = new DriveSimulation(without, with) { Order = Forward(50), Fault = new OutputFault.ToEarth(OutputPhase.U, default) };
        for (var i = 0; i < 12_000; i++)
        {
            if (i == 5000)
            {
                plain.Order = faulty.Order = Stop(stop);
            }

            plain.Tick();
            faulty.Tick();
            var (a, b) = (plain.Readings, faulty.Readings);
            b.State.ShouldBe(a.State);
            if (i % 50 == 0)
            {
                b.SpeedRpm.ShouldBe(a.SpeedRpm, 1.5, $"at {a.TimeS} s");
                b.OutputCurrentA.ShouldBe(a.OutputCurrentA, 0.3, $"at {a.TimeS} s");
                b.DcBusV.ShouldBe(a.DcBusV, 3, $"at {a.TimeS} s");
            }
        }
    }

    [Theory]
    [InlineData(20, TripCause.EarthFault)]
    [InlineData(400, TripCause.None)]
    public void Current_to_earth_trips_above_its_level(double ohms, TripCause expected)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        drive.Run(8);
        drive.Fault = new OutputFault.ToEarth(OutputPhase.W, Resistance.FromOhms(ohms));

        drive.Run(0.02).State.ShouldBe(DriveState.Running);
        drive.Run(1).Trip.ShouldBe(expected);
    }

    [Theory]
    [InlineData("trip", TripCause.EarthFault)]
    [InlineData("off", TripCause.ShortCircuit)]
    public void A_dead_earth_fault_trips_at_once_and_the_bus_keeps_its_charge(string watch, TripCause expected)
    {
        var drive = new DriveSimulation(PumpSet, ControlSettings.From(MotorSettings.With(Setting.EarthFault, watch), Drive)) { Order = Forward(50) };
        var before = drive.Run(8);
        drive.Fault = new OutputFault.ToEarth(OutputPhase.U, default);

        var at = drive.Run(0.01);

        at.Trip.ShouldBe(expected);
        at.DcBusV.ShouldBeGreaterThan(0.8 * before.DcBusV);
    }

    [Theory]
    [InlineData(0, TripCause.ShortCircuit)]
    [InlineData(0.5, TripCause.ShortCircuit)]
    [InlineData(9, TripCause.Overcurrent)]
    public void Two_phases_that_touch_trip_at_once(double ohms, TripCause expected)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        var before = drive.Run(8);
        drive.Fault = new OutputFault.BetweenPhases(OutputPhase.U, OutputPhase.W, Resistance.FromOhms(ohms));

        var at = drive.Run(0.012);

        at.Trip.ShouldBe(expected);
        at.DcBusV.ShouldBeGreaterThan(0.5 * before.DcBusV);
        at.OutputCurrentA.ShouldBe(0);
    }

    [Fact]
    public void A_motor_that_coasts_is_braked_by_two_phases_that_touch()
    {
        var open = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        open.Run(8);
        open.Order = Stop(StopKind.Coast);
        var joined = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        joined.Run(8);
        joined.Order = Stop(StopKind.Coast);
        joined.Fault = new OutputFault.BetweenPhases(OutputPhase.U, OutputPhase.W, Resistance.FromOhms(0.1));

        joined.Run(0.3).SpeedRpm.ShouldBeLessThan(open.Run(0.3).SpeedRpm - 2);
        joined.Readings.State.ShouldBe(DriveState.Stopped);
    }

    [Theory]
    [InlineData(TripCause.MotorPhase)]
    [InlineData(TripCause.EarthFault)]
    [InlineData(TripCause.ShortCircuit)]
    [InlineData(TripCause.Overspeed)]
    public void None_of_these_trips_resets_itself(TripCause cause)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Protection = new ProtectionSettings { AutomaticResets = 3, AutomaticResetDelay = Seconds(1) } }) { Order = Forward(50) };
        drive.Run(8);
        drive.Trip(cause);

        drive.Run(20).Trip.ShouldBe(cause);
    }

    [Fact]
    public void An_auto_tune_ends_at_a_fault_of_the_output()
    {
        foreach (var fault in new[] { new OutputFault.BetweenPhases(OutputPhase.U, OutputPhase.V, default), OpenV with { }, new OutputFault.PhaseOpen(OutputPhase.U) })
        {
            var drive = new DriveSimulation(PumpSet, ByPlate) { Fault = fault };
            drive.BeginTune(AutoTune.Stationary);

            drive.Run(12);

            drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Failed>();
        }
    }
}
