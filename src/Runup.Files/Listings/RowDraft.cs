using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>A parameter while its rows are being gathered: the first row, lines that continue its cells, and choices beneath it.</summary>
internal sealed class RowDraft(string number, bool wide, int line, string group)
{
    private readonly Dictionary<ColumnRole, (string Text, int Column, int Line)> cells = [];

    internal string Number { get; } = number;

    internal bool Wide { get; } = wide;

    internal int Line { get; } = line;

    internal string Group { get; set; } = group;

    internal List<NamedValue> Beneath { get; } = [];

    /// <summary>The column in which choices stand beneath, where they fill a row alone.</summary>
    internal int BeneathColumn { get; set; } = -1;

    internal string this[ColumnRole role] => cells.TryGetValue(role, out var cell) ? cell.Text : "";

    /// <summary>Where a cell stands, for a message.</summary>
    internal (int Line, int Column) Place(ColumnRole role) => cells.TryGetValue(role, out var cell) ? (cell.Line, cell.Column) : (Line, 0);

    /// <summary>Adds what stands in a cell to what is there.</summary>
    internal void Add(ColumnRole role, string text, int column, int line, string between)
    {
        if (text.Length == 0)
        {
            return;
        }

        cells[role] = cells.TryGetValue(role, out var before)
            ? before with { Text = Joined(before.Text, text, between) }
            : (text, column, line);
    }

    // A hyphen at the end of a line parts a word: decel- eration.
    private static string Joined(string first, string second, string between) =>
        between == " " && first.Length > 2 && first[^1] == '-' && char.IsLetter(first[^2]) && char.IsLower(second[0]) ? first[..^1] + second : first + between + second;
}
