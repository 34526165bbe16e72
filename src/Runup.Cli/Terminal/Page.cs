using Spectre.Console;

namespace Runup.Cli.Terminal;

/// <summary>Text for people on standard output: headings, sentences and plain tables that survive an e-mail.</summary>
internal sealed class Page
{
    private const int WidthOfPipe = 132;

    private readonly IAnsiConsole console;

    internal Page(TextWriter output)
    {
        console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });
        if (!console.Profile.Out.IsTerminal)
        {
            console.Profile.Width = WidthOfPipe;
        }
    }

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

    internal void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = columns.Any(c => c.Title.Length > 0) };
        foreach (var column in columns)
        {
            var made = new TableColumn(new Text(Visible.Text(column.Title))) { Padding = new Padding(0, 0, 2, 0) };
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

        WriteTrimmed(table);
    }

    /// <summary>Without the blanks at the ends of lines, which an e-mail would wrap, and with a rule below the headings.</summary>
    private void WriteTrimmed(Table table)
    {
        using var text = new StringWriter();
        var plain = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(text), Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors });
        plain.Profile.Width = console.Profile.Width;
        plain.Write(table);
        var lines = text.ToString().TrimEnd().Split('\n').Select(l => l.TrimEnd()).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            Line(lines[i]);
            if (i == 0 && table.ShowHeaders)
            {
                Line(Rule(lines[0]));
            }
        }
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
