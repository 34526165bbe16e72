using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Settings;

namespace Runup.Cli.Rehearsal;

/// <summary>What a rehearsal says to people.</summary>
internal static class RehearsalPage
{
    internal static void Write(LoadedJob job, RehearsalResult result, RehearsedEnsemble? ensemble, string? plot)
    {
        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}: start to the highest frequency and stop{(JobRehearsal.GoesBothWays(job.Context) ? ", lifting and then lowering" : "")}, rehearsed");
        page.Table(
            [new(""), new("", Digits: true), new("")],
            [
                ["from 0 to highest frequency", Text(result.TimeToSpeedS), "s"],
                ["from there to standstill", Text(result.TimeToStopS), $"s  (with the {Dynamics.Rehearsal.HeldAtZero.Seconds:0.0} s at 0 Hz before the output goes off)"],
                ["highest current", Text(result.PeakCurrentA), $"A  (motor {Text(job.Context.Printed.RatedCurrent.Amperes)} A)"],
                ["highest over 0.2 s", Text(result.LargestMeanCurrentA), $"A  (the highest was of a moment at {result.PeakCurrentAtS.ToString("0.00", CultureInfo.InvariantCulture)} s)"],
                ["highest DC bus", Text(result.PeakDcBusV), $"V  (trip {Text(job.Context.Rating.OvervoltageTrip.Volts)} V)"],
                ["trip", result.Tripped?.Name() ?? "none", ""],
            ]);
        page.Heading("Events");
        page.Table(
            [new("t s", Digits: true), new("what")],
            result.Events.Select(e => (IReadOnlyList<string>)[e.TimeS.ToString("0.000", CultureInfo.InvariantCulture), e.What.Name()]));
        if (result.Breakdown is { } breakdown)
        {
            page.Line($"The simulation broke down: {breakdown}");
        }

        if (ensemble is not null)
        {
            EnsemblePage.Write(page, ensemble);
        }

        page.Line($"An estimate, never a permission.{(plot is null ? "" : $" The trends are in {plot}.")}");
    }

    private static string Text(double? value) => value?.ToString("G4", CultureInfo.InvariantCulture) ?? "not reached";
}
