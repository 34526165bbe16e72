using FsCheck;
using FsCheck.Fluent;

namespace Runup.Quantities.Tests;

public sealed class QuantityTextTests
{
    // Factors by definition (NIST SP 811, appendix B); sections of gauges from their formula (ASTM B258).
    [Theory]
    [InlineData("7.5 kW", 7500, 50)]
    [InlineData("7,5 kW", 7500, 50)]
    [InlineData("7.5kW", 7500, 50)]
    [InlineData("7.50 kW", 7500, 5)]
    [InlineData("10 hp", 7456.998715822702, 372.85)]
    [InlineData("10 HP", 7456.998715822702, 372.85)]
    [InlineData("1/2 hp", 372.8499357911351, 0)]
    [InlineData("7 1/2 hp", 5592.749036867027, 0)]
    [InlineData("7-1/2 HP", 5592.749036867027, 0)]
    [InlineData("7½ hp", 5592.749036867027, 0)]
    [InlineData("¾ hp", 559.2749036867026, 0)]
    [InlineData("10 PS", 7354.9875, 367.75)]
    [InlineData("1 500 W", 1500, 0.5)]
    [InlineData("1\u00A0500 W", 1500, 0.5)]
    [InlineData("1'500 W", 1500, 0.5)]
    [InlineData("1.460,5 W", 1460.5, 0.05)]
    [InlineData("1,460.5 W", 1460.5, 0.05)]
    [InlineData("1 460,5 W", 1460.5, 0.05)]
    [InlineData("1,234,567 W", 1234567, 0.5)]
    [InlineData("1.234.567 W", 1234567, 0.5)]
    [InlineData("1500,250 W", 1500.25, 0.0005)]
    [InlineData("0,750 kW", 750, 0.5)]
    [InlineData("1.500 kW", 1500, 0.5)]
    [InlineData("1e-3 W", 0.001, 0.0005)]
    [InlineData("1.50E3 W", 1500, 5)]
    [InlineData("+5 W", 5, 0.5)]
    [InlineData("-5 W", -5, 0.5)]
    [InlineData("−5 W", -5, 0.5)]
    [InlineData(".5 W", 0.5, 0.05)]
    public void Reads_power(string text, double watts, double rounding) => Check<ShaftPower>(text, watts, rounding, p => p.Watts);

    [Theory]
    [InlineData("1460 rpm", 1460, 0.5)]
    [InlineData("1460 1/min", 1460, 0.5)]
    [InlineData("1 460 1/min", 1460, 0.5)]
    [InlineData("1460 min⁻¹", 1460, 0.5)]
    [InlineData("1460 min-1", 1460, 0.5)]
    [InlineData("1460 min^-1", 1460, 0.5)]
    [InlineData("1460 /min", 1460, 0.5)]
    [InlineData("1460 RPM", 1460, 0.5)]
    [InlineData("24.3 1/s", 1458, 3)]
    public void Reads_speed(string text, double rpm, double rounding) =>
        Check<ShaftSpeed>(text, rpm * Math.PI / 30, rounding * Math.PI / 30, s => s.RadiansPerSecond);

    [Theory]
    [InlineData("35 lb·ft²")]
    [InlineData("35 lb⋅ft²")]
    [InlineData("35 lb.ft2")]
    [InlineData("35 lb-ft2")]
    [InlineData("35 lb ft^2")]
    [InlineData("35 lbft²")]
    [InlineData("35 LB-FT2")]
    public void Reads_inertia_in_pounds(string text) => Check<Inertia>(text, 35 * 0.45359237 * 0.3048 * 0.3048, 0.5 * 0.45359237 * 0.3048 * 0.3048, j => j.KilogramSquareMetres);

    [Theory]
    [InlineData("0,035 kg·m²")]
    [InlineData("0.035 kg·m2")]
    [InlineData("0.035 kgm^2")]
    [InlineData("0.035 kg*m2")]
    [InlineData("0.035 kg m²")]
    public void Reads_inertia(string text) => Check<Inertia>(text, 0.035, 0.0005, j => j.KilogramSquareMetres);

    [Theory]
    [InlineData("21 °C", 294.15, 0.5)]
    [InlineData("-10 °C", 263.15, 0.5)]
    [InlineData("70 °F", 294.2611111111111, 0.2777777777777778)]
    [InlineData("21 ºC", 294.15, 0.5)]
    [InlineData("300 K", 300, 0.5)]
    public void Reads_temperature(string text, double kelvin, double rounding) => Check<Temperature>(text, kelvin, rounding, t => t.Kelvin);

