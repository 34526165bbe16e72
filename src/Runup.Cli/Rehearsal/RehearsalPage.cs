using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Cli.Rehearsal;

/// <summary>What a rehearsal says to people.</summary>
internal static class RehearsalPage
{
    // A ramp or a frequency that differs by less is the same to a person.
    private const double Same = 0.02;

    // In per cent of rated voltage.
    private const double MuchBoost = 3;

    // The motor has hardly begun to turn.
    private const double StillRpm = 60;

    internal static void Write(LoadedJob job, ControlSettings held, RehearsalResult result, RehearsedEnsemble? ensemble, DetailWords? detail, string? plot)
    {
        var page = new Page(Console.Out);
        var reached = Reached(job, result);
        page.Heading($"{job.Job.Tag}: start to {Hertz(job)} and stop{(JobRehearsal.GoesBothWays(job.Context) ? ", lifting and then lowering" : "")}, rehearsed");
        page.Table(
            [new(""), new("", Digits: true), new("", Whole: false)],
            [
                [$"from 0 to {reached}", Text(result.TimeToSpeedS), Unit(result.TimeToSpeedS, "s")],
                ["from there to standstill", StopTime(result), Unit(result.TimeToStopS, $"s  (with the {Dynamics.Rehearsal.HeldAtZero.Seconds:0.0} s at 0 Hz before the output goes off)")],
                ["highest current", Text(result.PeakCurrentA), $"A  ({Moment(result)}, at {Text(result.PeakCurrentAtS)} s; motor {Text(job.Context.Printed.RatedCurrent.Amperes)} A, current limit {Text(held.CurrentLimit.Amperes)} A)"],
                ["highest over 0.2 s", Text(result.LargestMeanCurrentA), "A  (as a display shows it)"],
                .. result.CurrentAtSpeedA is { } steady ? [[$"current at {reached}{(JobRehearsal.GoesBothWays(job.Context) ? ", lifting" : "")}", Text(steady), "A  (what it settles at; compare it on the first run)"]] : Array.Empty<IReadOnlyList<string>>(),
                ["highest DC bus", Text(result.PeakDcBusV), $"V  (trip {Text(job.Context.Rating.OvervoltageTrip.Volts)} V)"],
                .. ShowsLowestBus(result) ? [["lowest DC bus", Text(result.LowestDcBusV), $"V  (trip below {Text(job.Context.Rating.UndervoltageTrip.Volts)} V)"]] : Array.Empty<IReadOnlyList<string>>(),
                ["trip", result.Tripped?.Name() ?? "none", TripTime(result)],
            ]);
        page.Heading("Events");
        page.Table(
            [new("t s", Digits: true), new("what")],
            result.Events.Select(e => (IReadOnlyList<string>)[e.TimeS.ToString("0.000", CultureInfo.InvariantCulture), e.What.Name()]));
        foreach (var remark in Remarks(job, held, result, reached).Append(detail?.ToString() ?? AboutIron(held)).OfType<string>())
        {
            page.Line(remark);
        }

        if (ensemble is not null)
        {
            EnsemblePage.Write(page, ensemble, reached);
        }

        page.Line($"An estimate, never a permission.{(plot is null ? "" : $" The trends are in {plot}.")}");
    }

