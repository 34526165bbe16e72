using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>One step of what is done in a rehearsal.</summary>
public abstract record ScriptStep
{
    private ScriptStep()
    {
    }

    /// <summary>Run order on.</summary>
    /// <param name="FrequencyHz">Frequency asked for, in Hz; negative is reverse.</param>
    public sealed record Start(double FrequencyHz) : ScriptStep;

    /// <summary>Another frequency, while running.</summary>
    /// <param name="FrequencyHz">Frequency asked for, in Hz; negative is reverse.</param>
    public sealed record SetFrequency(double FrequencyHz) : ScriptStep;

    /// <summary>Run order off.</summary>
    /// <param name="How">How the drive is to stop.</param>
    public sealed record Stop(StopKind How = StopKind.ByMethod) : ScriptStep;

    /// <summary>The supply goes, and comes back.</summary>
    /// <param name="Length">How long it is gone.</param>
    public sealed record SupplyGap(Duration Length) : ScriptStep;

    /// <summary>Let time pass.</summary>
    /// <param name="Length">How long.</param>
    public sealed record Wait(Duration Length) : ScriptStep;

    /// <summary>Let time pass until the motor runs at the frequency asked for.</summary>
    /// <param name="AtMost">Then the script goes on all the same.</param>
    public sealed record UntilAtSpeed(Duration AtMost) : ScriptStep;

    /// <summary>Let time pass until the shaft stands still and the output is off.</summary>
    /// <param name="AtMost">Then the script goes on all the same.</param>
    public sealed record UntilStandstill(Duration AtMost) : ScriptStep;
}
