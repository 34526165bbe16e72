using System.Text.Json.Nodes;
using Runup.Commissioning.Survey;
using Runup.Files.Csv;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Curves;

/// <summary>A key that names a CSV file with a curve.</summary>
/// <typeparam name="T">A point of the curve.</typeparam>
/// <param name="name">The key.</param>
/// <param name="example">A file's name.</param>
/// <param name="about">What the curve is.</param>
/// <param name="columns">The two columns, the rising one first.</param>
/// <param name="point">Makes a point of a row.</param>
/// <param name="need">Whether it must be there.</param>
internal sealed class CurveKey<T>(string name, string example, string about, CurveColumns columns, Func<double, double, T> point, Need need) : Key<Curve<T>>(name, about, need)
{
    private const int LargestBytes = 1024 * 1024;

    private readonly DatumKey<string> file = new(name, example, about, new TextForm(), need);

    internal override string Example { get; } = example;

    internal override bool IsDatum => true;

    internal override string Wanted => $"a CSV file with the columns `{columns.X}` and `{columns.Y}`";

    internal override object? Read(YamlNode node, Desk desk)
    {
        if (file.Read(node, desk) is not Datum<string> datum)
        {
            return null;
        }

        var scalar = node as YamlScalar ?? (YamlScalar)((YamlMap)node).Find("value")!;
        if (CompanionFile.Find(scalar, desk) is not { } path)
        {
            return null;
        }

        var problems = new Problems(path);
        var points = Points(path, problems);
        foreach (var problem in problems.InOrder())
        {
            desk.Problems.Add(problem);
        }

        if (problems.Any)
        {
            desk.Problems.Add(scalar, $"the curve {Quote.Of(datum.Value)} can't be read", "put right what is told of it");
        }

        return points is null ? null : new Curve<T>(datum, points);
    }

    internal override JsonObject Schema() => file.Schema();

    private List<T>? Points(string path, Problems problems)
    {
        if (CsvTable.ReadFile(path, LargestBytes, problems) is not { } table || table.Numbers([columns.X, columns.Y], problems) is not { } rows)
        {
            return null;
        }

        if (rows.Count < 2)
        {
            problems.AddForFile($"a curve of {rows.Count} points", "two points or more would do");
        }

        var rising = table.Column(columns.X)!.Value;
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i][0] < 0 || (i > 0 && rows[i][0] <= rows[i - 1][0]))
            {
                var cell = table.Rows[i][rising];
                problems.Add(cell.Place, columns.X, Quote.Of(cell.Text), i > 0 ? "each row lies above the one before" : "zero or more would do");
            }

            if (columns.YIsNeverNegative && rows[i][1] < 0)
            {
                var cell = table.Rows[i][table.Column(columns.Y)!.Value];
                problems.Add(cell.Place, columns.Y, Quote.Of(cell.Text), "zero or more would do");
            }
        }

        return problems.Any ? null : [.. rows.Select(r => point(r[0], r[1]))];
    }
}

/// <summary>The columns of a curve.</summary>
/// <param name="X">The rising one.</param>
/// <param name="Y">The other.</param>
/// <param name="YIsNeverNegative">Whether the other can't lie below zero.</param>
internal sealed record CurveColumns(string X, string Y, bool YIsNeverNegative);

/// <summary>A curve with the file that it was read from.</summary>
/// <typeparam name="T">A point of the curve.</typeparam>
/// <param name="File">The file as named, with its provenance.</param>
/// <param name="Points">The points, rising.</param>
internal sealed record Curve<T>(Datum<string> File, IReadOnlyList<T> Points);
