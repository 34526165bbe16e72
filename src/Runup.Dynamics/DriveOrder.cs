namespace Runup.Dynamics;

/// <summary>What the drive is told, whoever tells it: run or not, and how fast.</summary>
/// <param name="Run">Run; a start needs it to change from false to true while the drive is ready.</param>
/// <param name="FrequencyHz">Frequency asked for, in Hz; negative is reverse.</param>
/// <param name="Stop">How to stop while <paramref name="Run"/> is false.</param>
/// <param name="SecondRamps">On the second ramps, as an input may ask.</param>
public readonly record struct DriveOrder(bool Run, double FrequencyHz, StopKind Stop, bool SecondRamps = false);

/// <summary>How a drive is told to stop.</summary>
public enum StopKind
{
    /// <summary>By the stopping method of the settings.</summary>
    ByMethod,

    /// <summary>On the deceleration ramp.</summary>
    Ramp,

    /// <summary>On the quick-stop ramp.</summary>
    QuickStop,

    /// <summary>Output off at once; the shaft coasts.</summary>
    Coast,
}
