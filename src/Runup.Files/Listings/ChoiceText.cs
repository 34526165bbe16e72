using System.Globalization;
using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>Choices that a table prints in one cell: numbered in any habit, or only named.</summary>
internal static class ChoiceText
{
    private const int MostChoices = 200;

    /// <summary>The choices of a text; none where it holds none, or only one.</summary>
    internal static IReadOnlyList<NamedValue> Read(string text)
    {
        foreach (var found in (IReadOnlyList<NamedValue>[])[Split(text, Patterns.MarkedChoice(), bare: false), Behind(text), Split(text, Patterns.BareChoice(), bare: true)])
        {
            if (found.Count >= 2)
            {
                return found;
            }
        }

        return [];
    }

    /// <summary>The one choice of a row that stands beneath its parameter; null where it is none.</summary>
    internal static NamedValue? ReadOne(string text)
    {
        var plain = text.Trim().TrimStart('•', '·', '●', '▪', '◦', '‣', '*', '-', '–').Trim();
        var match = Patterns.MarkedChoice().Match(plain);
        return match.Success && match.Index == 0 && Value(match.Groups["value"].Value) is { } value ? new NamedValue(value, Label(plain[match.Length..])) : null;
    }

    /// <summary>Choices that are only named, such as No / Yes: counted from 0 in the order of print, which a person has to confirm.</summary>
    internal static IReadOnlyList<NamedValue> ReadNames(string text)
    {
        if (text.Any(char.IsAsciiDigit) || text.Length > 120)
        {
            return [];
        }

        var names = text.Split(['/', ',', ';', '|', '\n', '•'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return names.Length is >= 2 and <= 12 && names.All(n => n.Length is > 0 and <= 30 && char.IsLetter(n[0])) && names.Distinct(StringComparer.OrdinalIgnoreCase).Count() == names.Length
            ? [.. names.Select((n, i) => new NamedValue(i, n))]
            : [];
    }

    /// <summary>Bare numbers in a list, such as 2, 4, 6, 8: choices that show themselves.</summary>
    internal static IReadOnlyList<NamedValue> ReadNumbers(string text)
    {
        var parts = text.Split([',', '/', ';', '\n', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var values = parts.Select(p => long.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out var v) ? v : -1).ToList();
        return values.Count >= 3 && values.All(v => v >= 0) && values.Zip(values.Skip(1), (a, b) => a < b).All(x => x)
            ? [.. values.Select(v => new NamedValue(v, v.ToString(CultureInfo.InvariantCulture)))]
            : [];
    }

    private static IReadOnlyList<NamedValue> Split(string text, Regex begin, bool bare)
    {
        var starts = begin.Matches(text).Where(m => Value(m.Groups["value"].Value) is not null && !IsInBrackets(text, m.Index)).ToList();
        if (starts.Count < 2 || starts.Count > MostChoices)
        {
            return [];
        }

        // Numbers inside a label are no begin of another choice: the values rise.
        var rising = new List<Match>();
        var last = long.MinValue;
        foreach (var start in starts)
        {
            var value = Value(start.Groups["value"].Value)!.Value;
            if (value > last && (!bare || rising.Count == 0 || value == last + 1))
            {
                rising.Add(start);
                last = value;
            }
        }

        if (rising.Count < 2 || (bare && (Value(rising[0].Groups["value"].Value) > 1 || text[..rising[0].Index].Trim().Length > 0)))
        {
            return [];
        }

        var choices = new List<NamedValue>();
        for (var i = 0; i < rising.Count; i++)
        {
            var from = rising[i].Index + rising[i].Length;
            var to = i + 1 < rising.Count ? rising[i + 1].Index : text.Length;
            choices.Add(new NamedValue(Value(rising[i].Groups["value"].Value)!.Value, Label(text[from..to])));
        }

        // 0 Hz 1 Hz is no list of names.
        return bare && choices.Exists(c => c.Label.Length < 1 || UnitCell.Read(c.Label) is { } unit && unit is "Hz" or "s" or "V" or "A") ? [] : choices;
    }

    // (N,8,1): what stands in brackets begins no choice.
    private static bool IsInBrackets(string text, int at) => text.AsSpan(0, at).Count('(') > text.AsSpan(0, at).Count(')');

    private static IReadOnlyList<NamedValue> Behind(string text)
    {
        var matches = Patterns.ChoiceBehind().Matches(text);
        return matches.Count < 2 || matches.Count > MostChoices
            ? []
            : [.. matches.Select(m => new NamedValue(long.Parse(m.Groups["value"].Value, NumberStyles.None, CultureInfo.InvariantCulture), Label(m.Groups["label"].Value))).DistinctBy(c => c.Raw)];
    }

    private static string Label(string text)
    {
        var plain = text.Trim().TrimEnd(',', ';', '/', '|', '•', '·', '[', '(').Trim().Trim('"', '“', '”');
        return string.Join(' ', plain.Split(['\n', '\r', '\t', ' '], StringSplitOptions.RemoveEmptyEntries));
    }

    private static long? Value(string text)
    {
        var hex = text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) ? text[2..] : text[^1] is 'h' or 'H' ? text[..^1] : null;
        return hex is not null
            ? long.TryParse(hex, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var raw) && raw <= uint.MaxValue ? raw : null
            : long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : null;
    }
}
