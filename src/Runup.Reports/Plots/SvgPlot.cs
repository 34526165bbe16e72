using System.Globalization;
using System.Text;
using Runup.Reports.Html;

namespace Runup.Reports.Plots;

/// <summary>Writes a plot as SVG: text stays text, lines are told apart by their strokes, nothing is taken from outside.</summary>
public static class SvgPlot
{
    private const double Width = 720;
    private const double Left = 66;
    private const double Right = 66;
    private const double RightAlone = 16;
    private const double Foot = 46;
    private const double Gap = 14;

    /// <summary>The plot as one <c>svg</c> element, fit for a page or a file of its own.</summary>
    public static string Write(Plot plot)
    {
        ArgumentNullException.ThrowIfNull(plot);
        var right = plot.Panels.Any(p => p.Second is not null) ? Right : RightAlone;
        var (legend, legendHeight) = SvgLegend.Write(plot, Left, Width - right);
        var height = legendHeight + plot.Panels.Sum(p => p.Height) + (Gap * (plot.Panels.Count - 1)) + Foot;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" class="plot" viewBox="0 0 {Width} {height:0.#}" role="img" font-family="'Liberation Sans', Arial, sans-serif" font-size="13" fill="#111">""");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{Escape.Text(plot.Title)}</title>").Append(legend);
        var across = Ticks.Within(plot.Across.Low, plot.Across.High, 9);
        var x = new Span(across.Low, across.High, Left, Width - right);
        var top = legendHeight;
        foreach (var panel in plot.Panels)
        {
            SvgPanel.Write(svg, panel, across, x, top);
            top += panel.Height + Gap;
        }

        Foots(svg, plot.Across, across, x, top - Gap);
        return svg.Append("</svg>").ToString();
    }

    private static void Foots(StringBuilder svg, PlotAxis axis, Ticks across, Span x, double top)
    {
        foreach (var tick in across.Values)
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<text x="{x.At(tick):0.#}" y="{top + 17:0.#}" text-anchor="middle">{across.Text(tick)}</text>""");
        }

        svg.Append(CultureInfo.InvariantCulture, $"""<text x="{(x.From + x.To) / 2:0.#}" y="{top + 37:0.#}" text-anchor="middle">{Escape.Text(axis.Label)}</text>""");
    }
}

/// <summary>From values to places.</summary>
/// <param name="Low">Value at <paramref name="From"/>.</param>
/// <param name="High">Value at <paramref name="To"/>.</param>
/// <param name="From">Place of the lowest.</param>
/// <param name="To">Place of the highest.</param>
internal readonly record struct Span(double Low, double High, double From, double To)
{
    public double At(double value) => From + ((value - Low) / (High - Low) * (To - From));
}
