using Runup.Files.Listings;
using Runup.Files.Tests.Listings;
using Runup.Profiles;

namespace Runup.Files.Tests.Suggestion;

/// <summary>A table is understood alike as it was written, with bars between its cells, and as text whose columns stand beneath one another.</summary>
public sealed class FormsTests
{
    [Theory]
    [InlineData("heron.csv")]
    [InlineData("rail.csv")]
    [InlineData("crake.csv")]
    [InlineData("sanderling.csv")]
    [InlineData("dotterel.csv")]
    [InlineData("smew.tsv")]
    public void A_table_is_understood_alike_in_every_form(string table)
    {
        var rows = CsvGrid.Read(File.ReadAllText(Hands.PathOf(table))).Rows.Select(r => r.Cells).ToList();
        var asWritten = Shown(Hands.Read(table, out _).Parameters);
        foreach (var text in (string[])[Bars(rows), Aligned(rows)])
        {
            var pasted = Shown(Reading.Rows(text, ListingKind.Pasted));
            pasted.Except(asWritten, StringComparer.Ordinal).ShouldBeEmpty();
            pasted.Count.ShouldBe(asWritten.Count);
        }
    }

    private static List<string> Shown(IReadOnlyList<ListedParameter> rows) => [.. rows.Select(r => $"{r.Number} {r.Name} {Reading.Shown(r)} {r.Access} {r.Register}")];

    private static string Bars(IReadOnlyList<IReadOnlyList<string>> rows) => string.Join('\n', rows.Select(r => "| " + string.Join(" | ", r.Select(c => c.Replace("\n", "<br>", StringComparison.Ordinal))) + " |"));

    // Cells of several lines go on beneath; a heading that stands alone reaches over the columns.
    private static string Aligned(List<IReadOnlyList<string>> rows)
    {
        var width = rows.Max(r => r.Count);
        var lines = rows.Where(r => r.Count(c => c.Length > 0) > 1).SelectMany(r => Lines(r, width)).ToList();
        var widths = Enumerable.Range(0, width).Select(c => lines.Max(l => l[c].Length) + 2).ToList();
        return string.Join('\n', rows.SelectMany(r => r.Count(c => c.Length > 0) == 1
            ? [string.Concat(r).Replace('\n', ' ')]
            : Lines(r, width).Select(l => string.Concat(l.Select((c, i) => c.PadRight(widths[i]))).TrimEnd())));
    }

    private static IEnumerable<string[]> Lines(IReadOnlyList<string> row, int width)
    {
        var cells = Enumerable.Range(0, width).Select(c => c < row.Count ? row[c].Split('\n') : [""]).ToList();
        return Enumerable.Range(0, cells.Max(c => c.Length)).Select(i => cells.Select(c => i < c.Length ? c[i] : "").ToArray());
    }
}