    [Theory]
    [InlineData("0.1 µs")]
    [InlineData("0.1 μs")]
    [InlineData("0.1 us")]
    [InlineData("100 ns")]
    public void Reads_short_times(string text) => Check<Duration>(text, 1e-7, text[0] == '1' ? 0.5e-9 : 0.5e-7, t => t.Seconds);

    [Theory]
    [InlineData("0.70 Ω")]
    [InlineData("0.70 \u2126")]
    [InlineData("0.70 ohm")]
    [InlineData("0.70 Ohms")]
    public void Reads_resistance(string text) => Check<Resistance>(text, 0.7, 0.005, r => r.Ohms);

    // Sections of solid wire: NEC chapter 9, table 8 prints 5.261 mm² for 10 AWG and 107.2 mm² for 4/0 (from memory).
    [Theory]
    [InlineData("10 AWG", 5.261)]
    [InlineData("AWG 10", 5.261)]
    [InlineData("#10 AWG", 5.261)]
    [InlineData("AWG10", 5.261)]
    [InlineData("1/0 AWG", 53.49)]
    [InlineData("0 AWG", 53.49)]
    [InlineData("2/0 awg", 67.43)]
    [InlineData("000 AWG", 85.01)]
    [InlineData("4/0 AWG", 107.2)]
    [InlineData("250 kcmil", 126.7)]
    [InlineData("250 MCM", 126.7)]
    [InlineData("6 mm²", 6)]
    [InlineData("6 mm2", 6)]
    public void Reads_sections(string text, double squareMillimetres) =>
        Value<CrossSection>(text).Quantity.SquareMillimetres.ShouldBe(squareMillimetres, squareMillimetres * 5e-4);

    [Theory]
    [InlineData("1,500 rpm", "`1,500 rpm` can be 1500 rpm or 1.5 rpm; which is meant? Write `1500 rpm` or `1.5 rpm`")]
    [InlineData("1.500 rpm", "`1.500 rpm` can be 1500 rpm or 1.5 rpm; which is meant? Write `1500 rpm` or `1.5 rpm`")]
    [InlineData("12,345 rpm", "`12,345 rpm` can be 12345 rpm or 12.345 rpm; which is meant? Write `12345 rpm` or `12.345 rpm`")]
    [InlineData("1460", "`1460` has no unit; rpm, rad/s or 1/s would do")]
    [InlineData("24 Hz", "`24 Hz` is a frequency; a speed is wanted here: rpm, rad/s or 1/s would do")]
    [InlineData("1460 rmp", "`rmp` is no unit of speed; `rpm` would do, if that is meant, or another of rpm, rad/s or 1/s")]
    [InlineData("rpm", "`rpm` does not begin with a number; a number with rpm, rad/s or 1/s would do")]
    [InlineData("", "nothing; a number with rpm, rad/s or 1/s would do")]
    [InlineData("1460/1750 rpm", "`1460/1750 rpm` holds two values; write the one in use")]
    [InlineData("1460..1750 rpm", "`1460..1750 rpm` holds two values; write the one in use")]
    [InlineData("1460 - 1750 rpm", "`1460 - 1750 rpm` holds two values; write the one in use")]
    [InlineData("14,60,00 rpm", "the points and commas of `14,60,00 rpm` make no number; a number with rpm, rad/s or 1/s would do")]
    [InlineData("1e999 rpm", "`1e999 rpm` is beyond all measure; a number with rpm, rad/s or 1/s would do")]
    [InlineData("1/2 rpm", "the fraction in `1/2 rpm`; fractions are read before hp, in and ft; elsewhere write a decimal number, and of two values the one in use")]
    public void Says_what_is_wrong_with_a_speed(string text, string message) => Problem<ShaftSpeed>(text).ShouldBe(message);

    [Theory]
    [InlineData("7.5 mW")]
    [InlineData("7.5 mw")]
    [InlineData("7.5 Mmw")]
    public void Milliwatts_are_never_taken_for_megawatts(string text) => Read<ShaftPower>(text).ShouldBeOfType<Reading<ShaftPower>.Problem>();

    [Fact]
    public void Megawatts_are_megawatts() => Check<ShaftPower>("2 MW", 2e6, 5e5, p => p.Watts);

    [Fact]
    public void Milliamperes_are_not_megaamperes() => Read<LineCurrent>("30 MA").ShouldBeOfType<Reading<LineCurrent>.Problem>();

