namespace Runup.Commissioning.Entry;

/// <summary>The steps of an entry over a link.</summary>
internal sealed class EntryOverLink(EntrySession session, IDriveLinks links, TimeProvider time) : IEntryWay
{
    public async Task<EntryEnding?> FindOut(EntryHistory history, CancellationToken cancellation)
    {
        var moment = history.AsFound.ContainsKey(session.Identity) ? Moments.BeforeEntry : Moments.AsFound;
        if (await session.ReadAll(moment, cancellation) is { } lost)
        {
            return lost;
        }

        if (history.Open is { } open)
        {
            await new EntryResuming(session).GoOnWith(open);
        }

        return null;
    }

    public async Task<EntryEnding?> MayWrite(IReadOnlyList<EntryLine> lines, CancellationToken cancellation) =>
        await session.Gate(lines, cancellation) ?? await session.NotConfirmed("before-first-write", cancellation);

    public Task<EntryEnding?> Write(CancellationToken cancellation) => new EntryWriting(session).Run(cancellation);

    public async Task<EntryEnding?> Keep(OpenEntry? before, CancellationToken cancellation)
    {
        if (before is { PowerCycled: true })
        {
            // Cut off between the power cycle and the last reading: that reading was the first thing done this time.
            session.Book.PowerCycle = PowerCycleProof.Proved;
            return null;
        }

        return await new EntryKeeping(session, links, time).Run(stored: before is { Stored: true }, cancellation);
    }

    public void Tell(string words) => session.Tell(words);
}
