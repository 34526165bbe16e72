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
        console.Write(new Text(text, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
    }

    internal void Line(string text = "")
    {
        console.Write(new Text(text));
        console.WriteLine();
    }

    internal void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        foreach (var column in columns)
        {
            var made = new TableColumn(new Text(column.Title, new Style(decoration: Decoration.Underline))) { Padding = new Padding(0, 0, 2, 0) };
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
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        console.Write(table);
    }
}

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading, with the unit.</param>
/// <param name="Digits">Whether it is aligned to the right.</param>
/// <param name="Whole">Whether its cells are never broken.</param>
internal sealed record Column(string Title, bool Digits = false, bool Whole = true);
