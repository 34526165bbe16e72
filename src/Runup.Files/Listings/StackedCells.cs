using System.Globalization;

namespace Runup.Files.Listings;

/// <summary>A table whose cells came out of the copying one beneath the other: number, name, range, unit, factory value, each in a line.</summary>
internal static class StackedCells
{
    /// <summary>The table; null where the lines do not stand so.</summary>
    internal static ListingGrid? Read(IReadOnlyList<(string Text, int Line)> lines)
    {
        var starts = Enumerable.Range(0, lines.Count).Where(i => IsStart(lines, i)).ToList();
        if (starts.Count < 3 || lines.Count > starts.Count * 12)
        {
            return null;
        }

        var rows = new List<ListingRow> { new(0, LooseLine.Header) };
        for (var i = 0; i < starts.Count; i++)
        {
            var end = i + 1 < starts.Count ? starts[i + 1] : lines.Count;
            rows.Add(Row(lines, starts[i], end));
        }

        return new ListingGrid(rows);
    }

    // A number alone in its line begins a row where a name follows; a factory value is followed by the next number.
    private static bool IsStart(IReadOnlyList<(string Text, int Line)> lines, int i) =>
        i + 1 < lines.Count
        && NumberCell.Read(lines[i].Text, "", objects: false) is { } number
        && (NumberCell.IsClearlyObject(lines[i].Text) || int.TryParse(number.Number, NumberStyles.None, CultureInfo.InvariantCulture, out _))
        && lines[i + 1].Text.Trim() is { Length: > 2 } name && char.IsLetter(name[0]) && UnitCell.Read(name) is null;

    private static ListingRow Row(IReadOnlyList<(string Text, int Line)> lines, int start, int end)
    {
        var cells = new[] { lines[start].Text.Trim(), lines[start + 1].Text.Trim(), "", "", "" };
        var habit = new NumberHabit(false);
        for (var i = start + 2; i < end; i++)
        {
            var text = lines[i].Text.Trim();
            var place = RangeText.Read(text, habit) is not null || ChoiceText.ReadOne(text) is not null ? 2
                : UnitCell.Read(text) is not null && !text.Any(char.IsAsciiDigit) ? 3
                : text.Any(char.IsAsciiDigit) ? 4
                : cells[2].Length == 0 ? 1 : 4;
            cells[place] = cells[place].Length == 0 ? text : cells[place] + (place == 2 ? "\n" : " ") + text;
        }

        return new ListingRow(lines[start].Line, cells);
    }
}
