namespace Runup.Reports.Plots;

/// <summary>What the looks mean in SVG. One accent colour; black and white tell all the same.</summary>
internal static class Strokes
{
    /// <summary>The house's accent.</summary>
    public const string Accent = "#6a1b5d";

    public static string Of(LineLook look) => look switch
    {
        LineLook.Measured => $"stroke=\"{Accent}\" stroke-width=\"2.4\"",
        LineLook.Predicted => "stroke=\"#111\" stroke-width=\"1.6\" stroke-dasharray=\"7 4\"",
        LineLook.Limit => "stroke=\"#111\" stroke-width=\"1.4\"",
        LineLook.Reference => "stroke=\"#111\" stroke-width=\"1.6\" stroke-dasharray=\"1.5 3.5\" stroke-linecap=\"round\"",
        _ => throw new ArgumentOutOfRangeException(nameof(look), look, null),
    };

    public static string Shape(MarkShape shape, double x, double y) => shape switch
    {
        MarkShape.Ring => Text($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"5\" fill=\"none\" stroke=\"{Accent}\" stroke-width=\"2\"/>"),
        MarkShape.Square => Text($"<rect x=\"{x - 4.5:0.#}\" y=\"{y - 4.5:0.#}\" width=\"9\" height=\"9\"/>"),
        MarkShape.Triangle => Text($"<path d=\"M{x:0.#} {y - 5.5:0.#}L{x + 5.5:0.#} {y + 4.5:0.#}H{x - 5.5:0.#}Z\"/>"),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, null),
    };

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
