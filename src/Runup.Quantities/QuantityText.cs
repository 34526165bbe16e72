using System.Globalization;

namespace Runup.Quantities;

/// <summary>Reads and writes quantities as the trade spells them. Knows nothing of the machine's language or region.</summary>
/// <remarks>
/// Written by hand: the general unit library costs 0.3 s at its first parse and can't say which half of <c>1,500 rpm</c> was meant;
/// it is the tests' oracle for every factor. What is accepted is listed in <c>docs/formats/job-file.md</c>.
/// </remarks>
public static class QuantityText
{
    private const int Longest = 80;

    /// <summary>Reads a quantity.</summary>
    public static Reading<T> Read<T>(string text)
        where T : struct, IQuantity<T>
    {
        switch (ReadSi(T.Dimension, text))
        {
            case Reading<double>.Value v:
                try
                {
                    return new Reading<T>.Value(T.FromSi(v.Quantity), v.RoundingSi, v.Unit, v.Notation);
                }
                catch (ArgumentOutOfRangeException)
                {
                    var lowest = T.Dimension == Dimension.Temperature ? "absolute zero" : "zero";
                    return new Reading<T>.Problem($"`{text.Trim()}` lies below {lowest}", $"{T.Dimension.Name} from {lowest} up would do");
                }

            case Reading<double>.Problem p:
                return new Reading<T>.Problem(p.Found, p.WouldDo);
            default:
                throw new InvalidOperationException("A reading is a value or a problem.");
        }
    }

    /// <summary>Reads a number with a unit of a dimension to SI.</summary>
    public static Reading<double> ReadSi(Dimension dimension, string text)
    {
        var written = OnOneLine(text.Trim());
        if (written.Length is 0 or > Longest)
        {
            return Wrong(written.Length == 0 ? "nothing" : "a text too long for a quantity", ReadingAdvice.For(dimension));
        }

        if (dimension == Dimension.Area && WireGauge.IsMeant(written))
        {
            return WireGauge.Read(written) is { } section
                ? new Reading<double>.Value(section, 0, WireGauge.Unit, NumberNotation.Plain)
                : Wrong($"`{written}` is no wire gauge", "gauges from 40 AWG to 4/0 AWG would do, larger sections in kcmil");
        }

        var number = NumberText.Read(written);
        return number.Fault is { } fault and not NumberFault.Ambiguous
            ? Wrong(ReadingAdvice.Explain(fault, written), ReadingAdvice.For(dimension, fault))
            : WithUnit(dimension, written, number);
    }

    /// <summary>Writes an SI value for a person: in the unit of their habit in which it reads best.</summary>
    public static string Write(Dimension dimension, double si, UnitSystem system, int digits = 4)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(digits, 1);
        if (dimension == Dimension.Area && system == UnitSystem.UnitedStates && WireGauge.Write(si) is { } gauge)
        {
            return gauge;
        }

        var unit = PeopleUnits.For(dimension, si, system);
        return $"{Rounded(unit.FromSi(si), digits)} {unit.Symbol}".TrimEnd();
    }

    private static string Rounded(double value, int digits)
    {
        var format = string.Create(CultureInfo.InvariantCulture, $"E{digits - 1}");
        var rounded = double.Parse(value.ToString(format, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Abs(rounded) is 0 or (>= 1e-9 and < 1e15)
            ? rounded.ToString("0.########################", CultureInfo.InvariantCulture)
            : rounded.ToString("R", CultureInfo.InvariantCulture);
    }

    private static Reading<double> WithUnit(Dimension dimension, string written, NumberText number)
    {
        var symbol = written[number.Length..].Trim();
        if (UnitText.Find(dimension, symbol) is not { } unit)
        {
            return ReadingAdvice.NoSuchUnit(dimension, written, symbol);
        }

        // Nobody prints a speed to a thousandth of a revolution per minute, but many print 1.500 for fifteen hundred.
        var isDoubtful = number.Notation == NumberNotation.PointBeforeThreeDigits && unit == Dimension.RotationalSpeed.Units[0];
        if (number.Fault is NumberFault.Ambiguous || isDoubtful)
        {
            return ReadingAdvice.Ask(written, number, symbol);
        }

        if (number.IsFraction && !(unit.Symbol is "hp" or "in" or "ft"))
        {
            return Wrong($"the fraction in `{written}`", "fractions are read before hp, in and ft; elsewhere write a decimal number, and of two values the one in use");
        }

        var si = unit.ToSi(number.Value);
        return double.IsFinite(si)
            ? new Reading<double>.Value(si, number.HalfDigit * unit.Factor, unit, number.Notation)
            : Wrong(ReadingAdvice.Explain(NumberFault.TooLarge, written), ReadingAdvice.For(dimension));
    }

    // What is quoted in a message must not break its line.
    private static string OnOneLine(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => !char.IsControl(c) ? c : char.IsWhiteSpace(c) ? ' ' : '�')) : text;

    private static Reading<double>.Problem Wrong(string found, string wouldDo) => new(found, wouldDo);
}
