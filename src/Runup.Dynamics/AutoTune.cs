namespace Runup.Dynamics;

/// <summary>How a drive measures its motor's circuit.</summary>
public enum AutoTune
{
    /// <summary>At rest, with the machine coupled: nothing turns.</summary>
    Stationary,

    /// <summary>That, and then a run without load: the motor must be uncoupled.</summary>
    Rotating,
}

/// <summary>What came of an auto-tune; a closed set.</summary>
public abstract record AutoTuneOutcome
{
    private AutoTuneOutcome()
    {
    }

    /// <summary>It is done.</summary>
    /// <param name="Motor">What was found; it works once it stands in <see cref="ControlSettings.Tuned"/>.</param>
    public sealed record Done(TunedMotor Motor) : AutoTuneOutcome;

    /// <summary>It ended without a result.</summary>
    /// <param name="Why">Why, and what would do.</param>
    public sealed record Failed(string Why) : AutoTuneOutcome;
}
