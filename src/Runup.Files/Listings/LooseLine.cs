using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>A line of a table whose columns were lost in copying: number, name, range, unit and factory value with single blanks between.</summary>
internal static partial class LooseLine
{
    /// <summary>The columns that it is taken apart into.</summary>
    internal static readonly string[] Header = ["No.", "Name", "Range", "Unit", "Default"];

    /// <summary>Whether a line names the columns that were lost.</summary>
    internal static bool IsHeader(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: >= 3 } words && words.All(w => Headings.Read(w) is not null);

    internal static ListingRow Row(int line, string text, LooseLimits? limits)
    {
        var whole = text.Trim();
        if (Start().Match(whole) is not { Success: true } start)
        {
            return new ListingRow(line, ["", whole]);
        }

        var number = start.Groups["number"].Value;
        var rest = whole[start.Length..].Trim();
        if (Patterns.MarkedChoice().Match(rest) is { Success: true } choice && choice.Index > 0)
        {
            return new ListingRow(line, [number, rest[..choice.Index].Trim(), rest[choice.Index..]]);
        }

        if (limits?.Read(rest) is { } cells)
        {
            return new ListingRow(line, [number, .. cells]);
        }

        if (Patterns.Range().Match(rest) is not { Success: true } range || range.Index == 0)
        {
            return new ListingRow(line, [number, rest]);
        }

        var after = range.Groups["after"].Value.Trim();
        var unit = UnitCell.Leading(after);
        var value = after[unit.Length..].Trim();
        return new ListingRow(line, [number, rest[..range.Index].Trim(), rest[range.Index..(rest.Length - after.Length)].Trim(), unit, value]);
    }

    [GeneratedRegex(@"^(?<number>(?:0x)?[0-9A-F]{4}h?(?:[:.]\d{1,2}|\s+sub\s*\d{1,2})?|#?\d{1,5}[*¹²³]*)\s+(?=[A-Za-z(])", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Start();
}
