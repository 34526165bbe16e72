using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>How the set is to run.</summary>
public sealed record OperationSurvey
{
    /// <summary>Lowest running frequency.</summary>
    public Datum<ElectricalFrequency>? MinimumFrequency { get; init; }

    /// <summary>Highest frequency.</summary>
    public required Datum<ElectricalFrequency> MaximumFrequency { get; init; }

    /// <summary>From 0 to the highest frequency.</summary>
    public Datum<Duration>? Acceleration { get; init; }

    /// <summary>From the highest frequency to 0.</summary>
    public Datum<Duration>? Deceleration { get; init; }

    /// <summary>forward or both.</summary>
    public Datum<string>? Directions { get; init; }

    /// <summary>Stops in an hour.</summary>
    public Datum<Ratio>? StopsPerHour { get; init; }

    /// <summary>Repeating duty cycle.</summary>
    public IReadOnlyList<CyclePart> Cycle { get; init; } = [];

    /// <summary>Whether it starts by itself when power returns.</summary>
    public Datum<bool>? RestartAfterPowerLoss { get; init; }
}

/// <summary>One part of a repeating duty cycle, at the machine's shaft.</summary>
public sealed record CyclePart(Datum<Duration> Time, Datum<ShaftSpeed> Speed, Datum<Torque> Torque);
