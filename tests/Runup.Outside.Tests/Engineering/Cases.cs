using System.Globalization;
using System.Text;

namespace Runup.Outside.Tests.Engineering;

/// <summary>A table of published cases: a header, then rows whose cells may be quoted.</summary>
internal sealed class Cases
{
    private readonly Dictionary<string, int> columns;

    private Cases(List<string[]> lines)
    {
        columns = lines[0].Select((name, place) => (name, place)).ToDictionary(c => c.name, c => c.place, StringComparer.Ordinal);
        Rows = lines.Skip(1).ToDictionary(row => row[0], StringComparer.Ordinal);
    }

    internal IReadOnlyDictionary<string, string[]> Rows { get; }

    internal static Cases Read(string name)
    {
        using var stream = typeof(Cases).Assembly.GetManifestResourceStream($"cases/{name}.csv")!;
        using var reader = new StreamReader(stream);
        return new Cases(reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Cells).ToList());
    }

    internal string Text(string id, string column) => Rows[id][columns[column]];

    internal double? Number(string id, string column) =>
        Text(id, column) is { Length: > 0 } text ? double.Parse(text, CultureInfo.InvariantCulture) : null;

    /// <summary>Half of the last printed digit of a cell.</summary>
    internal double HalfDigit(string id, string column)
    {
        var text = Text(id, column);
        var decimals = text.Contains('.', StringComparison.Ordinal) ? text.Length - text.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return 0.5 * Math.Pow(10, -decimals);
    }

    private static string[] Cells(string line)
    {
        var cells = new List<string>();
        var (cell, quoted) = (new StringBuilder(), false);
        foreach (var character in line)
        {
            switch (character)
            {
                case '"':
                    quoted = !quoted;
                    break;
                case ',' when !quoted:
                    cells.Add(cell.ToString());
                    cell.Clear();
                    break;
                default:
                    cell.Append(character);
                    break;
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }
}
