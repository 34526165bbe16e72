using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class StopTests
{
    [Fact]
    public void Coasting_switches_off_at_once_and_only_the_load_brakes()
    {
        // J dω/dt = −T: 0.155 kg·m², 10 N·m and the bearings' part of 60 W at 1460 rpm, with windage on top.
        var machine = Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(10)) };
        var drive = new DriveSimulation(PumpSet with { Machine = machine }, ByPlate) { Order = Forward(50) };
        var before = drive.Run(7);
        drive.Order = Stop(StopKind.Coast);

        var after = drive.Run(1);

        after.State.ShouldBe(DriveState.Stopped);
        after.OutputCurrentA.ShouldBe(0);
        var bearings = 0.5 * 60 / (1460 * Math.PI / 30);
        var least = (10 + bearings) / 0.155 * 30 / Math.PI;
        (before.SpeedRpm - after.SpeedRpm).ShouldBeInRange(least, 1.02 * least);
        drive.Run(3).SpeedRpm.ShouldBe(0);
    }

    [Fact]
    public void The_method_of_the_settings_is_used_where_none_is_ordered()
    {
        var coasting = Running(ByPlate with { StoppingMethod = StoppingMethod.Coast });
        coasting.Order = Stop();
        coasting.Tick();
        coasting.Readings.State.ShouldBe(DriveState.Stopped);

        var ramping = Running(ByPlate with { StoppingMethod = StoppingMethod.Coast });
        ramping.Order = Stop(StopKind.Ramp);
        ramping.Tick();
        ramping.Readings.State.ShouldBe(DriveState.Stopping);
    }

    [Fact]
    public void Quick_stop_has_its_own_ramp_and_is_not_called_off()
    {
        var drive = Running(ByPlate with { Deceleration = Seconds(20), QuickStop = Seconds(2) });
        drive.Order = Stop(StopKind.QuickStop);
        drive.Run(1).OutputFrequencyHz.ShouldBe(25, 0.1);

        drive.Order = Forward(50);
        drive.Run(0.5).State.ShouldBe(DriveState.QuickStopping);
        drive.Run(2).State.ShouldBe(DriveState.Stopped);
        drive.Run(2).State.ShouldBe(DriveState.Stopped, "a run order that stood all the time is no new start");
    }

    [Fact]
    public void A_stop_may_be_called_off_on_the_ramp()
    {
        var drive = Running(ByPlate);
        drive.Order = Stop();
        drive.Run(1).State.ShouldBe(DriveState.Stopping);

        drive.Order = Forward(50);

        drive.Run(2).State.ShouldBe(DriveState.Running);
        drive.Readings.OutputFrequencyHz.ShouldBe(50);
    }

    [Fact]
    public void Direct_current_brakes_faster_than_coasting()
    {
        var uncoupled = PumpSet with { Machine = Uncoupled with { MotorInertia = Inertia.FromKilogramSquareMetres(0.3) } };
        var settings = ByPlate with
        {
            StoppingMethod = StoppingMethod.DcBraking,
            DcBrakingFrequency = ElectricalFrequency.FromHertz(10),
            Deceleration = Seconds(20),
            DcBrakingTime = Seconds(3),
            DcBrakingCurrent = Fraction.FromPercent(60),
        };
        var drive = new DriveSimulation(uncoupled, settings) { Order = Forward(20) };
        drive.Run(5);
        drive.Order = Stop();
        var before = drive.Run(4 + 0.3).SpeedRpm;

        var braking = drive.Run(2);

        var bearingsAlone = 30 / Math.PI * 2 * 60 / (1460 * Math.PI / 30) / 0.3;
        braking.OutputFrequencyHz.ShouldBe(0);
        braking.OutputCurrentA.ShouldBe(0.6 * 14.4, 0.05 * 14.4);
        (before - braking.SpeedRpm).ShouldBeGreaterThan(4 * bearingsAlone);
        drive.Run(1.2).State.ShouldBe(DriveState.Stopped);
    }

    private static DriveSimulation Running(ControlSettings settings)
    {
        var drive = new DriveSimulation(PumpSet, settings) { Order = Forward(50) };
        drive.Run(6);
        return drive;
    }
}
