using Runup.Commissioning.Records;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>The record in memory.</summary>
internal sealed class BenchRecords : IRecords
{
    internal List<Recorded> All { get; } = [];

    internal IEnumerable<RecordBody> Bodies => All.Select(r => r.Body);

    internal Action? Cut { get; set; }

    public Task<Recorded> Append(string tag, RecordBody body, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Cut?.Invoke();
        var entry = new Recorded(All.Count + 1, DateTimeOffset.UnixEpoch, tag, body, "");
        All.Add(entry);
        Cut?.Invoke();
        return Task.FromResult(entry);
    }

    public Task<IReadOnlyList<Recorded>> Of(string tag, CancellationToken cancellation) =>
        Task.FromResult<IReadOnlyList<Recorded>>([.. All.Where(r => r.Tag == tag)]);
}
