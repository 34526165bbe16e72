using System.Globalization;
using CsvHelper;

namespace Runup.Files.Listings;

/// <summary>A table of a CSV text as spreadsheets write it: any of the usual separators, quotes, line ends within quotes, rows of any length.</summary>
internal static class CsvGrid
{
    // A quote that nothing closes within some lines is a sign for inches or a slip, not the begin of a cell.
    private const int LongestCell = 4000;
    private const int MostSlips = 20;

    private static readonly char[] Separators = ['\t', ';', '|', ','];

    internal static ListingGrid Read(string text)
    {
        var separator = Separator(text);
        var rows = new List<ListingRow>();
        var (rest, line) = (text, 1);
        for (var slips = 0; rest.Length > 0; slips++)
        {
            if (Records(rest, line, Options(separator, slips < MostSlips ? CsvMode.Rfc4180 : CsvMode.NoEscape), rows) is not { } slip)
            {
                break;
            }

            // The line with the slip is taken as it stands; behind it quotes count again.
            rest = Behind(rest, slip - line);
            var end = rest.IndexOf('\n', StringComparison.Ordinal);
            Records(end < 0 ? rest : rest[..end], slip, Options(separator, CsvMode.NoEscape), rows);
            (rest, line) = (end < 0 ? "" : rest[(end + 1)..], slip + 1);
        }

        return new ListingGrid(rows);
    }

    /// <summary>Adds the rows; answers the line of the first record that runs on since a quote is not closed, or null.</summary>
    private static int? Records(string text, int from, CsvReaderOptions options, List<ListingRow> rows)
    {
        var (unclosed, odd, last) = (false, false, 0);
        using var reader = CsvReader.FromText(text, options with { OnMalformedRecord = r => (unclosed, odd) = (IsUnclosed(r), IsOdd(r)) });
        while (Next(reader, ref odd))
        {
            var line = last = from + (int)reader.LineNumber - 1;
            var cells = Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetString(i) ?? "").ToList();
            if (options.Mode is CsvMode.Rfc4180 && (unclosed || cells.Exists(c => c.Length > LongestCell && c.Contains('\n', StringComparison.Ordinal))))
            {
                return line;
            }

            if (cells.ConvertAll(c => c.Trim()) is var trimmed && trimmed.Exists(c => c.Length > 0))
            {
                rows.Add(new ListingRow(line, trimmed));
            }
        }

        if (odd && rows.Count > 0 && rows[^1].Line == last)
        {
            rows.RemoveAt(rows.Count - 1);
            return last;
        }

        return null;
    }

    private static bool Next(CsvReader reader, ref bool odd)
    {
        var before = odd;
        odd = false;
        var read = reader.Read();
        odd |= !read && before;
        return read;
    }

    // Text behind the quote that closes a cell over several lines: it was another cell's.
    private static bool IsUnclosed(CsvMalformedRecord record) =>
        record.Reason is CsvMalformedReason.UnterminatedQuote || (record.Reason is CsvMalformedReason.TextAfterClosingQuote && record.RawRecord.Contains('\n', StringComparison.Ordinal));

    // Of several slips in a record the first is told: it may be the last record, whose quote is not closed, too.
    private static bool IsOdd(CsvMalformedRecord record) =>
        record.RawRecord.Contains('\n', StringComparison.Ordinal) && record.RawRecord.Count(c => c == '"') % 2 == 1;

    private static string Behind(string text, int lines)
    {
        var at = 0;
        for (var i = 0; i < lines; i++)
        {
            at = text.IndexOf('\n', at) + 1;
        }

        return text[at..];
    }

    private static CsvReaderOptions Options(char separator, CsvMode mode) => new()
    {
        Separator = separator,
        Mode = mode,
        HasHeader = false,
        TrimWhitespace = true,
        TrackLineNumbers = true,
        AllowLineBreaksInQuotes = true,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
        MalformedData = CsvMalformedDataHandling.Recover,
        FormatProvider = CultureInfo.InvariantCulture,
    };

    /// <summary>The separator that cuts the most lines into the same number of cells.</summary>
    /// <remarks>The library's own guess looks at quotes, too, and is led astray by one that is not closed.</remarks>
    private static char Separator(string text)
    {
        var lines = text.Split('\n', 400).Where(l => l.Trim().Length > 0).Take(200).Select(Unquoted).ToList();
        var best = (Separator: ',', Worth: 0.0);
        foreach (var separator in Separators)
        {
            var usual = lines.Select(l => l.Count(c => c == separator)).Where(n => n > 0).GroupBy(n => n).OrderByDescending(g => g.Count()).FirstOrDefault();
            var worth = usual is null ? 0 : usual.Count() * Math.Min(usual.Key, 4) * (separator == ',' ? 0.6 : 1);
            best = worth > best.Worth ? (separator, worth) : best;
        }

        return best.Separator;
    }

    private static string Unquoted(string line)
    {
        var parts = line.Split('"');
        return string.Concat(parts.Where((_, i) => i % 2 == 0));
    }
}
