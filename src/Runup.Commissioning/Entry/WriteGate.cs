namespace Runup.Commissioning.Entry;

/// <summary>Whether the drive's state permits a write now; a closed set.</summary>
public abstract record WriteGate
{
    private WriteGate()
    {
    }

    /// <summary>Judges by a status read just before. A state that can't be read is never taken for standstill.</summary>
    /// <param name="status">The status.</param>
    /// <param name="safeWhileRunning">Whether the profile marks what is to be written safe while running, and it was asked for by name.</param>
    public static WriteGate Judge(LinkReply<DriveStatus> status, bool safeWhileRunning = false) => status switch
    {
        LinkReply<DriveStatus>.Answered { Value.Running: true } answered when !safeWhileRunning =>
            new Refused($"the drive says that it runs ({answered.Value.State}); stop it first"),
        LinkReply<DriveStatus>.Answered => new Open(),
        LinkReply<DriveStatus>.Refused refused => new Refused($"the drive's state can't be read: {refused.Why}"),
        LinkReply<DriveStatus>.Unanswered lost => new NoLink($"the drive's state can't be read: {lost.Why}"),
        _ => throw new InvalidOperationException("The set of replies is closed."),
    };

    /// <summary>A write is permitted.</summary>
    public sealed record Open : WriteGate;

    /// <summary>A write is refused for safety.</summary>
    /// <param name="Why">Why.</param>
    public sealed record Refused(string Why) : WriteGate;

    /// <summary>No write, since the drive does not answer.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NoLink(string Why) : WriteGate;
}
