using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;

namespace Runup.Cli.Demo;

/// <summary>How far a set of the demo is, in the drive's own seconds: what each part will take is known beforehand.</summary>
/// <param name="time">The drive's clock.</param>
/// <param name="real">The clock of whoever waits.</param>
internal sealed class DemoPace(TimeProvider time, TimeProvider real) : IProgress<EntryEvent>
{
    private const double Before = 10;
    private const double Entry = 40;
    private const double Handover = 15;
    private const double Exchanging = 3;

    private readonly Lock gate = new();
    private readonly long begun = real.GetTimestamp();
    private readonly Queue<(FirstRunStep Step, double Seconds)> steps = new();
    private double whole = Before + Entry + Handover;
    private double behind;
    private double ahead = Before;
    private long since = time.GetTimestamp();
    private string words = "survey, checks, settings, rehearsal";
    private bool ended;

    /// <summary>The steps of the first run are known.</summary>
    internal void Knows(FirstRunPlan plan, double acceleration, double deceleration)
    {
        lock (gate)
        {
            foreach (var step in plan.Steps)
            {
                var seconds = SecondsOf(step, acceleration / plan.Limits.MaximumHz, deceleration / plan.Limits.MaximumHz);
                steps.Enqueue((step, seconds));
                whole += seconds;
            }
        }
    }

    internal void Enters() => Next("entry over Modbus TCP", Entry);

    /// <inheritdoc/>
    public void Report(EntryEvent value)
    {
        lock (gate)
        {
            words = value.Of > 0 ? string.Create(CultureInfo.InvariantCulture, $"entry, {value.Done} of {value.Of}") : words;
        }
    }

    internal void Steps()
    {
        lock (gate)
        {
            var (step, seconds) = steps.Count > 0 ? steps.Dequeue() : (null, Exchanging);
            Next(step?.Title ?? "the job's own settings are put back", seconds);
        }
    }

    internal void HandsOver() => Next("handover", Handover);

    internal void Ends()
    {
        lock (gate)
        {
            ended = true;
        }
    }

    /// <summary>The part that is done, the real time left where it can be told, and what is being done.</summary>
    internal (double Part, TimeSpan? Left, string Words) Now()
    {
        lock (gate)
        {
            if (ended)
            {
                return (1, TimeSpan.Zero, "done");
            }

            var part = (behind + Math.Min(time.GetElapsedTime(since).TotalSeconds, 0.97 * ahead)) / whole;
            return (part, part > 0.04 ? real.GetElapsedTime(begun) * ((1 - part) / part) : null, words);
        }
    }

    private void Next(string what, double seconds)
    {
        lock (gate)
        {
            behind += ahead;
            (words, ahead, since) = (what, seconds, time.GetTimestamp());
        }
    }

    private static double SecondsOf(FirstRunStep step, double upPerHertz, double downPerHertz) => step switch
    {
        FirstRunStep.Ramps ramps => Exchanging + (ramps.FrequencyHz * (upPerHertz + downPerHertz)),
        FirstRunStep.Steady steady => (Exchanging * steady.FrequenciesHz.Count) + (steady.FrequenciesHz.Max() * (upPerHertz + downPerHertz)),
        FirstRunStep.Watched watched => Exchanging + (watched.FrequencyHz * upPerHertz / 2),
        _ => Exchanging,
    };
}
