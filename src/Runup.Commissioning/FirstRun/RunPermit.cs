using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>Leave to run the motor in one step of the guided first run. Nothing else makes a run command.</summary>
/// <remarks>
/// It is issued for the checks of that step, confirmed by name; beyond the lowest frequency only with the proof that the drive stops by
/// itself when the bus is lost. It ends with the hold under which it is used.
/// </remarks>
public sealed class RunPermit
{
    private readonly RunHold hold;

    private RunPermit(StepChecks checks, RunHold hold, double limitHz, Rotation rotation)
    {
        Step = checks.Step;
        this.hold = hold;
        LimitHz = limitHz;
        Rotation = rotation;
    }

    /// <summary>The step.</summary>
    public string Step { get; }

    /// <summary>Highest frequency of the step, Hz.</summary>
    public double LimitHz { get; }

    /// <summary>Direction of the step.</summary>
    public Rotation Rotation { get; }

    /// <summary>For the proof itself: lowest frequency, forward, nothing beyond.</summary>
    internal static RunPermit ForProof(StepChecks checks, RunHold hold, RunLimits limits) => new(checks, hold, limits.LowestHz, Rotation.Forward);

    /// <summary>For a step after the proof. The step's limit is cut to what the sheet permits.</summary>
    internal static RunPermit ForStep(StepChecks checks, BusLossProof proof, RunHold hold, RunLimits limits, double stepLimitHz, Rotation rotation)
    {
        ArgumentNullException.ThrowIfNull(proof);
        if (rotation == Rotation.Reverse && !limits.ReversePermitted)
        {
            throw new ArgumentException("That direction is not permitted.", nameof(rotation));
        }

        return new(checks, hold, Math.Min(stepLimitHz, limits.MaximumHz), rotation);
    }

    /// <summary>Asks for a run command at a frequency; negative is reverse.</summary>
    public RunAnswer Ask(double frequencyHz) => WhyNot(frequencyHz) is { } why ? new RunAnswer.Refused(why) : new RunAnswer.Granted(new LinkCommand.Run(this, frequencyHz));

    internal void Demand(double frequencyHz)
    {
        if (WhyNot(frequencyHz) is { } why)
        {
            throw new InvalidOperationException($"No run command: {why}");
        }
    }

    private string? WhyNot(double frequencyHz)
    {
        if (!hold.IsHeld())
        {
            return "nobody holds it.";
        }

        if (double.IsNaN(frequencyHz) || Math.Abs(frequencyHz) > LimitHz)
        {
            return $"{frequencyHz:0.##} Hz is beyond the step's {LimitHz:0.##} Hz.";
        }

        return (frequencyHz < 0) != (Rotation == Rotation.Reverse) && frequencyHz != 0 ? "that is not the step's direction." : null;
    }
}

/// <summary>What a permit answers; a closed set.</summary>
public abstract record RunAnswer
{
    private RunAnswer()
    {
    }

    /// <summary>The command.</summary>
    /// <param name="Command">To be sent at once.</param>
    public sealed record Granted(LinkCommand.Run Command) : RunAnswer;

    /// <summary>No command.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Refused(string Why) : RunAnswer;
}

/// <summary>Between what a motor may be run at all in the guided first run.</summary>
/// <param name="LowestHz">Frequency of the first step.</param>
/// <param name="MaximumHz">Highest frequency of the sheet.</param>
/// <param name="ReversePermitted">Whether the sheet permits reverse.</param>
public sealed record RunLimits(double LowestHz, double MaximumHz, bool ReversePermitted);
