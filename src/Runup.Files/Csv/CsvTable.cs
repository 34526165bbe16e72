using System.Globalization;
using System.Text;
using CsvHelper;
using Runup.Files.Yaml;

namespace Runup.Files.Csv;

/// <summary>A table from a CSV text: a header, and rows whose cells know their places.</summary>
/// <remarks>
/// Separated by comma, semicolon or tab, whichever the header holds; quotes as in RFC 4180; lines that begin with <c>#</c> are
/// remarks. No text makes this throw; whatever is wrong becomes a problem.
/// </remarks>
public sealed class CsvTable
{
    private const int MostRows = 100_000;
    private const int LongestCell = 10_000;

    private CsvTable(IReadOnlyList<CsvCell> header, IReadOnlyList<IReadOnlyList<CsvCell>> rows)
    {
        Header = header;
        Rows = rows;
    }

    /// <summary>The names of the columns.</summary>
    public IReadOnlyList<CsvCell> Header { get; }

    /// <summary>The rows, each with as many cells as the header.</summary>
    public IReadOnlyList<IReadOnlyList<CsvCell>> Rows { get; }

    /// <summary>Reads a file; null with problems where it is no table.</summary>
    public static CsvTable? ReadFile(string path, int largestBytes, Problems problems) =>
        TextOfFile.Read(path, largestBytes, problems) is { } text ? Read(text, problems) : null;

    /// <summary>Reads a text; null with problems where it is no table.</summary>
    public static CsvTable? Read(string text, Problems problems)
    {
        var before = problems.Count;
        var plain = text.TrimStart('\uFEFF');
        if (plain.Contains('\0', StringComparison.Ordinal))
        {
            problems.AddForFile("a NUL character", "is this a text file? A CSV file of lines and columns would do");
            return null;
        }

        var rows = new List<IReadOnlyList<CsvCell>>();
        try
        {
            using var reader = CsvReader.FromText(plain, Options(plain));
            while (reader.Read() && rows.Count <= MostRows)
            {
                rows.Add(Cells(reader));
            }
        }
        catch (CsvFormatException e)
        {
            var place = new Place((int)Math.Max(1, e.LineNumber), 1, 0, 0);
            problems.Add(place, FileProblem.WholeFile, "quotes that do not match", "put cells with quotes, separators or line ends in quotes, and double the quotes inside");
            return null;
        }

        if (rows.Count is 0 or > MostRows)
        {
            problems.AddForFile(rows.Count == 0 ? "it holds nothing" : $"more than {MostRows} rows", "a header and rows beneath it would do");
            return null;
        }

        foreach (var row in rows.Skip(1).Where(r => r.Count != rows[0].Count))
        {
            problems.Add(row[0].Place, FileProblem.WholeFile, $"{row.Count} cells in a table of {rows[0].Count} columns", "each row has a cell for each column");
        }

        return problems.Count == before ? new CsvTable(rows[0], rows[1..]) : null;
    }

    /// <summary>The place of a column of this name, or null.</summary>
    public int? Column(string name)
    {
        for (var i = 0; i < Header.Count; i++)
        {
            if (string.Equals(Header[i].Text, name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return null;
    }

    private static CsvReaderOptions Options(string text) => new()
    {
        Separator = Separator(text),
        HasHeader = false,
        CommentPrefix = '#',
        TrimWhitespace = true,
        TrackLineNumbers = true,
        AllowLineBreaksInQuotes = false,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
        MalformedData = CsvMalformedDataHandling.Throw,
        FormatProvider = CultureInfo.InvariantCulture,
    };

    private static char Separator(string text)
    {
        foreach (var line in text.Split('\n', 200))
        {
            if (line.Trim() is { Length: > 0 } header && header[0] != '#')
            {
                return header.Contains(';', StringComparison.Ordinal) ? ';' : header.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';
            }
        }

        return ',';
    }

    private static CsvCell[] Cells(CsvReader reader)
    {
        var cells = new CsvCell[reader.FieldCount];
        var raw = Encoding.UTF8.GetString(reader.RawRecord);
        var line = (int)reader.LineNumber;
        var at = 0;
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i] = new CsvCell(reader.GetString(i), new Place(line, at + 1, 0, 0));
            at = Math.Min(raw.Length, EndOfCell(raw, at, reader.Separator) + 1);
        }

        return cells;
    }

    private static int EndOfCell(string raw, int from, char separator)
    {
        var inQuotes = false;
        for (var i = from; i < raw.Length; i++)
        {
            inQuotes ^= raw[i] == '"';
            if (!inQuotes && raw[i] == separator)
            {
                return i;
            }
        }

        return raw.Length;
    }
}

/// <summary>A cell of a table.</summary>
/// <param name="Text">Its text, trimmed.</param>
/// <param name="Place">Where it stands; line and column only.</param>
public sealed record CsvCell(string Text, Place Place);
