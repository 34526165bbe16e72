using System.Globalization;
using System.Xml.Linq;
using FsCheck.Xunit;
using Runup.Reports.Plots;

namespace Runup.Reports.Tests;

public sealed class PlotTests
{
    [Fact]
    public void A_small_plot_is_drawn_as_approved() => SvgPlot.Write(Small()).Replace("><", ">\n<", StringComparison.Ordinal).ShouldBeApproved("small-plot.svg");

    [Fact]
    public void A_plot_without_any_value_is_still_a_picture() =>
        XElement.Parse(SvgPlot.Write(new() { Title = "none", Across = new("t, s", 0, 0), Panels = [new() { Up = PlotAxis.FromZero("x", []), Lines = [new("a", LineLook.Measured, [])] }] })).Name.LocalName.ShouldBe("svg");

    [Fact]
    public void Values_that_are_no_numbers_leave_a_gap()
    {
        var svg = SvgPlot.Write(new()
        {
            Title = "gap",
            Across = new("t, s", 0, 4),
            Panels = [new() { Up = new("x", 0, 1), Lines = [new("a", LineLook.Measured, [(0, 0), (1, 1), (2, double.NaN), (3, 1), (4, double.PositiveInfinity)])] }],
        });

        svg.ShouldNotContain("NaN");
        svg.ShouldNotContain("Infinity");
        Strokes(svg).ShouldContain(d => d.Count(c => c == 'M') == 2 && d.Count(c => c == 'L') == 1);
    }

    [Theory]
    [InlineData(0, 50, 6, "0 10 20 30 40 50")]
    [InlineData(0, 62.9, 6, "0 20 40 60 80")]
    [InlineData(538, 589, 4, "520 540 560 580 600")]
    [InlineData(0, 0.83, 6, "0.0 0.2 0.4 0.6 0.8 1.0")]
    [InlineData(-3, 3, 6, "-3 -2 -1 0 1 2 3")]
    [InlineData(7, 7, 4, "6.5 7.0 7.5")]
    public void Ticks_are_round_and_hold_the_range(double low, double high, int about, string expected)
    {
        var ticks = Ticks.Widened(low, high, about);

        string.Join(' ', ticks.Values.Select(ticks.Text)).ShouldBe(expected);
    }

    [Property]
    public void Ticks_hold_any_range_with_a_bearable_number(double a, double b)
    {
        var (low, high) = (Sound(a), Sound(b));
        var ticks = Ticks.Widened(Math.Min(low, high), Math.Max(low, high), 6);
        var values = ticks.Values.ToList();

        values.Count.ShouldBeInRange(2, 10);
        values.ShouldBeInOrder();
        (ticks.Low <= Math.Min(low, high) + 1e-6 && ticks.High >= Math.Max(low, high) - 1e-6).ShouldBeTrue();
    }

    private static double Sound(double value) => double.IsFinite(value) ? Math.Clamp(value, -1e6, 1e6) : 3;

    [Property]
    public void Thinning_keeps_ends_and_extremes_in_order(double[] values)
    {
        var points = values.Where(double.IsFinite).Select((v, i) => ((double)i, v)).ToList();
        var thin = Thinning.To(5, points);

        thin.Select(p => p.X).ShouldBeInOrder();
        thin.ShouldBeSubsetOf(points);
        thin.Count.ShouldBeLessThanOrEqualTo(12);
        if (points.Count > 0)
        {
            thin[0].ShouldBe(points[0]);
            thin[^1].ShouldBe(points[^1]);
            thin.Max(p => p.Y).ShouldBe(points.Max(p => p.Item2));
            thin.Min(p => p.Y).ShouldBe(points.Min(p => p.Item2));
        }
    }

    [Fact]
    public void A_second_scale_is_the_first_in_another_unit()
    {
        var svg = SvgPlot.Write(new() { Title = "two", Across = new("n", 0, 1), Panels = [new() { Up = new("torque, N·m", 0, 100), Second = new("torque, lb·ft", 0.737562149), Height = 280 }] });
        var texts = XElement.Parse(svg).Elements().Where(e => e.Name.LocalName == "text").ToList();

        // 20 lb·ft = 27.116 N·m (NIST SP 811, appendix B: 1 lbf·ft = 1.355 818 N·m): at 27.1 % of the height.
        Place(texts, "20", "start").ShouldBe(Place(texts, "0", "end") - (0.27116 * 280), 0.1);
    }

    [Fact]
    public void Names_of_levels_that_lie_close_do_not_stand_on_one_another()
    {
        var close = Small() with { Panels = [Small().Panels[1] with { Levels = [new("rated current", 7.2), new("current limit", 8.6), new("least", 1)] }] };

        var texts = XElement.Parse(SvgPlot.Write(close)).Descendants().Where(e => e.Name.LocalName == "text").ToList();
        string? Anchor(string name) => (string?)texts.Single(t => t.Value == name).Attribute("text-anchor");
        (Anchor("rated current"), Anchor("current limit"), Anchor("least")).ShouldBe(("end", "start", "end"));
    }

    private static double Place(IEnumerable<XElement> texts, string text, string anchor) =>
        double.Parse(texts.First(t => t.Value == text && (string?)t.Attribute("text-anchor") == anchor).Attribute("y")!.Value, CultureInfo.InvariantCulture);

    private static List<string> Strokes(string svg) => [.. XElement.Parse(svg).Elements().Where(e => e.Name.LocalName == "path").Select(e => e.Attribute("d")!.Value)];

    private static Plot Small() => new()
    {
        Title = "Start <1>",
        Across = new("time, s", 0, 2),
        Panels =
        [
            new() { Up = new("frequency, Hz", 0, 50), Height = 100, Lines = [new("predicted", LineLook.Predicted, [(0, 0), (1, 50), (2, 50)]), new("measured", LineLook.Measured, [(0, 0), (1.1, 50), (2, 50)])] },
            new() { Up = new("current, A", 0, 9), Height = 100, Marks = [new("peak", MarkShape.Triangle, 1, 8)], Levels = [new("rated current", 5)] },
        ],
    };
}
