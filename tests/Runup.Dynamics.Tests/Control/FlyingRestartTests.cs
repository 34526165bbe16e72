using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class FlyingRestartTests
{
    private static readonly DriveSystem Fan = PumpSet with
    {
        Machine = Pump with { Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(25), ShaftSpeed.FromRpm(1460)), MachineInertia = Inertia.FromKilogramSquareMetres(2), Breakaway = null },
    };

    private static readonly ControlSettings Settings = ByPlate with { Acceleration = Seconds(15), ReversePermitted = true };

    [Theory]
    [InlineData(50, 0, false)]
    [InlineData(50, 3, false)]
    [InlineData(35, 2, false)]
    [InlineData(-40, 1, false)]
    [InlineData(50, 2, true)]
    public void A_spinning_motor_is_caught_without_a_blow(double fromHz, double coastS, bool vector)
    {
        var (drive, coasting) = Coasting(Settings with { FlyingRestart = true, Vector = vector }, fromHz, coastS);
        drive.Order = Forward(50);
        var (peakA, peakV, lowest, caught) = (0.0, 0.0, double.PositiveInfinity, 0.0);
        for (var i = 0; i < 12_000; i++)
        {
            drive.Tick();
            peakA = Math.Max(peakA, drive.LargestCurrentA);
            peakV = Math.Max(peakV, drive.LargestDcBusV);
            if (fromHz > 0)
            {
                lowest = Math.Min(lowest, drive.Readings.SpeedRpm);
            }

            caught = i == 8000 ? drive.Readings.SpeedRpm : caught;
        }

        drive.Readings.State.ShouldBe(DriveState.Running);
        peakA.ShouldBeLessThan(1.9 * 14.4);
        peakV.ShouldBeLessThan(Drive.OvervoltageControl.Volts + 20);
        if (fromHz > 0)
        {
            lowest.ShouldBeGreaterThan(0.7 * coasting.SpeedRpm);
        }

        drive.Run(60).SpeedRpm.ShouldBe(1490, 20);
    }

    [Fact]
    public void Without_it_the_motor_is_braked_to_nothing_or_trips()
    {
        var (drive, coasting) = Coasting(Settings, 50, 1);
        drive.Order = Forward(50);

        var lowest = coasting.SpeedRpm;
        for (var i = 0; i < 6000; i++)
        {
            drive.Tick();
            lowest = Math.Min(lowest, drive.Readings.SpeedRpm);
        }

        (drive.Readings.State == DriveState.Tripped || lowest < 0.6 * coasting.SpeedRpm).ShouldBeTrue($"{lowest:f0} rpm, {drive.Readings.State}");
    }

    [Fact]
    public void A_motor_at_rest_starts_from_zero_after_the_search()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { FlyingRestart = true }) { Order = Forward(50) };

        var at = drive.Run(14);

        at.State.ShouldBe(DriveState.Running);
        at.OutputFrequencyHz.ShouldBe(50);
    }

    private static (DriveSimulation Drive, DriveReadings At) Coasting(ControlSettings settings, double fromHz, double coastS)
    {
        var drive = new DriveSimulation(Fan, settings with { FlyingRestart = false, Vector = false }) { Order = Forward(fromHz) };
        drive.Run(20).SpeedRpm.ShouldBe(30 * fromHz, 40);
        drive.Order = Stop(StopKind.Coast);
        var at = drive.Run(Math.Max(coastS, 0.01));
        drive.Apply(settings);
        return (drive, at);
    }
}
