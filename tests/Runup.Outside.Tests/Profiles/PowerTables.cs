using System.Globalization;
using Runup.Profiles;

namespace Runup.Outside.Tests.Profiles;

/// <summary>The published tables of the state machine, as <c>data/cases/cia402-*.csv</c> with their sources in the first lines.</summary>
internal static class PowerTables
{
    internal static IReadOnlyList<Dictionary<string, string>> Rows(string name)
    {
        using var stream = typeof(PowerTables).Assembly.GetManifestResourceStream($"cases/cia402-{name}.csv")!;
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(l => !l.StartsWith('#')).Select(Cells).ToList();
        return [.. lines.Skip(1).Select(cells => lines[0].Zip(cells).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal))];
    }

    internal static PowerState State(string name) => Enum.Parse<PowerState>(name.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true);

    internal static ushort Hex(string text) => ushort.Parse(text.Split(' ')[0][2..], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    private static string[] Cells(string line)
    {
        var cells = new List<string> { "" };
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += c;
            }
        }

        return [.. cells];
    }
}
