using Runup.Commissioning.Checks;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>What a start to the highest frequency and a stop come to with some settings, as the time-domain engine has it.</summary>
/// <param name="Result">What was seen.</param>
internal sealed record RunLook(RehearsalResult Result)
{
    // Less than these a person would not call another run. Common practice, no source.
    private const double WorthSaying = 0.1;
    private const double WorthSayingS = 0.5;

    /// <summary>Whether it came to speed and to a stop without a trip.</summary>
    internal bool IsFine => Result is { Tripped: null, Breakdown: null, TimeToSpeedS: not null };

    /// <summary>What all of it comes to, in a sentence's rest.</summary>
    internal string Words => Gone ?? $"comes to speed in {Said.Number(Result.TimeToSpeedS!.Value)} s, {(Result.TimeToStopS is { } stop ? $"stops in {Said.Number(stop)} s" : "and does not come to rest in the time looked at")}, highest current {Said.Number(Result.PeakCurrentA)} A";

    private string? Gone => Result switch
    {
        { Tripped: { } cause } => $"trips on {cause.Name()} at {Said.Number(Math.Abs(FrequencyAtTrip))} Hz, {(Stopping ? "stopping" : "starting")}",
        { Breakdown: { } } => "is nothing that the rehearsal can follow",
        { TimeToSpeedS: null } => $"does not come to speed: it gets to {Said.Number(Result.Trace.FrequencyHz.Max(Math.Abs))} Hz{(Limited ? " and the current limit holds it there" : "")}",
        _ => null,
    };

    private bool Limited => Result.Events.Any(e => e.What == TraceEventKind.CurrentLimit);

    private bool Stretched => Result.Events.Any(e => e.What == TraceEventKind.OvervoltageControl);

    private bool Stopping => Result.Events.Any(e => e.What == TraceEventKind.Stop);

    private double FrequencyAtTrip
    {
        get
        {
            // A trip takes the output off: what matters is the frequency just before.
            var trip = Result.Events.First(e => e.What == TraceEventKind.Trip).TimeS;
            var before = Result.Trace.TimeS.TakeWhile(t => t < trip).Count() - 1;
            return Result.Trace.FrequencyHz[Math.Max(0, before)];
        }
    }

    /// <summary>The look; null where motor or load are not known well enough, or the settings cannot be run at all.</summary>
    internal static RunLook? At(JobContext context, SettingSet held, CancellationToken cancellation) =>
        JobRehearsal.With(context, held, cancellation: cancellation) is RehearsalOutcome.Ran ran ? new(ran.Result) : null;

    /// <summary>What is otherwise than in a run that went well; null where nothing is worth saying.</summary>
    internal string? Against(RunLook fine)
    {
        if (Gone is { } gone)
        {
            return gone;
        }

        var stop = Other("stops in", Result.TimeToStopS, fine.Result.TimeToStopS) + (Stretched && !fine.Stretched ? ", stretched by the overvoltage control" : "");
        var times = new[] { Other("comes to speed in", Result.TimeToSpeedS, fine.Result.TimeToSpeedS), stop.Length == 0 ? null : stop.TrimStart(',', ' ') };
        var current = Math.Abs(Result.PeakCurrentA - fine.Result.PeakCurrentA) > WorthSaying * fine.Result.PeakCurrentA
            ? $"highest current {Said.Number(Result.PeakCurrentA)} A instead of {Said.Number(fine.Result.PeakCurrentA)} A"
            : null;
        var words = times.Append(current).OfType<string>().ToList();
        return words.Count == 0 ? null : string.Join(", ", words);
    }

    private static string? Other(string what, double? here, double? there) =>
        here is { } a && there is { } b && Math.Abs(a - b) > Math.Max(WorthSayingS, WorthSaying * b) ? $"{what} {Said.Number(a)} s instead of {Said.Number(b)} s" : null;
}
