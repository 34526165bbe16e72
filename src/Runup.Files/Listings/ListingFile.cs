using System.Text.RegularExpressions;
using Runup.Files.Listings.Eds;
using Runup.Files.Yaml;

namespace Runup.Files.Listings;

/// <summary>Reads the parameters of a drive from a manual's table: CSV, spreadsheet, pasted text, or an EDS file.</summary>
public static class ListingFile
{
    private const int LargestBytes = 8 * 1024 * 1024;
    private const int MostRows = 20_000;
    private const int MostParameters = 4000;
    private const int LongestCell = 2000;

    /// <summary>Reads a file; null where it holds no table.</summary>
    /// <param name="path">The file; what it is, its ending says.</param>
    /// <param name="told">What a person says of it.</param>
    /// <param name="problems">What makes it unfit for a profile: no table, or a number that stands twice.</param>
    /// <param name="cautions">Cells that a person must look at.</param>
    public static Listing? ReadFile(string path, ListingOptions told, Problems problems, Problems cautions) =>
        TextOfFile.ReadBytes(path, LargestBytes, problems) is { } bytes ? Read(bytes, KindOf(path), told, problems, cautions) : null;

    /// <summary>Reads bytes.</summary>
    public static Listing? Read(ReadOnlyMemory<byte> bytes, ListingKind kind, ListingOptions told, Problems problems, Problems cautions)
    {
        if (kind is ListingKind.Spreadsheet)
        {
            return XlsxGrid.Read(bytes, told.Sheet, problems) is { } grid ? Table(grid, told, problems, cautions) : null;
        }

        return ReadText(ListingText.Of(bytes.Span, cautions), kind, told, problems, cautions);
    }

    /// <summary>Reads a text.</summary>
    public static Listing? ReadText(string text, ListingKind kind, ListingOptions told, Problems problems, Problems cautions)
    {
        var plain = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        if (plain.Contains('\0', StringComparison.Ordinal))
        {
            problems.AddForFile("a NUL character", "is this a text file? A table as CSV, spreadsheet or pasted text, or an EDS file, would do");
            return null;
        }

        return kind switch
        {
            ListingKind.Eds => EdsListing.Read(YamlCharacters.Marked(plain), problems, cautions),
            ListingKind.Pasted => Table(PastedGrid.Read(plain) with { IsPasted = true }, told, problems, cautions),
            _ => Table(CsvGrid.Read(plain), told, problems, cautions),
        };
    }

    /// <summary>What a file is by its ending.</summary>
    public static ListingKind KindOf(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".csv" or ".tsv" => ListingKind.Csv,
        ".xlsx" or ".xlsm" => ListingKind.Spreadsheet,
        ".eds" or ".dcf" => ListingKind.Eds,
        _ => ListingKind.Pasted,
    };

    private static Listing? Table(ListingGrid grid, ListingOptions told, Problems problems, Problems cautions)
    {
        if (grid.Rows.Count == 0 || grid.Rows.Count > MostRows)
        {
            problems.AddForFile(grid.Rows.Count == 0 ? "it holds nothing" : $"more than {MostRows} rows", "a table with a row for each parameter would do");
            return null;
        }

        try
        {
            return Understood(grid with { Rows = [.. grid.Rows.Select(Bounded)] }, told, problems, cautions);
        }
        catch (RegexMatchTimeoutException)
        {
            problems.AddForFile("cells that take too long to read", "is this the table of a manual? Take out what does not belong to it");
            return null;
        }
    }

    // What a table brings along must be fit for a profile's file.
    private static ListingRow Bounded(ListingRow row) =>
        row with { Cells = [.. row.Cells.Select(c => YamlCharacters.Marked(c.Length > LongestCell ? c[..LongestCell] : c))] };

    private static Listing? Understood(ListingGrid grid, ListingOptions told, Problems problems, Problems cautions)
    {
        if (told.Columns.Where(t => t.Value >= grid.Width).Select(t => (KeyValuePair<ColumnRole, int>?)t).FirstOrDefault() is { } wide)
        {
            problems.AddForFile($"there is no column {ListingGrid.ColumnName(wide.Value)} for the {wide.Key.Word()}", $"a column from A to {ListingGrid.ColumnName(grid.Width - 1)} would do");
            return null;
        }

        var columns = ColumnGuess.Of(grid, told.Columns);
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

        if (listing.Parameters.Count > MostParameters)
        {
            problems.AddForFile($"more than {MostParameters} parameters", "no drive has so many; is it the right file?");
            return null;
        }

        return listing;
    }
}

/// <summary>What a person says of a listing, so that it need not be guessed.</summary>
public sealed record ListingOptions
{
    /// <summary>Nothing: all is guessed.</summary>
    public static ListingOptions Guess { get; } = new();

    /// <summary>Columns, counted from 0, by what they hold.</summary>
    public IReadOnlyDictionary<ColumnRole, int> Columns { get; init; } = new Dictionary<ColumnRole, int>();

    /// <summary>Name of a spreadsheet's sheet; null for the fullest.</summary>
    public string? Sheet { get; init; }
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
