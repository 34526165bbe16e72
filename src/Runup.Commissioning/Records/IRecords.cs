namespace Runup.Commissioning.Records;

/// <summary>The append-only record of a site: what was read, written, confirmed, measured and handed over.</summary>
/// <remarks>When <see cref="Append"/> returns, the entry is on the disk. Nothing is ever changed or removed.</remarks>
public interface IRecords
{
    /// <summary>Appends an entry for a set and returns it as recorded.</summary>
    /// <exception cref="RecordsUnavailableException">The entry is not on the disk, and no later one will be.</exception>
    Task<Recorded> Append(string tag, RecordBody body, CancellationToken cancellation);

    /// <summary>All entries of a set, oldest first.</summary>
    /// <exception cref="RecordsUnavailableException">The record can't be read.</exception>
    Task<IReadOnlyList<Recorded>> Of(string tag, CancellationToken cancellation);
}

/// <summary>An entry as recorded.</summary>
/// <param name="Sequence">Place in the site's chain, from 1.</param>
/// <param name="At">When, with the offset of the computer that recorded it.</param>
/// <param name="Tag">The set.</param>
/// <param name="Body">What.</param>
/// <param name="Hash">SHA-256 over the previous entry's hash and this entry, in hex: the chain's head so far.</param>
public sealed record Recorded(long Sequence, DateTimeOffset At, string Tag, RecordBody Body, string Hash);
