namespace Runup.Reports.Plots;

/// <summary>A plot: one horizontal axis, and panels above one another that share it.</summary>
public sealed record Plot
{
    /// <summary>What is shown, in a few words; read out where the picture can't be seen.</summary>
    public required string Title { get; init; }

    /// <summary>The same above the picture, for one that goes about by itself; null where a page says it.</summary>
    public string? Heading { get; init; }

    /// <summary>The horizontal axis.</summary>
    public required PlotAxis Across { get; init; }

    /// <summary>The panels, from the top.</summary>
    public required IReadOnlyList<PlotPanel> Panels { get; init; }
}

/// <summary>One panel of a plot.</summary>
public sealed record PlotPanel
{
    /// <summary>The vertical axis.</summary>
    public required PlotAxis Up { get; init; }

    /// <summary>The same axis in another unit, at the right edge; null for none.</summary>
    public SecondScale? Second { get; init; }

    /// <summary>Height of the drawing area, of a width of 720.</summary>
    public double Height { get; init; } = 280;

    /// <summary>The lines, the first at the back.</summary>
    public IReadOnlyList<PlotLine> Lines { get; init; } = [];

    /// <summary>Single points.</summary>
    public IReadOnlyList<PlotMark> Marks { get; init; } = [];

    /// <summary>Values to look across for, each with its name.</summary>
    public IReadOnlyList<PlotLevel> Levels { get; init; } = [];
}

/// <summary>An axis: its label with unit, and from where to where; the ends are widened to round values.</summary>
/// <param name="Label">Quantity and unit, such as <c>torque, N·m</c>.</param>
/// <param name="Low">Lowest value.</param>
/// <param name="High">Highest value.</param>
public sealed record PlotAxis(string Label, double Low, double High)
{
    /// <summary>An axis from zero that holds all values and leaves a little room.</summary>
    /// <remarks>Down to the lowest where some lie below zero: a load that is lowered runs at a frequency below it.</remarks>
    public static PlotAxis FromZero(string label, IEnumerable<double> values)
    {
        var finite = values.Where(double.IsFinite).DefaultIfEmpty(1).ToList();
        return new(label, 1.05 * Math.Min(0, finite.Min()), 1.05 * Math.Max(0, finite.Max()));
    }

    /// <summary>An axis that holds all values and leaves a little room at both ends.</summary>
    public static PlotAxis Around(string label, IEnumerable<double> values)
    {
        var finite = values.Where(double.IsFinite).DefaultIfEmpty(0).ToList();
        var room = Math.Max(0.08 * (finite.Max() - finite.Min()), 0.01 * Math.Abs(finite.Max()));
        return new(label, finite.Min() - room, finite.Max() + room);
    }
}

/// <summary>An axis again in another unit: value = first × factor.</summary>
/// <param name="Label">Quantity and unit.</param>
/// <param name="Factor">Units of this scale in one of the first.</param>
public sealed record SecondScale(string Label, double Factor);

/// <summary>How a line is drawn, so that it is told apart without colour.</summary>
public enum LineLook
{
    /// <summary>Through, thick: what was measured or matters most.</summary>
    Measured,

    /// <summary>Dashed: what was predicted.</summary>
    Predicted,

    /// <summary>Through, thin.</summary>
    Limit,

    /// <summary>Dotted.</summary>
    Reference,
}

/// <summary>A line through points.</summary>
/// <param name="Name">What it is, for the legend.</param>
/// <param name="Look">How it is drawn.</param>
/// <param name="Points">The points, ascending across; a gap where a value is not a number.</param>
public sealed record PlotLine(string Name, LineLook Look, IReadOnlyList<(double X, double Y)> Points);

/// <summary>Shapes of points.</summary>
public enum MarkShape
{
    /// <summary>A ring.</summary>
    Ring,

    /// <summary>A filled square.</summary>
    Square,

    /// <summary>A filled triangle.</summary>
    Triangle,
}

/// <summary>A point with its name.</summary>
/// <param name="Name">What it is, for the legend.</param>
/// <param name="Shape">How it is drawn.</param>
/// <param name="X">Across.</param>
/// <param name="Y">Up.</param>
public sealed record PlotMark(string Name, MarkShape Shape, double X, double Y);

/// <summary>A value to look across for.</summary>
/// <param name="Name">What it is; written on the line.</param>
/// <param name="Value">The value.</param>
public sealed record PlotLevel(string Name, double Value);
