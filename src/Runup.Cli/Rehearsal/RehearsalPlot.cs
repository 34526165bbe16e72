using Runup.Cli.Survey;
using Runup.Dynamics;
using Runup.Engineering.Motors.Ensemble;
using Runup.Reports.Plots;

namespace Runup.Cli.Rehearsal;

/// <summary>The trends of a rehearsal on one time axis.</summary>
internal static class RehearsalPlot
{
    internal static string Svg(RehearsalResult result, EnsembleResult? ensemble, LoadedJob job)
    {
        var trace = result.Trace;
        PlotPanel Panel(string label, IReadOnlyList<double> values, Func<BandTrace, IReadOnlyList<Band<double>>> bands, bool fromZero, params PlotLevel[] levels) => new()
        {
            Up = fromZero ? PlotAxis.FromZero(label, [.. values, .. Edges(ensemble, bands)]) : PlotAxis.Around(label, [.. values, .. Edges(ensemble, bands)]),
            Height = 130,
            Lines = [.. Band(ensemble, bands), new("rehearsed", LineLook.Predicted, [.. trace.TimeS.Zip(values)])],
            Levels = levels,
        };
        return SvgPlot.Write(new Plot
        {
            Title = $"{job.Job.Tag}: start and stop, rehearsed. An estimate, never a permission.",
            Across = new("time, s", 0, Math.Max(trace.TimeS[^1], ensemble?.Trace.TimeS[^1] ?? 0)),
            Panels =
            [
                Panel("frequency, Hz", trace.FrequencyHz, b => b.FrequencyHz, fromZero: true),
                Panel("current, A", trace.CurrentA, b => b.CurrentA, fromZero: true, new PlotLevel("rated current", job.Context.Printed.RatedCurrent.Amperes)),
                Panel("DC bus, V", trace.DcBusV, b => b.DcBusV, fromZero: false),
                Panel("torque, N·m", trace.TorqueNm, b => b.TorqueNm, fromZero: false),
            ],
        });
    }

    private static IEnumerable<double> Edges(EnsembleResult? ensemble, Func<BandTrace, IReadOnlyList<Band<double>>> bands) =>
        ensemble is null ? [] : bands(ensemble.Trace).SelectMany(b => new[] { b.P05, b.P95 });

    private static IEnumerable<PlotLine> Band(EnsembleResult? ensemble, Func<BandTrace, IReadOnlyList<Band<double>>> bands) => ensemble is null
        ? []
        :
        [
            new("95 of 100 motors lie below", LineLook.Limit, [.. ensemble.Trace.TimeS.Zip(bands(ensemble.Trace).Select(b => b.P95))]),
            new("5 of 100 motors lie below", LineLook.Reference, [.. ensemble.Trace.TimeS.Zip(bands(ensemble.Trace).Select(b => b.P05))]),
        ];
}
