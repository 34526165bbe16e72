using Runup.Files.Yaml;

namespace Runup.Files.Listings;

/// <summary>Reads the parameters of a drive from a manual's table: CSV, spreadsheet, pasted text, or an EDS file.</summary>
public static class ListingFile
{
    private const int LargestBytes = 8 * 1024 * 1024;
    private const int MostRows = 20_000;

    /// <summary>Reads a file; null where it holds no table.</summary>
    /// <param name="path">The file; what it is, its ending says.</param>
    /// <param name="told">Columns that a person names, counted from 0; the others are guessed.</param>
    /// <param name="problems">What makes it unfit for a profile: no table, or a number that stands twice.</param>
    /// <param name="cautions">Cells that a person must look at.</param>
    public static Listing? ReadFile(string path, IReadOnlyDictionary<ColumnRole, int> told, Problems problems, Problems cautions)
    {
        var text = TextOfFile.Read(path, LargestBytes, problems);
        return text is null ? null : ReadText(text, KindOf(path), told, problems, cautions);
    }

    /// <summary>Reads a text.</summary>
    public static Listing? ReadText(string text, ListingKind kind, IReadOnlyDictionary<ColumnRole, int> told, Problems problems, Problems cautions)
    {
        var plain = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        if (plain.Contains('\0', StringComparison.Ordinal))
        {
            problems.AddForFile("a NUL character", "is this a text file? A table as CSV, spreadsheet or pasted text, or an EDS file, would do");
            return null;
        }

        return Table(kind is ListingKind.Pasted ? PastedGrid.Read(plain) with { IsPasted = true } : CsvGrid.Read(plain), told, problems, cautions);
    }

    /// <summary>What a file is by its ending.</summary>
    public static ListingKind KindOf(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".csv" or ".tsv" => ListingKind.Csv,
        ".xlsx" or ".xlsm" => ListingKind.Spreadsheet,
        ".eds" or ".dcf" => ListingKind.Eds,
        _ => ListingKind.Pasted,
    };

    private static Listing? Table(ListingGrid grid, IReadOnlyDictionary<ColumnRole, int> told, Problems problems, Problems cautions)
    {
        if (grid.Rows.Count == 0 || grid.Rows.Count > MostRows)
        {
            problems.AddForFile(grid.Rows.Count == 0 ? "it holds nothing" : $"more than {MostRows} rows", "a table with a row for each parameter would do");
            return null;
        }

        var columns = ColumnGuess.Of(grid, told);
        if (columns.Of(ColumnRole.Number) < 0 || columns.Of(ColumnRole.Name) < 0)
        {
            var missing = columns.Of(ColumnRole.Number) < 0 ? "numbers" : "names";
            problems.Add(new Place(columns.HeaderLine ?? grid.Rows[0].Line, 1, 0, 0), FileProblem.WholeFile, $"no column looks like the parameters' {missing}", "say which it is: `--column number=A --column name=B`");
            return null;
        }

        var listing = ListingRead.Of(grid, columns, problems, cautions);
        if (listing.Parameters.Count == 0)
        {
            problems.AddForFile("no row looks like a parameter", "rows with a number and a name would do; say which columns they are: `--column number=A --column name=B`");
            return null;
        }

        return listing;
    }
}

/// <summary>What a listing stands in.</summary>
public enum ListingKind
{
    /// <summary>Values parted by commas, semicolons or tabs.</summary>
    Csv,

    /// <summary>A spreadsheet (xlsx).</summary>
    Spreadsheet,

    /// <summary>Text that was copied from a manual.</summary>
    Pasted,

    /// <summary>An electronic data sheet after CiA 306.</summary>
    Eds,
}
