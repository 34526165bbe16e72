using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>A load that drives the motor beyond what it can hold.</summary>
public sealed class OverspeedTests
{
    [Theory]
    [InlineData("vf", 48)]
    [InlineData("vf", 30)]
    [InlineData("sensorless-vector", 48)]
    [InlineData("encoder-vector", 48)]
    [InlineData("encoder-vector", 10)]
    public void A_load_that_drives_harder_than_the_motor_holds_trips_beyond_the_level(string control, double hertz)
    {
        var drive = Driven(control, hertz, 110, overRpm: 100);
        for (var i = 0; i < 20_000 && drive.Readings.State != DriveState.Tripped; i++)
        {
            drive.Tick();
        }

        drive.Readings.Trip.ShouldBe(TripCause.Overspeed);
        drive.Readings.SpeedRpm.ShouldBeInRange(1.2 * 1500, 1.4 * 1.2 * 1500);
    }

    [Fact]
    public void By_the_plate_alone_the_speed_is_told_well_enough()
    {
        var drive = Driven("vf", 48, 110, overRpm: 100, tuned: false);
        for (var i = 0; i < 20_000 && drive.Readings.State != DriveState.Tripped; i++)
        {
            drive.Tick();
        }

        drive.Readings.Trip.ShouldBe(TripCause.Overspeed);
    }

    [Theory]
    [InlineData("vf")]
    [InlineData("sensorless-vector")]
    [InlineData("encoder-vector")]
    public void A_load_that_the_motor_holds_is_held_at_the_highest_frequency(string control)
    {
        var at = Driven(control, 50, 45, overRpm: 1000).Run(12);

        at.State.ShouldBe(DriveState.Running, at.Trip.ToString());
        at.SpeedRpm.ShouldBe(1500, 60);
    }

    // Such as goods that run down a conveyor: what drives comes with the speed.
    private static DriveSimulation Driven(string control, double hertz, double drivingNm, double overRpm, bool tuned = true)
    {
        var values = MotorSettings.With(Setting.ControlMethod, control).With(Setting.BrakingChopper, "on").With(Setting.AccelerationTime, 5);
        var settings = ControlSettings.From(values, Drive) with { Tuned = tuned ? TunedMotor.Of(Motor) : null };
        var fullRpm = (30 * hertz) - 60;
        var curve = new LoadCurve.Table([(ShaftSpeed.FromRpm(0), default), (ShaftSpeed.FromRpm(fullRpm - overRpm), default), (ShaftSpeed.FromRpm(fullRpm), Torque.FromNewtonMetres(-drivingNm))]);
        var system = PumpSet with
        {
            Machine = Pump with { Load = curve, MachineInertia = Inertia.FromKilogramSquareMetres(1), Breakaway = null },
            BrakingResistor = Resistance.FromOhms(20),
        };
        return new DriveSimulation(system, settings) { Order = Forward(hertz) };
    }
}
