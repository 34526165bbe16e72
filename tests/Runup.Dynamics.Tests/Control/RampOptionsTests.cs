using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class RampOptionsTests
{
    [Fact]
    public void An_s_curve_adds_its_time_once_and_bends_both_ends()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(5), SCurve = Seconds(1) }) { Order = Forward(50) };

        // The rate rises to 10 Hz/s within the first second: half a second's worth of a ramp.
        drive.Run(1).OutputFrequencyHz.ShouldBe(5, 0.05);
        drive.Run(4).OutputFrequencyHz.ShouldBe(45, 0.1);
        drive.AtTarget.ShouldBeFalse();
        drive.Run(1.01);
        drive.AtTarget.ShouldBeTrue();
        drive.Readings.OutputFrequencyHz.ShouldBe(50, 1e-9);
    }

    [Fact]
    public void An_s_curve_never_bends_the_rate_faster_than_it_says_and_never_overshoots()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(5), Deceleration = Seconds(20), SCurve = Seconds(0.8) }) { Order = Forward(40) };
        var (last, lastRate, highest, steepest) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < 26_000; i++)
        {
            if (i == 6000)
            {
                drive.Order = Stop();
            }

            drive.Tick();
            var hz = drive.Readings.OutputFrequencyHz;
            var rate = (hz - last) / DriveSimulation.TickSeconds;
            steepest = Math.Max(steepest, Math.Abs(rate - lastRate) / DriveSimulation.TickSeconds);
            (last, lastRate, highest) = (hz, rate, Math.Max(highest, hz));
        }

        highest.ShouldBe(40, 1e-3);
        steepest.ShouldBeLessThan(50.0 / 5 / 0.8 * 1.01);
        drive.Readings.State.ShouldBe(DriveState.Stopped);
    }

    [Fact]
    public void A_quick_stop_is_not_rounded()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { SCurve = Seconds(2), QuickStop = Seconds(2) }) { Order = Forward(50) };
        drive.Run(9);
        drive.Order = Stop(StopKind.QuickStop);

        drive.Run(1).OutputFrequencyHz.ShouldBe(25, 0.2);
    }

    [Fact]
    public void The_second_ramps_hold_while_they_are_asked_for()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(5), SecondAcceleration = Seconds(10), SecondDeceleration = Seconds(20) })
        {
            Order = Forward(50) with { SecondRamps = true },
        };
        drive.Run(2).OutputFrequencyHz.ShouldBe(10, 0.1);
        drive.Order = Forward(50);
        drive.Run(1).OutputFrequencyHz.ShouldBe(20, 0.1);
        drive.Order = Stop() with { SecondRamps = true };
        drive.Run(2).OutputFrequencyHz.ShouldBe(15, 0.1);
    }

    [Theory]
    [InlineData(0, 20, 18.5)]
    [InlineData(40, 20, 21.5)]
    [InlineData(0, 18, 18)]
    [InlineData(0, 22, 22)]
    [InlineData(0, 30, 30)]
    public void No_run_stays_within_a_skipped_band(double fromHz, double askedHz, double staysAtHz)
    {
        var band = new SkipBand(ElectricalFrequency.FromHertz(20), ElectricalFrequency.FromHertz(3));
        var drive = new DriveSimulation(PumpSet, ByPlate with { SkipBands = [band] });
        if (fromHz > 0)
        {
            drive.Order = Forward(fromHz);
            drive.Run(8);
        }

        drive.Order = Forward(askedHz);

        drive.Run(8).OutputFrequencyHz.ShouldBe(staysAtHz, 1e-9);
        drive.AtTarget.ShouldBeTrue();
    }

    [Fact]
    public void The_settings_of_a_job_reach_the_control()
    {
        var settings = ControlSettings.From(
            MotorSettings.With(Setting.SCurve, 0.5).With(Setting.SecondAccelerationTime, 12).With(Setting.SkipFrequency1, 20).With(Setting.SkipWidth, 3)
                .With(Setting.SkipFrequency2, 30).With(Setting.SkipWidth2, 1).With(Setting.FlyingRestart, "on").With(Setting.UndervoltageRideThrough, "on")
                .With(Setting.ControlMethod, "sensorless-vector"),
            Drive);

        settings.SCurve.Seconds.ShouldBe(0.5);
        settings.SecondAcceleration!.Value.Seconds.ShouldBe(12);
        settings.SkipBands.Select(b => (b.Centre.Hertz, b.Width.Hertz)).ShouldBe([(20, 3), (30, 1)]);
        (settings.FlyingRestart, settings.UndervoltageRideThrough, settings.Vector).ShouldBe((true, true, true));
    }
}
