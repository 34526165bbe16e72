using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Drives;

public sealed class DeratedCurrentTests
{
    private static DeratedCurrent Of(double kHz, double celsius, double metres, int cycle = 0) => DeratedCurrent.Of(
        Ratings.SevenAndAHalf,
        Ratings.SevenAndAHalf.Overloads[cycle],
        SwitchingFrequency.FromHertz(kHz * 1000),
        Temperature.FromCelsius(celsius),
        Length.FromMetres(metres));

    private static DeratedCurrent.Permitted Permitted(DeratedCurrent answer) => answer.ShouldBeOfType<DeratedCurrent.Permitted>();

    [Fact]
    public void Nothing_is_lost_up_to_the_makers_limits() =>
        Permitted(Of(4, 40, 1000)).Current.Amperes.ShouldBe(17, 1e-12);

    [Fact]
    public void The_heavy_cycle_has_its_own_current() =>
        Permitted(Of(2, 30, 0, cycle: 1)).Current.Amperes.ShouldBe(13.6, 1e-12);

    [Fact]
    public void Factors_multiply()
    {
        // docs/calculations/derated-current.md: 17 A · 0.925 (6 kHz, halfway from 100 % at 4 to 85 % at 8) · 0.925 (45 °C: 5 K · 1.5 %) · 0.9 (2000 m: 10 · 1 %).
        var answer = Permitted(Of(6, 45, 2000));
        answer.Switching.Ratio.ShouldBe(0.925, 1e-12);
        answer.Ambient.Ratio.ShouldBe(0.925, 1e-12);
        answer.Altitude.Ratio.ShouldBe(0.9, 1e-12);
        answer.Current.Amperes.ShouldBe(13.091, 0.0005);
        answer.MarginOver(LineCurrent.FromAmperes(14.4)).Percent.ShouldBe(-9.09, 0.005);
    }

    [Fact]
    public void Beyond_the_highest_values_every_limit_passed_is_named() =>
        Of(16, 55, 5000).ShouldBeOfType<DeratedCurrent.NotPermitted>().Reasons.Count.ShouldBe(3);
}
