using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>What was seen in a rehearsal.</summary>
public sealed record RehearsalResult
{
    /// <summary>Readings against time.</summary>
    public required Trace Trace { get; init; }

    /// <summary>What happened, in order of time.</summary>
    public required IReadOnlyList<TraceEvent> Events { get; init; }

    /// <summary>The orders as they were given, with their times.</summary>
    public required IReadOnlyList<TimedOrder> Orders { get; init; }

    /// <summary>Largest output current, rms of a sine of that amplitude, in A.</summary>
    public required double PeakCurrentA { get; init; }

    /// <summary>When that was, in s.</summary>
    public double PeakCurrentAtS { get; init; }

    /// <summary>Largest mean of the output current over a fifth of a second, in A: what is left of it beyond the swing of a moment.</summary>
    public double LargestMeanCurrentA { get; init; }

    /// <summary>Largest DC bus voltage, in V.</summary>
    public required double PeakDcBusV { get; init; }

    /// <summary>Lowest DC bus voltage, in V.</summary>
    public double LowestDcBusV { get; init; }

    /// <summary>Output current at speed, just before a stop was ordered, the first of several, in A; null if it was not at speed then.</summary>
    public double? CurrentAtSpeedA { get; init; }

    /// <summary>From the first start until the motor ran at the frequency asked for, in s; null if it never did.</summary>
    public double? TimeToSpeedS { get; init; }

    /// <summary>From the last stop until the shaft stood, in s; null if it never did.</summary>
    public double? TimeToStopS { get; init; }

    /// <summary>Why the drive tripped, which ends a rehearsal half a second later, or after the supply's gap; null if it did not.</summary>
    public TripCause? Tripped { get; init; }

    /// <summary>Where the numbers ran away, which ends a rehearsal at once; the trace goes so far. Null if they did not.</summary>
    public SimulationBreakdown? Breakdown { get; init; }
}
