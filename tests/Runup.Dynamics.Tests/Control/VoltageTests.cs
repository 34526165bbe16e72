using Runup.Engineering.Drives;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class VoltageTests
{
    [Theory]
    [InlineData(VoltageShape.Linear, 25, 200 + 4)]
    [InlineData(VoltageShape.Linear, 40, 320 + 1.6)]
    [InlineData(VoltageShape.Quadratic, 25, 100 + 4)]
    public void Voltage_follows_its_curve_with_boost(VoltageShape shape, double frequencyHz, double expectedV)
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { VoltageShape = shape }) { Order = Forward(frequencyHz) };

        drive.Run(8).OutputVoltageV.ShouldBe(expectedV, 0.1);
    }

    [Fact]
    public void Voltage_ends_at_what_the_bus_allows()
    {
        var settings = ByPlate with { MaximumOutputVoltage = LineVoltage.FromVolts(460) };
        var drive = new DriveSimulation(PumpSet, settings) { Order = Forward(50) };

        var at = drive.Run(8);

        // 95 % of six-step switching: 0.95·√6/π of the bus.
        at.OutputVoltageV.ShouldBe(0.7407 * at.DcBusV, 0.5);
    }

    /// <summary>Six-pulse bridge: mean 1.35, peak 1.414 times line voltage; idle 1.36 to 1.43 and loaded 1.28 to 1.38 as acceptance (common practice, no source).</summary>
    [Fact]
    public void Bus_stands_near_the_peak_idle_and_near_the_mean_loaded()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate);

        var idle = drive.Run(5).DcBusV / 400;
        drive.Order = Forward(50);
        var loaded = drive.Run(8).DcBusV / 400;

        idle.ShouldBeInRange(1.40, 1.4143);
        loaded.ShouldBeInRange(1.33, 1.36);
    }

    [Fact]
    public void Slip_compensation_brings_the_shaft_to_the_speed_of_its_frequency()
    {
        var without = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(40) }.Run(8);
        var with = new DriveSimulation(PumpSet, ByPlate with { SlipCompensation = Fraction.FromRatio(1) }) { Order = Forward(40) }.Run(8);

        (1200 - without.SpeedRpm).ShouldBeGreaterThan(15);
        Math.Abs(1200 - with.SpeedRpm).ShouldBeLessThan(6);
    }
}