    [Fact]
    public void Two_voltages_of_a_plate_are_not_a_fraction()
    {
        Problem<LineVoltage>("230/400 V").ShouldStartWith("`230/400 V` holds two values");
        Problem<LineCurrent>("6/12 A").ShouldStartWith("the fraction in `6/12 A`");
        Problem<ElectricalFrequency>("50/60 Hz").ShouldStartWith("`50/60 Hz` holds two values");
    }

    [Fact]
    public void A_pure_number_takes_no_unit()
    {
        Problem<PowerFactor>("83 %").ShouldBe("`83 %` is a fraction; a number without a unit would do");
        Value<PowerFactor>("0,83").Quantity.Ratio.ShouldBe(0.83);
    }

    [Fact]
    public void What_can_not_be_negative_is_refused_below_zero() =>
        Problem<Inertia>("-1 kg·m²").ShouldBe("`-1 kg·m²` lies below zero; inertia from zero up would do");

    [Fact]
    public void Nothing_is_colder_than_absolute_zero() => Problem<Temperature>("-300 °C").ShouldContain("absolute zero");

    [Fact]
    public void Notation_tells_a_decimal_comma_and_a_point_that_may_be_none()
    {
        Value<Torque>("7,5 N·m").Notation.ShouldBe(NumberNotation.DecimalComma);
        Value<Torque>("1.250 N·m").Notation.ShouldBe(NumberNotation.PointBeforeThreeDigits);
        Value<Torque>("0.250 N·m").Notation.ShouldBe(NumberNotation.Plain);
        Value<Torque>("7.5 N·m").Notation.ShouldBe(NumberNotation.Plain);
    }

    [Fact]
    public void Every_spelling_of_every_unit_is_read()
    {
        foreach (var dimension in Dimension.All)
        {
            foreach (var unit in dimension.Units)
            {
                foreach (var spelling in unit.Spellings.Prepend(unit.Symbol))
                {
                    var value = QuantityText.ReadSi(dimension, "12.5 " + spelling).ShouldBeOfType<Reading<double>.Value>(spelling);
                    value.Quantity.ShouldBe(unit.ToSi(12.5), spelling);
                    value.RoundingSi.ShouldBe(0.05 * unit.Factor, 1e-12 * unit.Factor);
                }
            }
        }
    }

    [Fact]
    public void No_spelling_belongs_to_two_units_of_a_dimension()
    {
        foreach (var dimension in Dimension.All)
        {
            var spellings = dimension.Units.SelectMany(u => u.Spellings.Prepend(u.Symbol).Distinct()).ToList();
            spellings.Distinct().Count().ShouldBe(spellings.Count, dimension.Name);
        }
    }

    [Fact]
    public void Any_text_is_a_quantity_or_a_problem() =>
        Prop.ForAll<string>(text => Dimension.All.All(d => QuantityText.ReadSi(d, text ?? "") is not null)).Check(Config.QuickThrowOnFailure.WithMaxTest(1000));

    [Fact]
    public void Any_string_of_number_signs_is_a_quantity_or_a_problem()
    {
        var signs = Gen.Elements("0", "1", "9", "500", ".", ",", " ", "'", "/", "-", "+", "e", "½", "AWG", "W", "kW", "..", "·", "²", "%");
        Prop.ForAll(Arb.From(Gen.ListOf(signs)), list => QuantityText.ReadSi(Dimension.Power, string.Concat(list)) switch
        {
            Reading<double>.Value v => double.IsFinite(v.Quantity) && double.IsFinite(v.RoundingSi),
            _ => true,
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(5000));
    }

    private static void Check<T>(string text, double si, double rounding, Func<T, double> of)
        where T : struct, IQuantity<T>
    {
        var value = Value<T>(text);
        of(value.Quantity).ShouldBe(si, Math.Abs(si) * 1e-12);
        value.RoundingSi.ShouldBe(rounding, rounding * 1e-4);
    }

    private static Reading<T> Read<T>(string text)
        where T : struct, IQuantity<T> => QuantityText.Read<T>(text);

    private static Reading<T>.Value Value<T>(string text)
        where T : struct, IQuantity<T> => Read<T>(text).ShouldBeOfType<Reading<T>.Value>();

    private static string Problem<T>(string text)
        where T : struct, IQuantity<T>
    {
        var problem = Read<T>(text).ShouldBeOfType<Reading<T>.Problem>();
        return $"{problem.Found}; {problem.WouldDo}";
    }
}
