namespace Runup.Commissioning.Records;

/// <summary>A record that lives only as long as the program: for trying things out, never for a site.</summary>
/// <param name="time">The clock.</param>
public sealed class InMemoryRecords(TimeProvider time) : IRecords
{
    private readonly Lock gate = new();
    private readonly List<Recorded> entries = [];

    /// <inheritdoc/>
    public Task<Recorded> Append(string tag, RecordBody body, CancellationToken cancellation)
    {
        RecordChain.RequireTag(tag);
        ArgumentNullException.ThrowIfNull(body);
        cancellation.ThrowIfCancellationRequested();
        lock (gate)
        {
            var at = time.GetLocalNow();
            var previous = entries.Count == 0 ? RecordChain.Origin : entries[^1].Hash;
            var hash = RecordChain.Hash(previous, entries.Count + 1, RecordChain.TimeText(at), tag, RecordText.Write(body));
            var recorded = new Recorded(entries.Count + 1, at, tag, body, hash);
            entries.Add(recorded);
            return Task.FromResult(recorded);
        }
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Recorded>> Of(string tag, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        lock (gate)
        {
            return Task.FromResult<IReadOnlyList<Recorded>>([.. entries.Where(e => string.Equals(e.Tag, tag, StringComparison.Ordinal))]);
        }
    }
}
