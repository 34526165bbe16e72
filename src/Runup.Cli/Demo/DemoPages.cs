using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Cli.Demo;

/// <summary>What the demo shows of plan, rehearsal, checks and steps: enough to see each once.</summary>
internal static class DemoPages
{
    internal static void Plan(Page page, SettingsPlan plan, IReadOnlyList<SheetLine> lines)
    {
        page.Table(
            [new("no."), new("name"), new("shows", Digits: true), new("unit"), new("says"), new("reason", Whole: false)],
            from line in lines
            where line.Parameter is not null && line.Changed
            let setting = plan[line.Settings[0]]
            select (IReadOnlyList<string>)
            [
                line.Parameter!.Number,
                line.Parameter.Name,
                line.Display ?? "",
                line.Unit ?? "",
                line.Settings[0].Name,
                setting?.Reason ?? "",
            ]);
        page.Line($"{plan.Lines.Count} settings are decided by the job; those that the drive holds from the factory are not shown.");
    }

    internal static string Rehearsal(LoadedJob job, RehearsalResult result) => string.Create(
        CultureInfo.InvariantCulture,
        $"0 to {job.Job.Operation.MaximumFrequency.Value.Hertz:0.#} Hz in {result.TimeToSpeedS:0.0} s, stop in {result.TimeToStopS:0.0} s; highest current {result.PeakCurrentA:0.0} A of the motor's {job.Job.Motor.Plate.Current.Value.Amperes:0.0} A, highest DC bus {result.PeakDcBusV:0} V; {(result.Tripped is { } cause ? $"TRIPS on {cause.Name()}" : "no trip")}");

    internal static string Counts(CheckReport report) => string.Create(
        CultureInfo.InvariantCulture, $"{report.SatisfiedCount} without objection, {report.Findings.Count} with a finding, {report.Undecided.Count} undecided");

    internal static void Step(Page page, StepReport step)
    {
        page.Line($"{step.Outcome.ToUpperInvariant(),-8}{step.Title}{(step.Remark is null ? "" : $" {step.Remark}")}");
        if (step.Readings.Count > 0)
        {
            page.Table(
                [new("  reading"), new("expected", Digits: true), new("accepted", Digits: true), new("measured", Digits: true), new("unit"), new("")],
                step.Readings.Select(r => (IReadOnlyList<string>)
                [
                    $"  {r.Quantity}",
                    Text(r.Expected),
                    Band(r.Low, r.High),
                    Text(r.Measured),
                    r.Unit,
                    r.Within switch { true => "within", false => "OUTSIDE", null => "" },
                ]));
        }
    }

    internal static string? WhyNotFinished(FirstRunReport report) => report.Ending switch
    {
        FirstRunEnding.Finished => null,
        FirstRunEnding.RefusedForSafety refused => $"refused: {refused.Why}",
        FirstRunEnding.LinkFailed failed => $"the link failed: {failed.Why}",
        FirstRunEnding.Stopped stopped => $"stopped in {stopped.Step}: {stopped.Why}{NotPutBack(report)}",
        FirstRunEnding.Tripped tripped => $"the drive tripped in {tripped.Step}: {tripped.Cause.Name()}",
        FirstRunEnding.FellSilent silent => $"in {silent.Step}: {silent.Why}",
        _ => throw new InvalidOperationException("The set of endings is closed."),
    };

    private static string NotPutBack(FirstRunReport report) =>
        report.NotPutBack.Count == 0 ? "" : $"; not put back: {string.Join(", ", report.NotPutBack.Select(n => $"{n.Key} ({n.Value})"))}";

    /// <summary>A band with one end says so in words: beside the figure expected, a lone "to" would make a band of both.</summary>
    private static string Band(double? low, double? high) => (low, high) switch
    {
        ({ } from, { } until) => $"{Text(from)} to {Text(until)}",
        ({ } from, null) => $"at least {Text(from)}",
        (null, { } until) => $"at most {Text(until)}",
        _ => "",
    };

    private static string Text(double? value) => value is { } number
        ? number.ToString(Math.Abs(number) switch { >= 100 => "0", >= 10 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture)
        : "";
}
