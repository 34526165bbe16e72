using System.Globalization;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Runup.Cli.Terminal;

/// <summary>Text for people on standard output: headings, sentences and plain tables that survive an e-mail.</summary>
internal sealed class Page
{
    private const int WidthOfPipe = 132;
    private const int Gap = 2;
    private const int LeastForSentences = 28;

    private readonly IAnsiConsole console;

    internal Page(TextWriter output)
    {
        console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });
        if (!console.Profile.Out.IsTerminal)
        {
            console.Profile.Width = WidthWanted() ?? WidthOfPipe;
        }
    }

    /// <summary>Characters in a line.</summary>
    internal int Width => console.Profile.Width;

    internal void Heading(string text)
    {
        console.WriteLine();
        console.Write(new Text(Visible.Text(text), new Style(decoration: Decoration.Bold)));
        console.WriteLine();
    }

    internal void Line(string text = "")
    {
        console.Write(new Text(Visible.Text(text)));
        console.WriteLine();
    }

    /// <summary>A table. Where a narrow screen would leave a last column of sentences a strip in which nobody can read, they stand below their rows.</summary>
    internal void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var all = rows.ToList();
        if (LastHasNoRoom(columns, all))
        {
            Table([.. columns.SkipLast(1)], [.. all.Select(row => (IReadOnlyList<string>)[.. row.SkipLast(1)])], [.. all.Select(row => row[^1])]);
        }
        else
        {
            WriteTrimmed(Made(columns, all), []);
        }
    }

    /// <summary>A table with a sentence below each row, for what a narrow screen has no column for. The first column is never blank.</summary>
    internal void Table(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows, IReadOnlyList<string> below) => WriteTrimmed(Made(columns, rows), below);

    // What a person or a pager says of the line's length; a terminal tells it itself.
    private static int? WidthWanted() =>
        int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), NumberStyles.None, CultureInfo.InvariantCulture, out var columns) && columns is >= 40 and <= 1000 ? columns : null;

    private static Table Made(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = columns.Any(c => c.Title.Length > 0) };
        foreach (var (place, column) in columns.Index())
        {
            var made = new TableColumn(new Text(Visible.Text(column.Title))) { Padding = new Padding(0, 0, place == columns.Count - 1 ? 0 : Gap, 0) };
            if (column.Digits)
            {
                made.RightAligned();
            }

            if (column.Whole)
            {
                made.NoWrap();
            }

            table.AddColumn(made);
        }

        foreach (var row in rows)
        {
            table.AddRow(row.Select(cell => new Text(Visible.Text(cell))));
        }

        return table;
    }

    private bool LastHasNoRoom(IReadOnlyList<Column> columns, List<IReadOnlyList<string>> rows)
    {
        if (columns.Count < 3 || columns[^1].Whole || columns.SkipLast(1).Any(c => !c.Whole) || rows.Exists(r => r[0].Length == 0))
        {
            return false;
        }

        var left = console.Profile.Width - columns.SkipLast(1).Select((c, place) => Gap + rows.Select(r => r[place].Length).Append(c.Title.Length).Max()).Sum();
        return left < LeastForSentences && rows.Exists(r => r[^1].Length > left);
    }

    /// <summary>Without the blanks at the ends of lines, which an e-mail would wrap, and with a rule below the headings.</summary>
    private void WriteTrimmed(Table table, IReadOnlyList<string> below)
    {
        var lines = Lines(table);
        var begun = 0;
        for (var i = 0; i < lines.Count; i++)
        {
            var isHeading = i == 0 && table.ShowHeaders;
            if (!isHeading && below.Count > 0 && BeginsRow(lines[i], below.Count) && begun++ > 0)
            {
                Below(below[begun - 2]);
            }

            Line(lines[i]);
            if (isHeading)
            {
                Line(Rule(lines[0]));
            }
        }

        if (begun > 0)
        {
            Below(below[begun - 1]);
        }
    }

    // A row that needs two lines leaves the first column of the second blank.
    private static bool BeginsRow(string line, int rows) => line.AsSpan(0, Math.Min(line.Length, rows.ToString(CultureInfo.InvariantCulture).Length)).Trim().Length > 0;

    private void Below(string words)
    {
        foreach (var line in words.Length == 0 ? [] : Lines(new Padder(new Text(Visible.Text(words)), new Padding(6, 0, 0, 0))))
        {
            Line(line);
        }
    }

    private List<string> Lines(IRenderable what)
    {
        using var text = new StringWriter();
        var plain = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(text), Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors });
        plain.Profile.Width = console.Profile.Width;
        plain.Write(what);
        return [.. text.ToString().TrimEnd().Split('\n').Select(l => l.TrimEnd())];
    }

    private static string Rule(string headings)
    {
        var rule = headings.ToCharArray();
        for (var i = 0; i < rule.Length; i++)
        {
            var blank = headings[i] == ' ' && (i == 0 || headings[i - 1] == ' ' || i + 1 == headings.Length || headings[i + 1] == ' ');
            rule[i] = blank ? ' ' : '-';
        }

        return new string(rule);
    }
}

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading, with the unit.</param>
/// <param name="Digits">Whether it is aligned to the right.</param>
/// <param name="Whole">Whether its cells are never broken.</param>
internal sealed record Column(string Title, bool Digits = false, bool Whole = true);
