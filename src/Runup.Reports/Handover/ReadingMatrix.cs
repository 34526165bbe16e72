using Runup.Commissioning.Records;
using Runup.Quantities;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>Readings of the same quantities at several frequencies, which read better across than down.</summary>
internal sealed class ReadingMatrix
{
    private readonly IReadOnlyList<string> frequencies;
    private readonly IReadOnlyList<(string Quantity, string Unit, IReadOnlyList<RecordBody.ReadingTaken?> Cells)> rows;

    private ReadingMatrix(IReadOnlyList<string> frequencies, IReadOnlyList<(string, string, IReadOnlyList<RecordBody.ReadingTaken?>)> rows) =>
        (this.frequencies, this.rows) = (frequencies, rows);

    /// <summary>The matrix; null where the readings are not all taken at frequencies, or at fewer than two or more than five.</summary>
    public static ReadingMatrix? Of(IReadOnlyList<RecordBody.ReadingTaken> readings)
    {
        var split = readings.Select(r => (Reading: r, Parts: r.Quantity.Split(" at ", 2))).ToList();
        if (split.Any(s => s.Parts.Length < 2 || !s.Parts[1].EndsWith(" Hz", StringComparison.Ordinal)))
        {
            return null;
        }

        var distinct = split.Select(s => s.Parts[1]).Distinct(StringComparer.Ordinal).ToList();
        if (distinct.Count is < 2 or > 5)
        {
            return null;
        }

        var grouped = split.GroupBy(s => (Quantity: s.Parts[0], s.Reading.Unit)).Select(g => (g.Key.Quantity, g.Key.Unit,
            (IReadOnlyList<RecordBody.ReadingTaken?>)[.. distinct.Select(f => g.LastOrDefault(s => string.Equals(s.Parts[1], f, StringComparison.Ordinal)).Reading)]));
        return new(distinct, [.. grouped]);
    }

    public void Write(HtmlWriter html, LineCurrent rated) => html.In("table", "across", table => table
        .In("thead", null, head => head.In("tr", null, row =>
        {
            row.Element("th", "Measured; expected below");
            foreach (var frequency in frequencies)
            {
                row.Element("th", $"at {frequency}");
            }
        }))
        .In("tbody", null, body =>
        {
            foreach (var (quantity, unit, cells) in rows)
            {
                body.In("tr", null, row =>
                {
                    row.Element("td", unit is "A" ? $"{quantity}, A (% of rated)" : $"{quantity}, {unit}");
                    foreach (var cell in cells)
                    {
                        row.In("td", "cell", c => Cell(c, cell, rated));
                    }
                });
            }
        }));

    private static void Cell(HtmlWriter html, RecordBody.ReadingTaken? reading, LineCurrent rated)
    {
        if (reading is null)
        {
            html.Text("–");
            return;
        }

        html.Element("b", reading.Measured is { } value ? Numbers.Digits(value, reading.Unit) : "–");
        if (Numbers.PercentOf(reading.Measured, reading.Unit, rated) is { } part)
        {
            html.Text($" ({part})");
        }

        if (reading.Within is false)
        {
            html.Text(" ").Within(reading.Within);
        }

        html.Element("small", Expected(reading));
    }

    private static string Expected(RecordBody.ReadingTaken reading) => (reading.Expected, Numbers.Between(reading.Low, reading.High, "")) switch
    {
        ({ } value, null) => $"{Numbers.Digits(value, reading.Unit)}, not judged",
        ({ } value, _) => $"{Numbers.Digits(value, reading.Unit)} ({Band(reading)})",
        (null, null) => "not judged",
        _ => Band(reading),
    };

    private static string Band(RecordBody.ReadingTaken r) => (r.Low, r.High) switch
    {
        ({ } low, { } high) => $"{Numbers.Digits(low, r.Unit)} to {Numbers.Digits(high, r.Unit)}",
        ({ } low, null) => $"at least {Numbers.Digits(low, r.Unit)}",
        (null, { } high) => $"at most {Numbers.Digits(high, r.Unit)}",
        _ => string.Empty,
    };
}
