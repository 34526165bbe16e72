using System.Globalization;
using System.Text;
using Runup.Reports.Html;

namespace Runup.Reports.Plots;

/// <summary>Writes one panel: grid, scales, lines, points, levels.</summary>
internal static class SvgPanel
{
    private const int Columns = 320;
    private const double NameHeight = 15;

    public static void Write(StringBuilder svg, PlotPanel panel, Ticks across, Span x, double top)
    {
        var bottom = top + panel.Height;
        var up = Ticks.Widened(panel.Up.Low, panel.Up.High, panel.Height < 160 ? 4 : 6);
        var y = new Span(up.Low, up.High, bottom, top);
        Grid(svg, across, up, x, y);
        Scale(svg, panel.Up.Label, up, y, x.From - 8, "end", 15);
        if (panel.Second is { } second)
        {
            var ticks = Ticks.Within(up.Low * second.Factor, up.High * second.Factor, panel.Height < 160 ? 4 : 6);
            Scale(svg, second.Label, ticks, new Span(ticks.Low, ticks.High, bottom, top), x.To + 8, "start", x.To + 56);
        }

        Levels(svg, panel, x, y);
        foreach (var line in panel.Lines)
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<path d="{Path(line, x, y)}" fill="none" stroke-linejoin="round" {Strokes.Of(line.Look)}/>""");
        }

        foreach (var mark in panel.Marks.Where(m => double.IsFinite(m.X) && double.IsFinite(m.Y)))
        {
            svg.Append(Strokes.Shape(mark.Shape, x.At(mark.X), y.At(mark.Y)));
        }
    }

    private static void Grid(StringBuilder svg, Ticks across, Ticks up, Span x, Span y)
    {
        var grid = new StringBuilder();
        foreach (var tick in across.Values)
        {
            grid.Append(CultureInfo.InvariantCulture, $"M{x.At(tick):0.#} {y.To:0.#}V{y.From:0.#}");
        }

        foreach (var tick in up.Values)
        {
            grid.Append(CultureInfo.InvariantCulture, $"M{x.From:0.#} {y.At(tick):0.#}H{x.To:0.#}");
        }

        svg.Append(CultureInfo.InvariantCulture, $"""<path d="{grid}" stroke="#d4d4d4" stroke-width="1"/>""")
            .Append(CultureInfo.InvariantCulture, $"""<rect x="{x.From:0.#}" y="{y.To:0.#}" width="{x.To - x.From:0.#}" height="{y.From - y.To:0.#}" fill="none" stroke="#111" stroke-width="1"/>""");
    }

    private static void Scale(StringBuilder svg, string label, Ticks ticks, Span y, double at, string anchor, double labelAt)
    {
        foreach (var tick in ticks.Values)
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<text x="{at:0.#}" y="{y.At(tick) + 4.5:0.#}" text-anchor="{anchor}">{ticks.Text(tick)}</text>""");
        }

        var middle = (y.From + y.To) / 2;
        svg.Append(CultureInfo.InvariantCulture, $"""<text transform="translate({labelAt:0.#} {middle:0.#}) rotate(-90)" text-anchor="middle">{Escape.Text(label)}</text>""");
    }

    private static void Levels(StringBuilder svg, PlotPanel panel, Span x, Span y)
    {
        // A name stands at the right end, above its line or below it at the top; where another is in its way, at the left end.
        var atRight = new List<double>();
        foreach (var level in panel.Levels.Where(l => l.Value >= y.Low && l.Value <= y.High))
        {
            var at = y.At(level.Value);
            var name = at < y.To + 18 ? at + 14 : at - 5;
            var (end, anchor) = atRight.Exists(other => Math.Abs(other - name) < NameHeight) ? (x.From + 6, "start") : (x.To - 6, "end");
            atRight.Add(name);
            svg.Append(CultureInfo.InvariantCulture, $"""<path d="M{x.From:0.#} {at:0.#}H{x.To:0.#}" fill="none" {Strokes.Of(LineLook.Limit)}/>""")
                .Append(CultureInfo.InvariantCulture, $"""<text x="{end:0.#}" y="{name:0.#}" text-anchor="{anchor}">{Escape.Text(level.Name)}</text>""");
        }
    }

    // Points outside the panel are left out of the drawing together with what leads to them.
    private static string Path(PlotLine line, Span x, Span y)
    {
        var path = new StringBuilder();
        var drawing = false;
        foreach (var (px, py) in Thinning.To(Columns, line.Points))
        {
            if (!double.IsFinite(px) || !double.IsFinite(py) || px < x.Low - 1e-9 || px > x.High + 1e-9)
            {
                drawing = false;
                continue;
            }

            path.Append(CultureInfo.InvariantCulture, $"{(drawing ? 'L' : 'M')}{x.At(px):0.#} {y.At(Math.Clamp(py, y.Low, y.High)):0.#}");
            drawing = true;
        }

        return path.Length == 0 ? "M0 0" : path.ToString();
    }
}
