using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class SupplyLossTests
{
    // A fan with much inertia, at some two thirds of its torque.
    private static readonly DriveSystem Fan = PumpSet with
    {
        Machine = Pump with { Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(30), ShaftSpeed.FromRpm(1460)), MachineInertia = Inertia.FromKilogramSquareMetres(1.5) },
    };

    private static readonly ControlSettings Slow = ByPlate with { Acceleration = Seconds(12), Deceleration = Seconds(12) };

    [Fact]
    public void Without_ride_through_a_gap_of_the_supply_trips_on_undervoltage()
    {
        var at = Gap(Slow, 0.3);

        at.Trip.ShouldBe(TripCause.Undervoltage);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(2)]
    public void Ride_through_keeps_the_drive_running_over_a_gap_by_the_energy_of_the_load(double gapS)
    {
        var drive = Running(Fan, Slow with { UndervoltageRideThrough = true });
        var before = drive.Readings;
        drive.SupplyPresent = false;
        var (lowest, active) = (double.PositiveInfinity, false);
        for (var i = 0; i < gapS / DriveSimulation.TickSeconds; i++)
        {
            drive.Tick();
            lowest = Math.Min(lowest, drive.Readings.DcBusV);
            active |= drive.Readings.RideThroughActive;
        }

        var within = drive.Readings;
        within.State.ShouldBe(DriveState.Running);
        active.ShouldBeTrue();
        lowest.ShouldBeGreaterThan(Drive.UndervoltageTrip.Volts);
        within.SpeedRpm.ShouldBeLessThan(before.SpeedRpm);

        drive.SupplyPresent = true;
        var after = drive.Run(12);
        after.State.ShouldBe(DriveState.Running);
        after.RideThroughActive.ShouldBeFalse();
        after.SpeedRpm.ShouldBe(before.SpeedRpm, 1);
    }

    /// <summary>At full load the bus of 400 µF falls by 30 V in a millisecond: the motor must have stopped taking within some three.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1.2)]
    public void A_small_bus_at_full_load_does_not_fall_to_its_trip_level_before_the_motor_answers(double load)
    {
        var full = Fan with
        {
            Drive = Drive with { BusCapacitance = Capacitance.FromFarads(400e-6) },
            Machine = Fan.Machine with { Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(49 * load), ShaftSpeed.FromRpm(1460)) },
        };
        var drive = Running(full, Slow with { UndervoltageRideThrough = true });
        drive.SupplyPresent = false;
        var lowest = double.PositiveInfinity;
        for (var i = 0; i < 30; i++)
        {
            drive.Tick();
            lowest = Math.Min(lowest, drive.Readings.DcBusV);
        }

        drive.Readings.State.ShouldBe(DriveState.Running, drive.Readings.Trip.ToString());
        lowest.ShouldBeGreaterThan(Drive.UndervoltageTrip.Volts + 20);
    }

    [Fact]
    public void A_gap_that_outlasts_the_energy_ends_in_undervoltage()
    {
        var at = Gap(Slow with { UndervoltageRideThrough = true }, 120);

        at.State.ShouldBeOneOf(DriveState.Tripped, DriveState.Unpowered);
    }

    [Fact]
    public void A_drive_that_died_of_a_long_gap_starts_again_only_where_that_is_asked_for()
    {
        AfterReturn(ByPlate).State.ShouldBe(DriveState.Stopped);
        AfterReturn(ByPlate with { RestartAfterPowerLoss = true }).State.ShouldBe(DriveState.Running);
    }

    [Fact]
    public void A_trip_resets_itself_as_often_as_is_set_and_then_stays()
    {
        // A blocked pump stalls again and again.
        var blocked = PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(5000) } };
        var drive = new DriveSimulation(blocked, ByPlate with { Protection = new ProtectionSettings { AutomaticResets = 2, AutomaticResetDelay = Seconds(3) } }) { Order = Forward(50) };
        var starts = 0;
        var was = DriveState.Stopped;
        for (var i = 0; i < 120_000; i++)
        {
            drive.Tick();
            var now = drive.Readings.State;
            starts += now == DriveState.Running && was != DriveState.Running ? 1 : 0;
            was = now;
        }

        starts.ShouldBe(3);
        drive.Readings.State.ShouldBe(DriveState.Tripped);
    }

    [Fact]
    public void A_missing_supply_phase_trips_under_load_and_not_without()
    {
        var loaded = Running(Fan, Slow);
        loaded.SupplyPhaseLost = true;
        loaded.Run(3).Trip.ShouldBe(TripCause.SupplyPhase);

        var idle = new DriveSimulation(PumpSet with { Machine = Uncoupled }, ByPlate) { Order = Forward(20), SupplyPhaseLost = true };
        idle.Run(10).State.ShouldBe(DriveState.Running);

        var unwatched = Running(Fan, Slow with { Protection = new ProtectionSettings { TripOnSupplyPhase = false } });
        unwatched.SupplyPhaseLost = true;
        unwatched.Run(3).State.ShouldBe(DriveState.Running);
    }

    [Fact]
    public void A_lost_load_trips_after_its_delay_where_it_is_watched()
    {
        var watched = ByPlate with { Protection = new ProtectionSettings { TripOnUnderload = true, UnderloadDelay = Seconds(2) } };

        Running(PumpSet, watched).Run(10).State.ShouldBe(DriveState.Running);
        var empty = new DriveSimulation(PumpSet with { Machine = Uncoupled }, watched) { Order = Forward(50) };
        empty.Run(6.5).State.ShouldBe(DriveState.Running);
        empty.Run(3).Trip.ShouldBe(TripCause.Underload);
    }

    [Fact]
    public void A_braking_resistor_that_is_too_small_for_its_duty_trips()
    {
        var hoist = PumpSet with
        {
            Machine = Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(-35)), Breakaway = null },
            BrakingResistor = Resistance.FromOhms(60),
            BrakingResistorPower = ElectricalPower.FromWatts(1000),
        };
        var settings = ByPlate with { BrakingChopper = true, OvervoltageControl = false };
        var small = new ProtectionSettings { ResistorResistance = Resistance.FromOhms(60), ResistorPower = ElectricalPower.FromWatts(1000) };

        var drive = new DriveSimulation(hoist, settings with { Protection = small }) { Order = Forward(50) };
        var at = drive.Run(60);
        at.Trip.ShouldBe(TripCause.BrakingResistor);
        drive.Readings.ResistorC.ShouldBeGreaterThan(200);
        new DriveSimulation(hoist, settings with { Protection = small with { ResistorPower = ElectricalPower.FromWatts(8000) } }) { Order = Forward(50) }
            .Run(60).State.ShouldBe(DriveState.Running);
    }

    private static DriveSimulation Running(DriveSystem system, ControlSettings settings)
    {
        var drive = new DriveSimulation(system, settings) { Order = Forward(50) };
        drive.Run(15).State.ShouldBe(DriveState.Running);
        return drive;
    }

    private static DriveReadings Gap(ControlSettings settings, double lengthS)
    {
        var drive = Running(Fan, settings);
        drive.SupplyPresent = false;
        return drive.Run(lengthS);
    }

    private static DriveReadings AfterReturn(ControlSettings settings)
    {
        var drive = Running(PumpSet, settings);
        drive.SupplyPresent = false;
        drive.Run(120).State.ShouldBe(DriveState.Unpowered);
        drive.SupplyPresent = true;
        return drive.Run(2);
    }
}
