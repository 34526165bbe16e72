using System.Globalization;
using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The numbers from which a number as written arises by one slip of a digit.</summary>
[Source("common-practice", "digits that look alike are misread more often")]
internal static class DigitSlips
{
    // Looked at from a ladder through dirt: these are taken for one another about three times as often as any other two.
    private const double AlikeWeight = 3;
    private static readonly string[] Alike = ["17", "38", "56", "08", "68", "06", "49", "14"];

    /// <summary>Numbers with two neighbouring digits interchanged.</summary>
    internal static IReadOnlyList<double> Interchanged(string written)
    {
        var found = new List<double>();
        for (var place = 0; place + 1 < written.Length; place++)
        {
            var next = place + 1 < written.Length - 1 && written[place + 1] == '.' ? place + 2 : place + 1;
            if (char.IsAsciiDigit(written[place]) && char.IsAsciiDigit(written[next]) && written[place] != written[next])
            {
                var digits = written.ToCharArray();
                (digits[place], digits[next]) = (digits[next], digits[place]);
                found.Add(Parse(digits));
            }
        }

        return found;
    }

    /// <summary>Numbers with one digit put down wrongly, and the share of each among them.</summary>
    internal static IReadOnlyList<(double Value, double Share)> Misread(string written)
    {
        var found = new List<(double Value, double Weight)>();
        for (var place = 0; place < written.Length; place++)
        {
            for (var digit = '0'; char.IsAsciiDigit(written[place]) && digit <= '9'; digit++)
            {
                if (digit != written[place])
                {
                    var digits = written.ToCharArray();
                    digits[place] = digit;
                    found.Add((Parse(digits), AreAlike(digit, written[place]) ? AlikeWeight : 1));
                }
            }
        }

        var sum = found.Sum(one => one.Weight);
        return [.. found.Select(one => (one.Value, one.Weight / sum))];
    }

    private static bool AreAlike(char a, char b) => Array.Exists(Alike, pair => pair.Contains(a, StringComparison.Ordinal) && pair.Contains(b, StringComparison.Ordinal));

    private static double Parse(char[] digits) => double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
