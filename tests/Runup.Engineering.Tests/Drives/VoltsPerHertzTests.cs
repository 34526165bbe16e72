using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Drives;

public sealed class VoltsPerHertzTests
{
    private static readonly VoltsPerHertz Straight = new()
    {
        BaseFrequency = ElectricalFrequency.FromHertz(50),
        MaximumVoltage = LineVoltage.FromVolts(400),
        RatedVoltage = LineVoltage.FromVolts(400),
    };

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(25, 0, 200)]
    [InlineData(50, 0, 400)]
    [InlineData(70, 0, 400)]
    [InlineData(0, 5, 20)]
    [InlineData(25, 5, 210)]
    [InlineData(50, 5, 400)]
    public void Straight_with_a_boost_that_falls_to_nothing_at_base_frequency(double hertz, double boostPercent, double volts) =>
        (Straight with { Boost = Fraction.FromPercent(boostPercent) }).At(ElectricalFrequency.FromHertz(hertz)).Volts.ShouldBe(volts, 1e-9);

    [Theory]
    [InlineData(25, 0, 100)]
    [InlineData(10, 4, 16 + 12.8)]
    public void Square(double hertz, double boostPercent, double volts) =>
        (Straight with { Shape = VoltageShape.Quadratic, Boost = Fraction.FromPercent(boostPercent) })
            .At(ElectricalFrequency.FromHertz(hertz)).Volts.ShouldBe(volts, 1e-9);
}
