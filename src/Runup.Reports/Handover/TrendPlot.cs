using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Plots;

namespace Runup.Reports.Handover;

/// <summary>A start and stop: frequency, current and DC bus on one time axis, what was measured over what was predicted.</summary>
internal static class TrendPlot
{
    private static readonly (string Column, string Label, double Height)[] Panels =
    [
        ("output_frequency_Hz", "frequency, Hz", 120), ("output_current_A", "current, A", 140), ("dc_bus_V", "DC bus, V", 140),
    ];

    /// <summary>The plot of a step that was predicted; null for other steps.</summary>
    public static Plot? Of(StepStory step, HandoverModel model)
    {
        if (step is not { Predicted: { } predicted, Measured: { } measured })
        {
            return null;
        }

        var panels = Panels.Select(p => Panel(p.Column, p.Label, p.Height, measured, predicted, model)).OfType<PlotPanel>().ToList();
        var times = panels.SelectMany(p => p.Lines).SelectMany(l => l.Points).Select(p => p.X).ToList();
        return panels.Count == 0 || times.Count == 0 ? null : new()
        {
            Title = $"{step.Title.TrimEnd('.')}: measured over predicted. The prediction is an estimate.",
            Across = new("time from the run command, s", 0, times.Max()),
            Panels = panels,
        };
    }

    private static PlotPanel? Panel(string column, string label, double height, RecordBody.Trend measured, RecordBody.Trend predicted, HandoverModel model)
    {
        var (read, computed) = (Points(measured, column), Points(predicted, column));
        if (read.Count + computed.Count == 0)
        {
            return null;
        }

        var values = read.Concat(computed).Select(p => p.Y);
        return new()
        {
            Up = column is "dc_bus_V" ? PlotAxis.Around(label, values) : PlotAxis.FromZero(label, values),
            Height = height,
            Lines = [new("predicted", LineLook.Predicted, computed), new("measured", LineLook.Measured, read)],
            Levels = column switch
            {
                "output_current_A" => [new("rated current", model.RatedCurrent.Amperes)],
                "dc_bus_V" => [.. model.BusLevels.Select(l => new PlotLevel(l.Name, l.Level.Volts))],
                _ => [],
            },
        };
    }

    private static List<(double X, double Y)> Points(RecordBody.Trend trend, string column)
    {
        var (x, y) = (Index(trend, "time_s"), Index(trend, column));
        return x < 0 || y < 0 ? [] : [.. trend.Rows.Where(r => r.Count > Math.Max(x, y)).Select(r => (r[x], r[y]))];
    }

    private static int Index(RecordBody.Trend trend, string column)
    {
        for (var i = 0; i < trend.Columns.Count; i++)
        {
            if (string.Equals(trend.Columns[i], column, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return -1;
    }
}
