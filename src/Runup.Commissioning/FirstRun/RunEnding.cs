using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>How the running part of a step ended before its time; a closed set.</summary>
internal abstract record RunEnding
{
    private RunEnding()
    {
    }

    /// <summary>The hold ended; the motor was stopped and that was seen.</summary>
    public sealed record HoldEnded(HoldEnd Why) : RunEnding;

    /// <summary>The motor did not come to what was asked in time; it was stopped and that was seen.</summary>
    public sealed record NotReached(string What) : RunEnding;

    /// <summary>The drive refused a command; nothing turns.</summary>
    public sealed record Refused(string Why) : RunEnding;

    /// <summary>The drive tripped.</summary>
    public sealed record Tripped(TripCause Cause) : RunEnding;

    /// <summary>A stop was written and not seen to be obeyed: Runup sends nothing more on this link, so that the drive's own bus time-out acts.</summary>
    public sealed record FellSilent(string Why) : RunEnding;
}
