using System.Globalization;
using System.Runtime.InteropServices;

namespace Runup.Quantities;

/// <summary>A number at the start of a text, or what is wrong with it.</summary>
/// <param name="Value">The number.</param>
/// <param name="HalfDigit">Half of its last printed digit; zero for a fraction.</param>
/// <param name="Length">How many characters it takes.</param>
/// <param name="Notation">How it was written.</param>
/// <param name="IsFraction">Whether it is a fraction such as <c>7 1/2</c>.</param>
/// <param name="Fault">What is wrong, or null.</param>
/// <param name="Other">The other value that an ambiguous number may have.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NumberText(double Value, double HalfDigit, int Length, NumberNotation Notation, bool IsFraction, NumberFault? Fault, double Other)
{
    /// <summary>Reads the number at the start of a text.</summary>
    /// <remarks>
    /// Decimal point or comma; groups of three by space (ISO 80000-1), apostrophe, or whichever of point and comma is not the decimal
    /// sign; an exponent; fractions as plates print them. A single comma before just three digits is ambiguous unless a leading zero
    /// or more than three digits before it say that it is a decimal sign.
    /// </remarks>
    internal static NumberText Read(ReadOnlySpan<char> text)
    {
        var sign = text is ['+' or '-' or '−', ..] ? 1 : 0;
        var factor = text is ['-' or '−', ..] ? -1 : 1;
        var body = Digits.Take(text[sign..]);
        var rest = text[(sign + body.Length)..];
        if (FractionText.Read(body, rest) is { } fraction)
        {
            return fraction.Fault is { } fault
                ? Wrong(fault)
                : new(factor * fraction.Value, 0, sign + body.Length + fraction.Length, NumberNotation.Plain, true, null, 0);
        }

        if (body.Fault is not null)
        {
            return Wrong(body.Fault.Value);
        }

        var exponent = Exponent(rest, out var exponentLength);
        var value = factor * double.Parse($"{body.Whole}.{body.Decimals}e{exponent}", NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!double.IsFinite(value))
        {
            return Wrong(NumberFault.TooLarge);
        }

        rest = rest[exponentLength..];
        if (IsSecondValue(rest))
        {
            return Wrong(NumberFault.TwoValues);
        }

        var half = 0.5 * Math.Pow(10, exponent - body.Decimals.Length);
        var other = body.Ambiguous || body.Notation == NumberNotation.PointBeforeThreeDigits ? value * 1000 : 0;
        return new(value, half, sign + body.Length + exponentLength, body.Notation, false, body.Ambiguous ? NumberFault.Ambiguous : null, other);
    }

    private static NumberText Wrong(NumberFault fault) => new(0, 0, 0, NumberNotation.Plain, false, fault, 0);

    private static int Exponent(ReadOnlySpan<char> text, out int length)
    {
        length = 0;
        if (text is not ['e' or 'E', ..])
        {
            return 0;
        }

        var digits = text is [_, '+' or '-', ..] ? 2 : 1;
        var end = digits;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        if (end == digits)
        {
            return 0;
        }

        length = end;
        return end - digits > 4 ? 99999 : int.Parse(text[1..end], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
    }

    // 230/400 V, 380-420 V, 380…420 V: plates print two; a job wants the one in use.
    private static bool IsSecondValue(ReadOnlySpan<char> rest)
    {
        rest = rest.TrimStart();
        return rest is ['/' or '-' or '–' or '…' or '~', ..] && rest[1..].TrimStart() is [>= '0' and <= '9', ..];
    }
}

/// <summary>What can be wrong with a number.</summary>
internal enum NumberFault
{
    /// <summary>The text does not begin with one.</summary>
    None,

    /// <summary>It can be read in two ways.</summary>
    Ambiguous,

    /// <summary>Its points and commas make no number.</summary>
    Malformed,

    /// <summary>It is beyond all measure.</summary>
    TooLarge,

    /// <summary>There are two, or a range.</summary>
    TwoValues,
}
