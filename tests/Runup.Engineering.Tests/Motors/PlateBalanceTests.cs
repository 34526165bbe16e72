using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class PlateBalanceTests
{
    [Fact]
    public void Values_that_agree_within_their_digits_are_consistent()
    {
        // 7500 / (√3 · 400 · 14.4 · 0.83 · 0.904) = 1.00191; half digits allow 0.67 + 0.13 + 0.35 + 0.60 + 0.06 = 1.8 %.
        var balance = PlateBalance.Of(Plates.Pump).ShouldBeOfType<PlateBalance.Consistent>();
        balance.Imbalance.Ratio.ShouldBe(0.00191, 0.00001);
        balance.Tolerance.Ratio.ShouldBe(0.0180, 0.0001);
    }

    [Fact]
    public void Horsepower_taken_for_kilowatts_is_inconsistent()
    {
        var balance = PlateBalance.Of(Plates.Pump with { Output = ShaftPower.FromWatts(10_000) }).ShouldBeOfType<PlateBalance.Inconsistent>();
        balance.Imbalance.Ratio.ShouldBe(0.336, 0.001);
    }

    [Fact]
    public void Without_power_factor_there_is_nothing_to_hold_against() =>
        PlateBalance.Of(Plates.Pump with { PowerFactor = null }).ShouldBeOfType<PlateBalance.Undetermined>();

    [Fact]
    public void A_power_factor_of_zero_is_no_divisor() =>
        PlateBalance.Of(Plates.Pump with { PowerFactor = PowerFactor.FromRatio(0) }).ShouldBeOfType<PlateBalance.Undetermined>();
}
