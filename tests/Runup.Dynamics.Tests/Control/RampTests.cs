using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class RampTests
{
    private const double Tick = DriveSimulation.TickSeconds;

    [Theory]
    [InlineData(6, 50)]
    [InlineData(7.5, 50)]
    [InlineData(10, 60)]
    public void Acceleration_from_standstill_to_maximum_frequency_takes_the_set_time(double setS, double maximumHz)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(setS), MaximumFrequency = ElectricalFrequency.FromHertz(maximumHz) })
        {
            Order = Forward(maximumHz),
        };

        TimeUntil(drive, () => drive.AtTarget, 20).ShouldBe(setS, Tick * 1.01);
    }

    [Fact]
    public void Half_the_frequency_takes_half_the_time()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(6) }) { Order = Forward(25) };

        TimeUntil(drive, () => drive.AtTarget, 20).ShouldBe(3, Tick * 1.01);
    }

    [Fact]
    public void Deceleration_to_zero_takes_the_set_time()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Deceleration = Seconds(6) }) { Order = Forward(50) };
        drive.Run(6);
        drive.Order = Stop();

        TimeUntil(drive, () => drive.Readings.OutputFrequencyHz == 0, 20).ShouldBe(6, Tick * 1.01);
        drive.Readings.State.ShouldBe(DriveState.Stopping);
    }

    [Fact]
    public void A_new_ramp_time_holds_from_the_moment_it_is_set()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(10) }) { Order = Forward(50) };
        drive.Run(2).OutputFrequencyHz.ShouldBe(10, 0.01);

        drive.Apply(ByPlate with { Acceleration = Seconds(5) });

        drive.Run(1).OutputFrequencyHz.ShouldBe(20, 0.02);
    }

    [Fact]
    public void Reverse_passes_through_zero()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { ReversePermitted = true }) { Order = Forward(30) };
        drive.Run(5);
        drive.Order = Forward(-30);

        var after = drive.Run(8);

        after.OutputFrequencyHz.ShouldBe(-30);
        after.SpeedRpm.ShouldBe(-890, 10);
        after.TorqueNm.ShouldBeLessThan(-10);
    }

    [Fact]
    public void Frequencies_beyond_the_limits_are_taken_to_them()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { MinimumFrequency = ElectricalFrequency.FromHertz(20) }) { Order = Forward(5) };

        drive.Run(6).OutputFrequencyHz.ShouldBe(20);
        drive.Order = Forward(80);
        drive.Run(6).OutputFrequencyHz.ShouldBe(50);
    }

    private static double TimeUntil(DriveSimulation drive, Func<bool> ended, double atMostS)
    {
        var beginS = drive.Readings.TimeS;
        do
        {
            drive.Tick();
        }
        while (!ended() && drive.Readings.TimeS - beginS < atMostS);

        return drive.Readings.TimeS - beginS;
    }
}
