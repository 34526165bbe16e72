using Runup.Commissioning.Records;

namespace Runup.Commissioning.Handover;

/// <summary>What a set's record tells, from first entry to last.</summary>
public sealed record RecordStory
{
    /// <summary>The job file as it was when work last began, or null.</summary>
    public At<RecordBody.JobTaken>? Job { get; init; }

    /// <summary>The first full reading of the drive, before anything was written, or null.</summary>
    public At<RecordBody.ParametersRead>? AsFound { get; init; }

    /// <summary>The last full reading of the drive, or null.</summary>
    public At<RecordBody.ParametersRead>? LastRead { get; init; }

    /// <summary>What the drive was last known to hold: the last full reading, and what was read back of single parameters since. A parameter that was written since without a read-back is not in it.</summary>
    public IReadOnlyDictionary<string, long> AsLeft { get; init; } = new Dictionary<string, long>(StringComparer.Ordinal);

    /// <summary>Of those, the ones that stand on a look at the drive's display alone, each with who looked last.</summary>
    public IReadOnlyDictionary<string, string> ByEye { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>How values were entered and proved.</summary>
    public EntryStory Entry { get; init; } = new();

    /// <summary>The steps of the first run in the order in which each was first begun, with its last attempt.</summary>
    public IReadOnlyList<StepStory> Steps { get; init; } = [];

    /// <summary>What was confirmed, by whom.</summary>
    public IReadOnlyList<At<RecordBody.Confirmed>> Confirmations { get; init; } = [];

    /// <summary>The last acceptance of each finding that a person took responsibility for.</summary>
    public IReadOnlyList<At<RecordBody.FindingAccepted>> Accepted { get; init; } = [];

    /// <summary>Who had control when Runup last left, or null.</summary>
    public At<RecordBody.ControlLeft>? Control { get; init; }

    /// <summary>The chain's head that this record ends with.</summary>
    public ChainHead? Head { get; init; }

    /// <summary>The story of a set's entries, oldest first.</summary>
    public static RecordStory Of(IReadOnlyList<Recorded> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var telling = new RecordTelling();
        foreach (var entry in entries)
        {
            telling.Hear(entry);
        }

        return telling.Story();
    }
}

/// <summary>A body with the time at which it was recorded.</summary>
/// <typeparam name="T">The body's kind.</typeparam>
/// <param name="Time">When.</param>
/// <param name="Body">What.</param>
public sealed record At<T>(DateTimeOffset Time, T Body)
    where T : RecordBody;

/// <summary>Where a chain stands: printed on paper, it anchors the file.</summary>
/// <param name="Sequence">Place of the entry in the site's chain.</param>
/// <param name="Time">When it was recorded.</param>
/// <param name="Hash">Its hash in hex.</param>
/// <param name="Entries">How many entries of this set there are.</param>
/// <param name="First">When the first of them was recorded.</param>
public sealed record ChainHead(long Sequence, DateTimeOffset Time, string Hash, int Entries, DateTimeOffset First);
