using Runup.Cli.Survey;
using Runup.Dynamics;
using Runup.Engineering.Motors.Ensemble;
using Runup.Reports.Plots;

namespace Runup.Cli.Rehearsal;

/// <summary>The trends of a rehearsal on one time axis.</summary>
internal static class RehearsalPlot
{
    // A limit that the trend comes near is drawn; one far off would only press the trend flat.
    private const double Near = 0.75;
    private const double NearBus = 0.9;

    internal static string Svg(RehearsalResult result, EnsembleResult? ensemble, LoadedJob job, ControlSettings held)
    {
        var trace = result.Trace;
        PlotPanel Panel(string label, IReadOnlyList<double> values, Func<BandTrace, IReadOnlyList<Band<double>>> bands, bool fromZero, params IEnumerable<PlotLevel> levels)
        {
            IReadOnlyList<double> all = [.. values, .. Edges(ensemble, bands), .. levels.Select(l => l.Value)];
            return new()
            {
                Up = fromZero ? PlotAxis.FromZero(label, all) : PlotAxis.Around(label, all),
                Height = 130,
                Lines = [.. Band(ensemble, bands), new(ensemble is null ? "rehearsed" : "rehearsed with the circuit that fits the plate best", LineLook.Measured, [.. trace.TimeS.Zip(values)])],
                Levels = [.. levels],
            };
        }

        var (rated, limit, trip) = (job.Context.Printed.RatedCurrent.Amperes, held.CurrentLimit.Amperes, job.Context.Rating.OvervoltageTrip.Volts);
        return SvgPlot.Write(new Plot
        {
            Title = $"{job.Job.Tag}: start and stop, rehearsed. An estimate, never a permission.",
            Heading = $"{job.Job.Tag}: start and stop, rehearsed. An estimate, never a permission.",
            Across = new("time, s", 0, Math.Max(trace.TimeS[^1], ensemble?.Trace.TimeS[^1] ?? 0)),
            Panels =
            [
                Panel("frequency, Hz", trace.FrequencyHz, b => b.FrequencyHz, fromZero: true),
                Panel("current, A", trace.CurrentA, b => b.CurrentA, fromZero: true,
                    [new PlotLevel("rated current", rated), .. Highest(trace.CurrentA, ensemble, b => b.CurrentA) > Near * limit ? [new PlotLevel("current limit", limit)] : Array.Empty<PlotLevel>()]),
                Panel("DC bus, V", trace.DcBusV, b => b.DcBusV, fromZero: false,
                    Highest(trace.DcBusV, ensemble, b => b.DcBusV) > NearBus * trip ? [new PlotLevel("overvoltage trip", trip)] : []),
                Panel("torque, N·m", trace.TorqueNm, b => b.TorqueNm, fromZero: false),
            ],
        });
    }

    private static double Highest(IReadOnlyList<double> values, EnsembleResult? ensemble, Func<BandTrace, IReadOnlyList<Band<double>>> bands) =>
        values.Concat(Edges(ensemble, bands)).Where(double.IsFinite).DefaultIfEmpty(0).Max();

    private static IEnumerable<double> Edges(EnsembleResult? ensemble, Func<BandTrace, IReadOnlyList<Band<double>>> bands) =>
        ensemble is null ? [] : bands(ensemble.Trace).SelectMany(b => new[] { b.P05, b.P95 });

    private static IEnumerable<PlotLine> Band(EnsembleResult? ensemble, Func<BandTrace, IReadOnlyList<Band<double>>> bands) => ensemble is null
        ? []
        :
        [
            new("9 of 10 motors lie between", LineLook.Reference, [.. ensemble.Trace.TimeS.Zip(bands(ensemble.Trace).Select(b => b.P95))]),
            new("9 of 10 motors lie between", LineLook.Reference, [.. ensemble.Trace.TimeS.Zip(bands(ensemble.Trace).Select(b => b.P05))]),
        ];
}
