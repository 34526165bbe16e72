using Runup.Cli.Survey;
using Runup.Dynamics;
using Runup.Reports.Plots;

namespace Runup.Cli.Rehearsal;

/// <summary>The trends of a rehearsal on one time axis.</summary>
internal static class RehearsalPlot
{
    internal static string Svg(RehearsalResult result, LoadedJob job)
    {
        var trace = result.Trace;
        PlotPanel Panel(string label, IReadOnlyList<double> values, bool fromZero, params PlotLevel[] levels) => new()
        {
            Up = fromZero ? PlotAxis.FromZero(label, values) : PlotAxis.Around(label, values),
            Height = 130,
            Lines = [new("rehearsed", LineLook.Predicted, [.. trace.TimeS.Zip(values)])],
            Levels = levels,
        };
        return SvgPlot.Write(new Plot
        {
            Title = $"{job.Job.Tag}: start and stop, rehearsed. An estimate, never a permission.",
            Across = new("time, s", 0, trace.TimeS[^1]),
            Panels =
            [
                Panel("frequency, Hz", trace.FrequencyHz, fromZero: true),
                Panel("current, A", trace.CurrentA, fromZero: true, new PlotLevel("rated current", job.Context.Printed.RatedCurrent.Amperes)),
                Panel("DC bus, V", trace.DcBusV, fromZero: false),
                Panel("torque, N·m", trace.TorqueNm, fromZero: false),
            ],
        });
    }
}
