using System.Globalization;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>A table of runs of another program, with a header; how it was made stands beside it in <c>data/cases/dynamics</c>.</summary>
internal static class StoredRuns
{
    internal static IReadOnlyList<string[]> Rows(string name)
    {
        using var stream = typeof(StoredRuns).Assembly.GetManifestResourceStream($"cases/{name}.csv")!;
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Skip(1).Select(line => line.Split(','))];
    }

    internal static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