    /// <summary>As many digits as a person compares: 8.00, 12.5, 566.</summary>
    internal static string Text(double? value) => value is not { } number ? "not reached" : number.ToString(Math.Abs(number) switch { >= 99.95 => "0", >= 9.995 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture);

    internal static string Unit(double? value, string unit) => value is null ? "" : unit;

    private static IEnumerable<string> Remarks(LoadedJob job, ControlSettings held, RehearsalResult result, string reached)
    {
        if (result.Breakdown is { } breakdown)
        {
            yield return $"The simulation broke down {breakdown} The figures above and the trace go so far.";
        }

        if (result is { TimeToSpeedS: null, Tripped: null, Breakdown: null })
        {
            var trace = result.Trace;
            yield return $"It never came to speed and nothing tripped: in {Text(trace.TimeS[^1])} s it got to {Hertz(Math.Round(trace.FrequencyHz.Max(), 1))} and {Text(trace.SpeedRpm.Max())} rpm.";
        }

        if (result is { TimeToSpeedS: not null, TimeToStopS: null, Tripped: null, Breakdown: null } && result.Orders.LastOrDefault(o => !o.Order.Run) is { AtS: > 0 } stop)
        {
            yield return $"It had not come to rest {Text(result.Trace.TimeS[^1] - stop.AtS)} s after the stop was ordered: {Text(Math.Abs(result.Trace.SpeedRpm[^1]))} rpm were left.";
        }

        if (result.Events.SkipWhile(e => e.What != TraceEventKind.SupplyBack).Any(e => e.What == TraceEventKind.Start))
        {
            yield return "When the supply came back the machine started by itself, as the settings say (restart-after-power-loss): nobody may be near it then who does not know that.";
        }

        if (!string.Equals(reached, Hertz(job), StringComparison.Ordinal))
        {
            yield return $"The drive stays at {reached}, not at the {Hertz(job)} asked for: a skipped band or the maximum frequency of the settings keeps it there.";
        }

        foreach (var (what, asked, has) in ((string, Duration?, Duration)[])[("up", job.Job.Operation.Acceleration?.Value, held.Acceleration), ("down", job.Job.Operation.Deceleration?.Value, held.Deceleration)])
        {
            if (asked is { Seconds: var seconds } && Math.Abs(seconds - has.Seconds) > Same * has.Seconds)
            {
                yield return $"The ramp {what} is rehearsed with the {Text(has.Seconds)} s that the settings have; the job asks for {Text(seconds)} s.";
            }
        }
    }

    // With straight iron a boost beyond the usual looks better than it is: the start is then held by the current limit, or not made at all.
    private static string? AboutIron(ControlSettings held) => held is { Vector: false, TorqueBoost.Percent: > MuchBoost and var boost }
        ? $"The boost of {boost.ToString("0.#", CultureInfo.InvariantCulture)} % may take the iron beyond its rated flux, where it draws more than here: `--detail` rehearses that."
        : null;

    private static string Moment(RehearsalResult result) =>
        result.Trace.TimeS.TakeWhile(t => t < result.PeakCurrentAtS).Count() is var place && place < result.Trace.Count && Math.Abs(result.Trace.SpeedRpm[place]) < StillRpm && result.PeakCurrentAtS > 0
            ? "as it breaks away"
            : "of a moment";

    private static string StopTime(RehearsalResult result) =>
        result.TimeToStopS is null && result.Events.All(e => e.What != TraceEventKind.Stop) ? "no stop" : Text(result.TimeToStopS);

    private static bool ShowsLowestBus(RehearsalResult result) => result.Tripped == TripCause.Undervoltage || result.Events.Any(e => e.What == TraceEventKind.SupplyLost);

    private static string TripTime(RehearsalResult result) =>
        result.Tripped is not null && result.Events.LastOrDefault(e => e.What == TraceEventKind.Trip) is { What: TraceEventKind.Trip } trip ? $"at {Text(trip.TimeS)} s" : "";

    private static string Hertz(LoadedJob job) => Hertz(job.Job.Operation.MaximumFrequency.Value.Hertz);

    private static string Hertz(double hertz) => $"{hertz.ToString("0.##", CultureInfo.InvariantCulture)} Hz";

    /// <summary>The frequency at which it came to speed: the one asked for, unless the drive stays below.</summary>
    private static string Reached(LoadedJob job, RehearsalResult result)
    {
        var atSpeed = result.Events.FirstOrDefault(e => e.What == TraceEventKind.AtSpeed);
        var place = atSpeed.What == TraceEventKind.AtSpeed ? result.Trace.TimeS.TakeWhile(t => t < atSpeed.TimeS).Count() : result.Trace.Count;
        return place < result.Trace.Count && result.Trace.FrequencyHz[place] is var hertz && hertz < (1 - Same) * job.Job.Operation.MaximumFrequency.Value.Hertz
            ? Hertz(Math.Round(hertz, 1))
            : Hertz(job);
    }
}
