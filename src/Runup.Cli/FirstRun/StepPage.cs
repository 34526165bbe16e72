using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Records;
using Runup.Settings;

namespace Runup.Cli.FirstRun;

/// <summary>A step of the first run and how all ended, for people.</summary>
internal static class StepPage
{
    internal static void Step(Page page, StepReport step)
    {
        page.Line($"{step.Outcome.ToUpperInvariant(),-8}{step.Title}{(step.Remark is null ? "" : $" {step.Remark}")}");
        if (step.Readings.Count > 0)
        {
            Readings(page, step.Readings);
        }
    }

    internal static void Readings(Page page, IReadOnlyList<RecordBody.ReadingTaken> readings) => page.Table(
        [new("  reading"), new("expected", Digits: true), new("accepted", Digits: true), new("measured", Digits: true), new("unit"), new("")],
        readings.Select(r => (IReadOnlyList<string>)
        [
            $"  {r.Quantity}",
            Text(r.Expected),
            Band(r.Low, r.High),
            Text(r.Measured),
            r.Unit,
            r.Within switch { true => "within", false => "OUTSIDE", null => "" },
        ]));

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
    internal static string Band(double? low, double? high) => (low, high) switch
    {
        ({ } from, { } until) => $"{Text(from)} to {Text(until)}",
        ({ } from, null) => $"at least {Text(from)}",
        (null, { } until) => $"at most {Text(until)}",
        _ => "",
    };

    internal static string Text(double? value) => value is { } number
        ? number.ToString(Math.Abs(number) switch { >= 100 => "0", >= 10 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture)
        : "";
}
