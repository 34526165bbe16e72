using System.Globalization;
using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>Whether a table writes decimals with a comma or a point; the other one then parts thousands.</summary>
/// <param name="DecimalComma">Whether with a comma.</param>
internal sealed partial record NumberHabit(bool DecimalComma)
{
    private const string Narrow = "\u202F";

    /// <summary>The habit that most numbers of a table show beyond doubt; a point where none does.</summary>
    internal static NumberHabit Of(IEnumerable<string> cells)
    {
        int commas = 0, points = 0;
        foreach (var text in cells)
        {
            foreach (var match in Mark().EnumerateMatches(text))
            {
                var number = text.AsSpan(match.Index, match.Length);
                var mark = number.LastIndexOfAny(',', '.');
                var thousands = number.Length - mark - 1 == 3 && number[0] != '0' && number.IndexOfAny(',', '.') == mark;
                commas += number[mark] == ',' && !thousands ? 1 : 0;
                points += number[mark] == '.' && !thousands ? 1 : 0;
            }
        }

        return new NumberHabit(commas > points);
    }

    /// <summary>A text whose thousands, parted by blanks, hold together.</summary>
    internal static string HoldTogether(string text) => Blank().Replace(text, Narrow);

    /// <summary>The value of a number and how many decimals it is printed with; null where it is none.</summary>
    internal (decimal Value, int Decimals)? Read(string text)
    {
        var plain = text.Trim().Replace('−', '-').Replace('–', '-').Replace(" ", "", StringComparison.Ordinal);
        foreach (var group in (string[])["\u00A0", "\u2009", Narrow, "'", "’"])
        {
            plain = plain.Replace(group, "", StringComparison.Ordinal);
        }

        plain = plain.TrimStart('+', '±');
        var (sign, thousands) = DecimalComma ? (',', '.') : ('.', ',');
        if (Groups(plain, thousands, sign))
        {
            plain = plain.Replace(thousands.ToString(), "", StringComparison.Ordinal);
        }

        plain = plain.Replace(',', '.');
        var point = plain.IndexOf('.', StringComparison.Ordinal);
        return decimal.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) < 1e12m
            ? (value, point < 0 ? 0 : plain.Length - point - 1)
            : null;
    }

    private static bool Groups(string number, char thousands, char sign)
    {
        var whole = number.Split(sign)[0].TrimStart('-').Split(thousands);
        return whole.Length > 1 && whole[0].Length is >= 1 and <= 3 && whole[0] != "0" && whole.Skip(1).All(g => g.Length == 3);
    }

    [GeneratedRegex(@"(?<![\w.,])\d+(?:[.,]\d+)+(?![\w])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Mark();

    [GeneratedRegex(@"(?<=(?<!\w|\d[.,])\d{1,3}(?:[\u202F ]\d{3})*) (?=\d{3}(?![\d\w]))", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Blank();
}
