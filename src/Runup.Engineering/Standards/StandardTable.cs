using System.Globalization;

namespace Runup.Engineering.Standards;

/// <summary>A table of a standard as shipped with the program: comment lines that give the source, a header, rows.</summary>
internal sealed class StandardTable
{
    private readonly Dictionary<string, int> columns;

    private StandardTable(IReadOnlyList<string[]> lines)
    {
        columns = lines[0].Select((name, place) => (name, place)).ToDictionary(c => c.name, c => c.place, StringComparer.Ordinal);
        Rows = lines.Skip(1).ToList();
    }

    internal IReadOnlyList<string[]> Rows { get; }

    internal IEnumerable<string> Columns => columns.Keys;

    internal static StandardTable Read(string name)
    {
        var assembly = typeof(StandardTable).Assembly;
        using var stream = assembly.GetManifestResourceStream($"tables/{name}.csv")
            ?? throw new InvalidOperationException($"The table {name} is not in {assembly.GetName().Name}.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return new StandardTable(lines.Where(line => line[0] != '#').Select(line => line.Split(',')).ToList());
    }

    internal string Text(string[] row, string column) => row[columns[column]];

    /// <summary>The number in a cell; null where the cell is empty.</summary>
    internal double? Number(string[] row, string column) =>
        Text(row, column) is { Length: > 0 } text ? double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) : null;
}
