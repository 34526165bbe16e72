namespace Runup.Commissioning.Entry;

/// <summary>What an entry came to. Every line of the sheet is under exactly one of verified, verified by eye, skipped and failed.</summary>
public sealed record EntryReport
{
    /// <summary>How it ended.</summary>
    public required EntryEnding Ending { get; init; }

    /// <summary>Whether an earlier one was cut off, which this one goes on with.</summary>
    public CutOffEntry? Resumed { get; init; }

    /// <summary>Numbers of the parameters for which a write was sent, or which a person set by hand, now or before the entry was cut off.</summary>
    public IReadOnlyList<string> Written { get; init; } = [];

    /// <summary>Those that the entry before had sent until it was cut off, and that this one did not send again.</summary>
    public IReadOnlyList<string> WrittenBefore { get; init; } = [];

    /// <summary>Of those, the ones that were proved by read-back.</summary>
    public IReadOnlyList<string> Verified { get; init; } = [];

    /// <summary>Of those, the ones that a person set by hand and saw on the drive's display.</summary>
    public IReadOnlyList<string> VerifiedByEye { get; init; } = [];

    /// <summary>Parameters that held the sheet's value already.</summary>
    public IReadOnlyList<string> Skipped { get; init; } = [];

    /// <summary>Parameters that do not hold the sheet's value, or of which it is not known.</summary>
    public IReadOnlyList<FailedLine> Failed { get; init; } = [];

    /// <summary>Parameters that a person has to decide on first.</summary>
    public IReadOnlyList<LeftToPerson> Left { get; init; } = [];

    /// <summary>Whether the drive keeps its values without power.</summary>
    public PowerCycleProof PowerCycle { get; init; }

    /// <summary>Where the drive takes its run command from now; null where it is not known.</summary>
    public string? RunSource { get; init; }
}

/// <summary>A line that is not proved.</summary>
/// <param name="Parameter">Its number.</param>
/// <param name="Outcome">What came of it.</param>
public sealed record FailedLine(string Parameter, WriteOutcome Outcome);

/// <summary>What had been done before an entry was cut off.</summary>
/// <param name="Verified">Parameters proved by then, read back or seen.</param>
/// <param name="UnderWay">The one of which a write had begun and its end was not known, or null.</param>
/// <param name="UnderWayHeld">What the drive holds of it now, as re-read; null where there is none or it can't be read.</param>
/// <param name="SameSheet">Whether its sheet was this one.</param>
public sealed record CutOffEntry(IReadOnlyList<string> Verified, string? UnderWay, long? UnderWayHeld, bool SameSheet);

/// <summary>Whether it is proved that the drive keeps its values without power.</summary>
public enum PowerCycleProof
{
    /// <summary>The entry did not come that far.</summary>
    NotReached,

    /// <summary>Nothing was written.</summary>
    NotNeeded,

    /// <summary>All were read again after it was off and on.</summary>
    Proved,

    /// <summary>A person switched it off and on, and saw the changed ones on its display again.</summary>
    SeenByEye,

    /// <summary>It was not seen to lose power; what was read says nothing about it.</summary>
    NotSeen,
}

/// <summary>How an entry ended; a closed set.</summary>
public abstract record EntryEnding
{
    private EntryEnding()
    {
    }

    /// <summary>All was done that there was to do.</summary>
    public sealed record Finished : EntryEnding;

    /// <summary>A rule of safety forbids to go on. The entry stays open.</summary>
    /// <param name="Why">Which, in words.</param>
    public sealed record RefusedForSafety(string Why) : EntryEnding;

    /// <summary>The link is gone. The entry stays open.</summary>
    /// <param name="Why">In words.</param>
    public sealed record LinkFailed(string Why) : EntryEnding;

    /// <summary>All is written, and it is not proved that it stays without power. The entry stays open.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record AwaitsPowerCycle(string Why) : EntryEnding;

    /// <summary>The person stopped it between two writes. The entry stays open.</summary>
    public sealed record Interrupted : EntryEnding;
}
