using System.Globalization;

namespace Runup.Files.Listings;

/// <summary>A parameter's number in any habit: plain, or an index of an object dictionary with its sub-index.</summary>
internal static class NumberCell
{
    /// <summary>The number in our writing (objects as <c>6046h:1</c>, others as printed), and whether the table gives it two registers; null where the cell is no number.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="sub">The cell of the sub-index, where it has a column of its own.</param>
    /// <param name="objects">Whether the table counts in objects, so that four plain digits are an index.</param>
    internal static (string Number, bool Wide)? Read(string text, string sub, bool objects)
    {
        var plain = Clean(text);
        if (plain.Length is 0 or > 24)
        {
            return null;
        }

        if (Patterns.Object().Match(plain) is { Success: true } match && IsObject(match, objects))
        {
            var index = match.Groups["index"].Value.ToUpperInvariant() + "h";
            var part = match.Groups["sub"].Success ? match.Groups["sub"].Value : Clean(sub).TrimEnd('h', 'H').Replace("0x", "", StringComparison.OrdinalIgnoreCase);
            return (int.TryParse(part, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var s) && s > 0 ? index + ":" + s.ToString("X", CultureInfo.InvariantCulture) : index, false);
        }

        if (plain.Split('/', '-', '–', '+') is [var low, var high] && int.TryParse(low.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var first) && int.TryParse(high.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var second) && second == first + 1 && first > 9)
        {
            return (low.Trim(), true);
        }

        if (Patterns.ParameterNumber().Match(plain) is not { Success: true } number)
        {
            return null;
        }

        var of = number.Groups["number"].Value;
        return (Clean(sub) is { Length: > 0 } below && below != "0" && below.All(char.IsAsciiDigit) ? of + ":" + below : of, false);
    }

    /// <summary>Whether a cell can only be an object's index.</summary>
    internal static bool IsClearlyObject(string text) => Patterns.Object().Match(Clean(text)) is { Success: true } match && IsObject(match, objects: false);

    /// <summary>A cell without footnote marks.</summary>
    internal static string Clean(string text)
    {
        var plain = text.Trim();
        var mark = Patterns.Footnote().Match(plain);

        // The bracket of "(base frequency to 0)" belongs to the one that is open.
        return mark.Success && plain.AsSpan(0, mark.Index).Count('(') <= plain.AsSpan(0, mark.Index).Count(')') ? plain[..mark.Index].Trim() : plain;
    }

    private static bool IsObject(System.Text.RegularExpressions.Match match, bool objects) =>
        objects
        || match.Groups["x"].Success
        || match.Groups["h"].Length > 0
        || match.Groups["sep"].Value.StartsWith("sub", StringComparison.OrdinalIgnoreCase)
        || (match.Groups["sep"].Value == ":" && match.Groups["index"].Value[0] is >= '1' and <= '9')
        || (match.Groups["index"].Value.Any(char.IsAsciiLetter) && match.Groups["index"].Value[0] is >= '1' and <= '9');
}
