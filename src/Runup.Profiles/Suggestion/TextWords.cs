using System.Globalization;
using System.Text;

namespace Runup.Profiles;

/// <summary>Takes a text of a table apart into words as the trade writes them: lower case, numbers apart from letters.</summary>
internal static class TextWords
{
    private static readonly (string Written, string Read)[] Signs =
    [
        ("v/f", " vf "), ("u/f", " vf "), ("v/hz", " vf "), ("volts/hz", " vf "), ("volts per hertz", " vf "), ("volt/hertz", " vf "), ("v-f", " vf "), ("cos φ", " cosphi "), ("cosφ", " cosphi "), ("cos phi", " cosphi "), ("cos-phi", " cosphi "),
        (" from 0 ", " acceleration "), (" from zero ", " acceleration "), (" from standstill ", " acceleration "), (" from rest ", " acceleration "), (" to 0 ", " deceleration "), (" to zero ", " deceleration "), (" to standstill ", " deceleration "), (" to rest ", " deceleration "), ("rev/min", " rpm "), ("r/min", " rpm "), ("1/min", " rpm "), ("min-1", " rpm "), ("bit/s", " baud "), ("bits/s", " baud "), ("autoreset", " auto reset "), ("autorestart", " auto restart "), ("autostart", " auto start "), ("time-out", " timeout "), ("time out", " timeout "), ("t/o", " timeout "), ("o/l", " overload "), ("i/p", " input "), ("o/p", " output "), ("i2t", " overload "), ("i²t", " overload "), ("w/o", " without "), ("ω", " "), ("°", " "), ("4-20", " milliamp "), ("4…20", " milliamp "), ("0-10 v", " zerotenvolt "),
    ];

    internal static List<string> Of(string text)
    {
        var spaced = " " + Spaced(text) + " ";
        foreach (var (written, read) in Signs)
        {
            spaced = spaced.Replace(written, read, StringComparison.Ordinal);
        }

        var words = new List<string>();
        var word = new StringBuilder();
        foreach (var c in spaced)
        {
            var letter = char.IsLetter(c);
            if (word.Length > 0 && (!(letter || char.IsAsciiDigit(c)) || char.IsAsciiDigit(c) != char.IsAsciiDigit(word[^1])))
            {
                words.Add(Singular(word.ToString()));
                word.Clear();
            }

            if (letter || char.IsAsciiDigit(c))
            {
                word.Append(c);
            }
        }

        return [.. words.Select(Number)];
    }

    // Capitals inside a word begin another: MotorRatedCurrent, but not kW. Accents go, since they are printed or not.
    private static string Spaced(string text)
    {
        var spaced = new StringBuilder(text.Length + 8);
        var before = ' ';
        var small = 0;
        foreach (var c in text.Replace("'s", "", StringComparison.Ordinal).Replace("’s", "", StringComparison.Ordinal).Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark)
            {
                continue;
            }

            if (char.IsUpper(c) && small > 1 && char.IsLower(before))
            {
                spaced.Append(' ');
            }

            spaced.Append(char.ToLowerInvariant(c));
            small = char.IsLower(c) ? small + 1 : 0;
            before = c;
        }

        return spaced.ToString();
    }

    private static string Singular(string word) =>
        word.Length > 3 && word[^1] == 's' && word[^2] is not ('s' or 'u' or 'i') ? word[..^1] : word;

    private static string Number(string word) => word switch
    {
        "first" or "one" => "1",
        "second" or "ii" or "two" => "2",
        "third" or "iii" or "three" => "3",
        "fourth" or "iv" or "four" => "4",
        "fifth" or "five" => "5",
        "sixth" or "six" => "6",
        "seventh" or "seven" => "7",
        _ when word[0] == '0' && word.Length > 1 && word.All(char.IsAsciiDigit) => word.TrimStart('0') is { Length: > 0 } rest ? rest : "0",
        _ => word,
    };
}
