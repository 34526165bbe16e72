using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Html;
using Runup.Reports.Plots;

namespace Runup.Reports.Handover;

/// <summary>What motor and drive can give against what the machine asks for, and the voltage against frequency.</summary>
internal static class CurvesSection
{
    private const double PoundFeetPerNewtonMetre = 0.737562149;

    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "6 Motor, load and voltage");
        if (model.Curves is not { } curves)
        {
            html.Element("p", "Nothing is drawn: no circuit was worked out from the plate.");
            return;
        }

        Figure(html, TorqueSpeedPlot(curves), "Torque and speed at the motor's shaft, worked out from the circuit that fits the plate. What the motor may give continuously is another, lower limit where its own fan turns slowly.");
        Figure(html, VoltagePlot(curves, model), "Output voltage against frequency, with the plate's point and the readings of the first run.");
    }

    /// <summary>Torque over speed: motor, current limit, load.</summary>
    public static Plot TorqueSpeedPlot(HandoverCurves curves)
    {
        var load = Points(curves.Load);
        var limit = Points(curves.AtCurrentLimit);
        var line = Points(curves.OnTheLine);
        return new()
        {
            Title = "Torque and speed",
            Across = new("speed, rpm", 0, limit.Concat(line).Concat(load).Select(p => p.X).DefaultIfEmpty(1).Max()),
            Panels =
            [
                new PlotPanel
                {
                    Up = PlotAxis.FromZero("torque, N·m", limit.Concat(line).Concat(load).Select(p => p.Y)),
                    Second = new("torque, lb·ft", PoundFeetPerNewtonMetre),
                    Height = 300,
                    Lines =
                    [
                        new("motor on the mains", LineLook.Reference, line),
                        new(FormattableString.Invariant($"at the current limit of {curves.CurrentLimit.Amperes:0.0} A"), LineLook.Predicted, limit),
                        .. load.Count > 0 ? [new PlotLine("load", LineLook.Measured, load)] : (PlotLine[])[],
                    ],
                    Marks =
                    [
                        new("plate", MarkShape.Square, curves.Plate.Speed.Rpm, curves.Plate.Torque.NewtonMetres),
                        .. curves.Breakaway is { } breakaway ? [new PlotMark("breakaway", MarkShape.Triangle, 0, breakaway.NewtonMetres)] : (PlotMark[])[],
                    ],
                },
            ],
        };
    }

    private static Plot VoltagePlot(HandoverCurves curves, HandoverModel model)
    {
        var voltage = curves.Voltage.Select(p => (p.Frequency.Hertz, p.Voltage.Volts)).ToList();
        var measured = Measured(model);
        return new()
        {
            Title = "Output voltage against frequency",
            Across = new("output frequency, Hz", 0, Math.Max(curves.Highest.Hertz, curves.PlateSupply.Frequency.Hertz)),
            Panels =
            [
                new PlotPanel
                {
                    Up = PlotAxis.FromZero("voltage, V", voltage.Select(p => p.Volts).Append(curves.PlateSupply.Voltage.Volts)),
                    Height = 240,
                    Lines = [new("as set", LineLook.Limit, voltage)],
                    Marks =
                    [
                        .. measured.Select(m => new PlotMark("measured in the first run", MarkShape.Ring, m.Hz, m.V)),
                        new("plate", MarkShape.Square, curves.PlateSupply.Frequency.Hertz, curves.PlateSupply.Voltage.Volts),
                    ],
                },
            ],
        };
    }

    private static List<(double Hz, double V)> Measured(HandoverModel model)
    {
        var points = new List<(double, double)>();
        foreach (var step in model.Steps)
        {
            foreach (var (frequency, voltage) in step.Readings.Where(r => r.Quantity.StartsWith("output voltage", StringComparison.Ordinal))
                .Select(v => (step.Readings.FirstOrDefault(f => f.Quantity.StartsWith("output frequency", StringComparison.Ordinal) && Same(f, v)), v)))
            {
                if (frequency?.Measured is { } hz && voltage.Measured is { } v)
                {
                    points.Add((hz, v));
                }
            }
        }

        return points;
    }

    private static bool Same(RecordBody.ReadingTaken a, RecordBody.ReadingTaken b) => string.Equals(At(a), At(b), StringComparison.Ordinal);

    private static string At(RecordBody.ReadingTaken r) => r.Quantity.Contains(" at ", StringComparison.Ordinal) ? r.Quantity[r.Quantity.IndexOf(" at ", StringComparison.Ordinal)..] : string.Empty;

    private static List<(double X, double Y)> Points(IReadOnlyList<(Quantities.ShaftSpeed Speed, Quantities.Torque Torque)> points) =>
        [.. points.Select(p => (p.Speed.Rpm, p.Torque.NewtonMetres))];

    private static void Figure(HtmlWriter html, Plot plot, string caption) =>
        html.In("figure", null, figure => figure.Own(SvgPlot.Write(plot)).Element("figcaption", caption));
}
