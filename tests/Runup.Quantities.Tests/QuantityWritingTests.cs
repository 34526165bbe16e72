using FsCheck;
using FsCheck.Fluent;

namespace Runup.Quantities.Tests;

public sealed class QuantityWritingTests
{
    [Theory]
    [InlineData(7500, UnitSystem.Metric, "7.5 kW")]
    [InlineData(750, UnitSystem.Metric, "750 W")]
    [InlineData(999.99, UnitSystem.Metric, "1 kW")]
    [InlineData(7456.998715822702, UnitSystem.UnitedStates, "10 hp")]
    [InlineData(0, UnitSystem.Metric, "0 W")]
    public void Writes_power(double watts, UnitSystem system, string text) => ShaftPower.FromWatts(watts).Write(system).ShouldBe(text);

    [Theory]
    [InlineData(0.035, UnitSystem.Metric, "0.035 kg·m²")]
    [InlineData(0.035, UnitSystem.UnitedStates, "0.8306 lb·ft²")]
    public void Writes_inertia(double si, UnitSystem system, string text) => Inertia.FromSi(si).Write(system).ShouldBe(text);

    [Fact]
    public void Writes_what_each_habit_expects()
    {
        Torque.FromSi(49.0549).Write(UnitSystem.Metric).ShouldBe("49.05 N·m");
        Torque.FromSi(49.0549).Write(UnitSystem.UnitedStates).ShouldBe("36.18 lb·ft");
        Temperature.FromCelsius(21).Write(UnitSystem.Metric).ShouldBe("21 °C");
        Temperature.FromCelsius(21).Write(UnitSystem.UnitedStates).ShouldBe("69.8 °F");
        Temperature.FromCelsius(-10).Write(UnitSystem.Metric).ShouldBe("-10 °C");
        ShaftSpeed.FromSi(1460 * Math.PI / 30).Write(UnitSystem.Metric).ShouldBe("1460 rpm");
        Duration.FromSi(1e-7).Write(UnitSystem.Metric).ShouldBe("0.1 µs");
        Length.FromSi(65).Write(UnitSystem.UnitedStates).ShouldBe("213.3 ft");
        CrossSection.FromSi(6e-6).Write(UnitSystem.Metric).ShouldBe("6 mm²");
        CrossSection.FromSi(5.2612e-6).Write(UnitSystem.UnitedStates).ShouldBe("10 AWG");
        CrossSection.FromSi(6e-6).Write(UnitSystem.UnitedStates).ShouldBe("11.84 kcmil");
        Ratio.FromSi(7.2).Write(UnitSystem.Metric).ShouldBe("7.2");
        LineVoltage.FromSi(1600).Write(UnitSystem.Metric).ShouldBe("1600 V");
        ShaftPower.FromWatts(1234567.8).Write(UnitSystem.UnitedStates, 2).ShouldBe("1700 hp");
    }

    [Fact]
    public void What_is_written_is_read_back_to_its_digits()
    {
        var cases = Gen.Zip(Gen.Zip(Gen.Choose(-9, 9), Gen.Choose(1000, 9999)), Gen.Elements(UnitSystem.Metric, UnitSystem.UnitedStates));
        Prop.ForAll(Arb.From(cases), c =>
        {
            var si = c.Item1.Item2 * Math.Pow(10, c.Item1.Item1 - 3);
            return Dimension.All.All(d => d == Dimension.Temperature || IsSame(d, si, QuantityText.ReadSi(d, QuantityText.Write(d, si, c.Item2, 6))));
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(500));
    }

    // Six digits, except that three of them after the point of a speed would be asked about, and that a gauge is a round name.
    private static bool IsSame(Dimension dimension, double si, Reading<double> reading) => reading switch
    {
        Reading<double>.Value v => Math.Abs(v.Quantity - si) <= Math.Abs(si) * (v.Unit.Symbol == "AWG" ? 1e-3 : 1e-5),
        _ => dimension == Dimension.RotationalSpeed,
    };
}
