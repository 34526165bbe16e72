using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>What the readings of the first run are held against; worked out before, by the plan and the rehearsal.</summary>
public interface IFirstRunPredictions
{
    /// <summary>What a reading shows at a steady frequency.</summary>
    /// <param name="kind">The reading.</param>
    /// <param name="frequencyHz">Output frequency, Hz.</param>
    /// <param name="coupling">Whether the machine is coupled.</param>
    Expected Steady(ReadingKind kind, double frequencyHz, Coupling coupling);

    /// <summary>How the motor runs up to a frequency and is stopped from there; null where it is not predicted.</summary>
    /// <param name="frequencyHz">Output frequency, Hz.</param>
    /// <param name="coupling">Whether the machine is coupled.</param>
    RampPrediction? Ramp(double frequencyHz, Coupling coupling);
}

/// <summary>A prediction with the band that is accepted; in the reading's own unit (Hz, A, V, rpm, % of rated torque, s). What is not predicted is null.</summary>
/// <param name="Value">Expected.</param>
/// <param name="Low">Lowest accepted.</param>
/// <param name="High">Highest accepted.</param>
public readonly record struct Expected(double? Value, double? Low, double? High)
{
    /// <summary>Nothing is predicted.</summary>
    public static Expected Nothing => default;

    /// <summary>Whether a reading lies within; null where nothing is accepted or read.</summary>
    public bool? Within(double? measured) => measured is not { } m || (Low is null && High is null)
        ? null
        : (Low is null || m >= Low) && (High is null || m <= High);
}

/// <summary>A predicted run-up and stop.</summary>
public sealed record RampPrediction
{
    /// <summary>Names of the columns with their units; the first is <c>time_s</c> from the run command.</summary>
    public required IReadOnlyList<string> Columns { get; init; }

    /// <summary>Samples.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Rows { get; init; }

    /// <summary>Highest output current, A.</summary>
    public Expected PeakCurrent { get; init; }

    /// <summary>Highest DC bus voltage, V.</summary>
    public Expected PeakDcBus { get; init; }

    /// <summary>From the run command to the frequency asked for, s.</summary>
    public Expected TimeToSpeed { get; init; }

    /// <summary>From the stop command to standstill, s.</summary>
    public Expected TimeToStop { get; init; }
}

/// <summary>Whether the machine hangs on the motor.</summary>
public enum Coupling
{
    /// <summary>The motor turns alone.</summary>
    Uncoupled,

    /// <summary>The motor drives the machine.</summary>
    Coupled,
}
