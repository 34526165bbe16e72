using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Handover;

/// <summary>How values were entered into the drive and proved.</summary>
public sealed record EntryStory
{
    /// <summary>When an entry was first begun, or null.</summary>
    public DateTimeOffset? Begun { get; init; }

    /// <summary>How often it was cut off and went on.</summary>
    public int Resumed { get; init; }

    /// <summary>How the last entry ended; null where none was begun or the last was cut off.</summary>
    public At<RecordBody.EntryEnded>? Ended { get; init; }

    /// <summary>Checksum of the last sheet, or null.</summary>
    public string? SheetSha256 { get; init; }

    /// <summary>The last write of each parameter: what came of it, or null where nobody knows.</summary>
    public IReadOnlyDictionary<string, WriteStory> Writes { get; init; } = new Dictionary<string, WriteStory>(StringComparer.Ordinal);

    /// <summary>How the drive last answered when told to keep its parameters, or null.</summary>
    public string? Stored { get; init; }

    /// <summary>When the drive was last seen to lose power and come back, or null.</summary>
    public DateTimeOffset? PowerCycled { get; init; }

    /// <summary>What was read of it after that; null where nothing was, or where an entry wrote to it since.</summary>
    public At<RecordBody.ParametersRead>? Kept { get; init; }
}

/// <summary>The last write of a parameter.</summary>
/// <param name="Time">When it was sent.</param>
/// <param name="Raw">What was written, in counts.</param>
/// <param name="Ended">What came of it; null where the record breaks off before.</param>
public sealed record WriteStory(DateTimeOffset Time, long Raw, RecordBody.WriteEnded? Ended)
{
    /// <summary>verified, verified-by-eye, differs, refused or unverified; of a write that was cut off, unverified.</summary>
    public string Outcome => Ended?.Outcome ?? "unverified";

    /// <summary>Whether it was proved by read-back, or seen by the person who entered it.</summary>
    public bool IsProved => Ended is { } ended && WriteOutcome.IsProof(ended.Outcome);
}
