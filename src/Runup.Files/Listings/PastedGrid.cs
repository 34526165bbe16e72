using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>A table of pasted text: columns by tabs, bars, or gaps of two blanks and more; or none, words with single blanks.</summary>
internal static partial class PastedGrid
{
    internal static ListingGrid Read(string text)
    {
        var lines = text.Split('\n').Select((l, i) => (Text: l.TrimEnd(), Line: i + 1)).Where(l => l.Text.Trim().Length > 0).ToList();
        if (lines.Count == 0)
        {
            return new ListingGrid([]);
        }

        if (lines.Count(l => l.Text.Contains('\t', StringComparison.Ordinal)) * 3 > lines.Count)
        {
            return new ListingGrid([.. lines.Select(l => new ListingRow(l.Line, [.. l.Text.Split('\t').Select(c => c.Trim())]))]);
        }

        if (lines.Count(l => l.Text.Count(c => c is '|' or '│') >= 2) * 3 > lines.Count)
        {
            return Bars(lines);
        }

        var pieces = lines.Select(l => (l.Line, Pieces: Pieces(l.Text))).ToList();
        return pieces.Count(p => p.Pieces.Count >= 3) * 3 >= lines.Count ? Gaps(pieces) : Loose(lines);
    }

    private static ListingGrid Loose(IReadOnlyList<(string Text, int Line)> lines) => StackedCells.Read(lines) is { } stacked
        ? stacked
        : LooseRows([.. lines.Where(l => !LooseLine.IsHeader(l.Text))]);

    private static ListingGrid LooseRows(IReadOnlyList<(string Text, int Line)> lines)
    {
        var limits = LooseLimits.Of(lines.Select(l => l.Text));
        return new([new ListingRow(0, LooseLine.Header), .. lines.Select(l => LooseLine.Row(l.Line, l.Text, limits))]);
    }

    private static ListingGrid Bars(IEnumerable<(string Text, int Line)> lines) =>
        new([.. from line in lines
                where !Rule().IsMatch(line.Text)
                let cells = line.Text.Trim().Trim('|', '│').Split('|', '│')
                where cells.Any(c => c.Trim().Length > 0)
                select new ListingRow(line.Line, [.. cells.Select(c => c.Trim().Replace("<br>", "\n", StringComparison.OrdinalIgnoreCase))])]);

    private static ListingGrid Gaps(List<(int Line, List<(int From, int To, string Text)> Pieces)> lines)
    {
        var most = lines.Max(l => l.Pieces.Count);
        var least = Math.Max(3, most - 2);
        var columns = Columns(lines.Select(l => l.Pieces).Where(p => p.Count >= least).ToList(), lines.Select(l => l.Pieces).Where(p => p.Count >= 3 && p.Count < least).ToList());
        return new ListingGrid([.. lines.Select(l =>
        {
            var cells = new string[columns.Count];
            Array.Fill(cells, "");
            for (var i = 0; i < l.Pieces.Count; i++)
            {
                // As many pieces as columns: each in its own, however a heading stands beside what it names.
                var piece = l.Pieces[i];
                var place = l.Pieces.Count == columns.Count ? i : Nearest(columns, piece);
                cells[place] = cells[place].Length == 0 ? piece.Text : cells[place] + " " + piece.Text;
            }

            return new ListingRow(l.Line, cells);
        })]);
    }

    // Pieces of full lines that stand above one another are a column; and those of shorter lines that stand where there is none yet, as
    // choices do, whose rows have no limits.
    private static List<(int From, int To)> Columns(List<List<(int From, int To, string Text)>> full, List<List<(int From, int To, string Text)>> shorter)
    {
        var columns = new List<(int From, int To, int Count)>();
        foreach (var piece in full.SelectMany(p => p))
        {
            var at = columns.FindIndex(c => piece.From < c.To && piece.To > c.From);
            if (at < 0)
            {
                columns.Add((piece.From, piece.To, 1));
                continue;
            }

            // A piece that reaches over two columns, such as a heading, joins nothing.
            if (columns.FindIndex(at + 1, c => piece.From < c.To && piece.To > c.From) < 0)
            {
                columns[at] = (Math.Min(columns[at].From, piece.From), Math.Max(columns[at].To, piece.To), columns[at].Count + 1);
            }
        }

        var known = columns.Where(c => c.Count > 1).ToList();
        foreach (var piece in shorter.SelectMany(p => p).Where(p => !known.Exists(c => p.From < c.To && p.To > c.From)))
        {
            var at = columns.FindIndex(c => piece.From < c.To && piece.To > c.From);
            if (at < 0)
            {
                columns.Add((piece.From, piece.To, 1));
            }
            else
            {
                columns[at] = (Math.Min(columns[at].From, piece.From), Math.Max(columns[at].To, piece.To), columns[at].Count + 1);
            }
        }

        var least = Math.Max(1, full.Count / 20);
        return [.. columns.Where(c => c.Count >= least).OrderBy(c => c.From).Select(c => (c.From, c.To))];
    }

    private static int Nearest(List<(int From, int To)> columns, (int From, int To, string Text) piece)
    {
        var best = (Place: 0, Worth: double.NegativeInfinity);
        for (var i = 0; i < columns.Count; i++)
        {
            var worth = Math.Min(columns[i].To, piece.To) - Math.Max(columns[i].From, piece.From);
            best = worth > best.Worth ? (i, worth) : best;
        }

        return best.Place;
    }

    private static List<(int From, int To, string Text)> Pieces(string line) =>
        [.. Piece().Matches(line).Select(m => (m.Index, m.Index + m.Length, m.Value))];

    [GeneratedRegex(@"\S+(?: \S+)*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Piece();

    [GeneratedRegex(@"^[\s|│:+\-=─┼]+$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Rule();
}
