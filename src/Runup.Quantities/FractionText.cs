using System.Globalization;
using System.Runtime.InteropServices;

namespace Runup.Quantities;

/// <summary>A fraction as plates of small motors print it: <c>1/2</c>, <c>7 1/2</c>, <c>7-1/2</c>, <c>¾</c>.</summary>
/// <param name="Value">The value with the whole number before it.</param>
/// <param name="Length">Characters beyond the whole number.</param>
/// <param name="Fault">What is wrong, or null.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct FractionText(double Value, int Length, NumberFault? Fault)
{
    /// <summary>Reads what follows the digits as the rest of a fraction; null where it is none.</summary>
    internal static FractionText? Read(Digits whole, ReadOnlySpan<char> rest)
    {
        var spaces = rest.Length - rest.TrimStart(' ').Length;
        if (spaces < rest.Length && OneSign(rest[spaces]) is { } sign)
        {
            return whole is { Fault: NumberFault.None, Length: 0 } || whole.ArePlain ? new(WholeOf(whole) + sign, spaces + 1, null) : null;
        }

        if (!whole.ArePlain)
        {
            return null;
        }

        if (rest is ['/', ..])
        {
            return Parts(0, whole.Whole, rest[1..], 1);
        }

        var start = rest is ['-', ..] ? 1 : spaces;
        var numerator = Run(rest[start..]);
        return start > 0 && numerator > 0 && start + numerator < rest.Length && rest[start + numerator] == '/'
            ? Parts(WholeOf(whole), rest.Slice(start, numerator), rest[(start + numerator + 1)..], start + numerator + 1)
            : null;
    }

    private static FractionText? Parts(double whole, ReadOnlySpan<char> above, ReadOnlySpan<char> rest, int lengthBefore)
    {
        var below = Run(rest);
        if (below == 0)
        {
            return null;
        }

        if (above.Length > 2 || below > 2)
        {
            return new(0, 0, NumberFault.TwoValues);
        }

        var numerator = int.Parse(above, NumberStyles.None, CultureInfo.InvariantCulture);
        var denominator = int.Parse(rest[..below], NumberStyles.None, CultureInfo.InvariantCulture);
        return numerator > 0 && numerator < denominator && denominator is 2 or 3 or 4 or 6 or 8 or 10 or 12 or 15 or 16 or 20 or 32
            ? new(whole + ((double)numerator / denominator), lengthBefore + below, null)
            : new(0, 0, NumberFault.TwoValues);
    }

    private static double WholeOf(Digits whole) => whole.Length == 0 ? 0 : double.Parse(whole.Whole, NumberStyles.None, CultureInfo.InvariantCulture);

    private static int Run(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }

    private static double? OneSign(char c) => c switch
    {
        '¼' => 0.25,
        '½' => 0.5,
        '¾' => 0.75,
        '⅓' => 1.0 / 3,
        '⅔' => 2.0 / 3,
        '⅙' => 1.0 / 6,
        '⅛' => 0.125,
        _ => null,
    };
}
