using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class OvervoltageTests
{
    private static readonly DriveSystem Heavy = PumpSet with
    {
        Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1.5), Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(10), ShaftSpeed.FromRpm(1460)) },
    };

    private static readonly ControlSettings ShortStop = ByPlate with { Deceleration = Seconds(1) };

    [Fact]
    public void Heavy_masses_and_a_short_ramp_trip_where_the_control_is_off()
    {
        var drive = Running(Heavy, ShortStop with { OvervoltageControl = false });

        var at = drive.Run(1);

        at.State.ShouldBe(DriveState.Tripped);
        at.Trip.ShouldBe(TripCause.Overvoltage);
        at.OutputCurrentA.ShouldBe(0);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void The_control_stretches_the_ramp_and_keeps_the_bus_below_the_trip_level(double decelerationS)
    {
        var drive = Running(Heavy, ShortStop with { Deceleration = Seconds(decelerationS) });
        var (highest, active) = (0.0, 0);

        var seconds = 0.0;
        for (; seconds < 90 && drive.Readings.State == DriveState.Stopping; seconds += DriveSimulation.TickSeconds)
        {
            drive.Tick();
            highest = Math.Max(highest, drive.LargestDcBusV);
            active += drive.Readings.OvervoltageControlActive ? 1 : 0;
        }

        drive.Readings.State.ShouldBe(DriveState.Stopped);
        seconds.ShouldBeGreaterThan(10);
        highest.ShouldBeLessThan(810);
        active.ShouldBeGreaterThan(1000);
    }

    [Fact]
    public void A_resistor_of_the_right_size_takes_the_energy_on_the_set_ramp()
    {
        var settings = ShortStop with { BrakingChopper = true, Deceleration = Seconds(3) };
        var drive = Running(Heavy with { BrakingResistor = Resistance.FromOhms(60) }, settings);
        var (highest, chopped) = (0.0, false);

        for (var i = 0; i < 3000; i++)
        {
            drive.Tick();
            highest = Math.Max(highest, drive.LargestDcBusV);
            chopped |= drive.Readings.ChopperOn;
        }

        chopped.ShouldBeTrue();
        highest.ShouldBeInRange(760, 775);
        drive.Readings.OutputFrequencyHz.ShouldBe(0, 0.05);
    }

    [Fact]
    public void A_chopper_without_resistor_does_nothing()
    {
        var drive = Running(Heavy, ShortStop with { BrakingChopper = true, OvervoltageControl = false });

        drive.Run(1).Trip.ShouldBe(TripCause.Overvoltage);
    }

    [Fact]
    public void A_ramp_that_the_losses_can_brake_is_not_stretched()
    {
        var drive = Running(PumpSet, ByPlate with { Deceleration = Seconds(5) });

        drive.Run(5.002).OutputFrequencyHz.ShouldBe(0);
    }

    private static DriveSimulation Running(DriveSystem system, ControlSettings settings)
    {
        var drive = new DriveSimulation(system, settings) { Order = Forward(50) };
        drive.Run(8);
        drive.Order = Stop();
        drive.Tick();
        return drive;
    }

    [Theory]
    [InlineData("sensorless-vector")]
    [InlineData("encoder-vector")]
    public void A_flywheel_without_load_ends_its_ramp_under_vector_control_without_an_overvoltage_trip(string control)
    {
        var settings = ControlSettings.From(MotorSettings.With(Setting.ControlMethod, control), Drive);
        var flywheel = Pump with { Load = new LoadCurve.Constant(default), Breakaway = null, MachineInertia = Inertia.FromKilogramSquareMetres(0.5) };
        var drive = new DriveSimulation(PumpSet with { Machine = flywheel }, settings) { Order = Forward(50) };

        var at = drive.Run(15);

        at.State.ShouldBe(DriveState.Running, at.Trip.ToString());
        at.SpeedRpm.ShouldBe(1500, 15);
        drive.Order = Stop();
        drive.Run(30).State.ShouldBe(DriveState.Stopped, drive.Readings.Trip.ToString());
    }
}
