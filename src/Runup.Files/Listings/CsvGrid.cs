using System.Text;

namespace Runup.Files.Listings;

/// <summary>A table of a CSV text as spreadsheets write it: any of the usual separators, quotes, line ends within quotes, rows of any length.</summary>
/// <remarks>Our own splitter and not the stricter one of curves: a manual's table has ragged rows and stray quotes, and each cell must know its line.</remarks>
internal static class CsvGrid
{
    private static readonly char[] Separators = ['\t', ';', '|', ','];

    internal static ListingGrid Read(string text)
    {
        var separator = Separator(text);
        var rows = new List<ListingRow>();
        var cells = new List<string>();
        var cell = new StringBuilder();
        int line = 1, begun = 1;
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted)
            {
                quoted = c != '"' || (i + 1 < text.Length && text[i + 1] == '"');
                if (quoted)
                {
                    cell.Append(c);
                    i += c == '"' ? 1 : 0;
                }

                line += c == '\n' ? 1 : 0;
                continue;
            }

            if (c == '"' && cell.ToString().AsSpan().Trim().IsEmpty && Closes(text, i + 1))
            {
                cell.Clear();
                quoted = true;
            }
            else if (c == separator)
            {
                Take(cells, cell);
            }
            else if (c == '\n')
            {
                Take(cells, cell);
                Add(rows, begun, cells);
                cells = [];
                begun = ++line;
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }
        }

        Take(cells, cell);
        Add(rows, begun, cells);
        return new ListingGrid(rows);
    }

    // A quote that nothing closes within some lines is a sign for inches or a slip, not the begin of a cell.
    private static bool Closes(string text, int from)
    {
        var end = text.IndexOf('"', from);
        return end >= 0 && end - from <= 4000;
    }

    private static void Take(List<string> cells, StringBuilder cell)
    {
        cells.Add(cell.ToString().Trim());
        cell.Clear();
    }

    private static void Add(List<ListingRow> rows, int line, List<string> cells)
    {
        if (cells.Exists(c => c.Length > 0))
        {
            rows.Add(new ListingRow(line, cells));
        }
    }

    /// <summary>The separator that cuts the most lines into the same number of cells.</summary>
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
