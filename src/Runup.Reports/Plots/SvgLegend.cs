using System.Globalization;
using System.Text;
using Runup.Reports.Html;

namespace Runup.Reports.Plots;

/// <summary>The names of lines and points above a plot, each once, with a sample of its stroke.</summary>
internal static class SvgLegend
{
    private const double Row = 20;
    private const double HeadingRow = 26;
    private const double Sample = 34;

    // Wide enough for any usual face at 13: names never run into one another, at worst they stand a little apart.
    private const double LetterWidth = 7.1;

    public static (string Svg, double Height) Write(Plot plot, double left, double right)
    {
        var svg = new StringBuilder();
        var (x, y) = (left, plot.Heading is null ? 13.0 : 13.0 + HeadingRow);
        if (plot.Heading is { } heading)
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<text x="{left:0.#}" y="17" font-weight="bold">{Escape.Text(heading)}</text>""");
        }

        foreach (var (name, sample) in Entries(plot))
        {
            var width = Sample + 8 + (name.Length * LetterWidth) + 18;
            if (x > left && x + width > right)
            {
                (x, y) = (left, y + Row);
            }

            svg.Append(sample(x, y)).Append(CultureInfo.InvariantCulture, $"""<text x="{x + Sample + 8:0.#}" y="{y + 4.5:0.#}">{Escape.Text(name)}</text>""");
            x += width;
        }

        return (svg.ToString(), svg.Length == 0 ? 8 : y + Row);
    }

    private static IEnumerable<(string Name, Func<double, double, string> Sample)> Entries(Plot plot)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var line in plot.Panels.SelectMany(p => p.Lines).Where(l => seen.Add(l.Name)))
        {
            yield return (line.Name, (x, y) => FormattableString.Invariant($"<path d=\"M{x:0.#} {y:0.#}H{x + Sample:0.#}\" fill=\"none\" {Strokes.Of(line.Look)}/>"));
        }

        foreach (var mark in plot.Panels.SelectMany(p => p.Marks).Where(m => seen.Add(m.Name)))
        {
            yield return (mark.Name, (x, y) => Strokes.Shape(mark.Shape, x + (Sample / 2), y));
        }
    }
}
