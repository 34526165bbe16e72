using System.Globalization;

namespace Runup.Files.Listings;

/// <summary>A table as cells, before anybody knows what its columns hold.</summary>
/// <param name="Rows">The rows that hold anything, in the file's order.</param>
internal sealed record ListingGrid(IReadOnlyList<ListingRow> Rows)
{
    /// <summary>Whether it comes of lines of text, so that one cell may be broken over several rows.</summary>
    internal bool IsPasted { get; init; }

    /// <summary>The most cells of a row.</summary>
    internal int Width { get; } = Rows.Count == 0 ? 0 : Rows.Max(r => r.Cells.Count);

    /// <summary>A column as people call it: C for the third.</summary>
    internal static string ColumnName(int column)
    {
        var name = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        {
            name = (char)('A' + ((rest - 1) % 26)) + name;
        }

        return name;
    }

    /// <summary>A cell as people call it: C12.</summary>
    internal static string CellName(int column, int line) => ColumnName(column) + line.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A row of a table.</summary>
/// <param name="Line">Line of the file, or row of the sheet, on which it begins; counted from 1.</param>
/// <param name="Cells">Its cells, trimmed; what is not there is empty.</param>
internal sealed record ListingRow(int Line, IReadOnlyList<string> Cells)
{
    /// <summary>The text of a column; empty where the row is shorter.</summary>
    internal string this[int column] => column >= 0 && column < Cells.Count ? Cells[column] : "";

    /// <summary>The places of the cells that hold anything.</summary>
    internal IReadOnlyList<int> Filled { get; } = [.. Enumerable.Range(0, Cells.Count).Where(i => Cells[i].Length > 0)];
}
