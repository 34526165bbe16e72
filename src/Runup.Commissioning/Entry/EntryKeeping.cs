using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>Has the drive keep what was written, takes its power away and reads all again.</summary>
internal sealed class EntryKeeping(EntrySession session, IDriveLinks links, TimeProvider time)
{
    /// <summary>How the entry ends where it can't go on; null when all was read again after the power was seen to go.</summary>
    /// <param name="stored">Whether the drive was told to keep what it holds before the entry was cut off.</param>
    /// <param name="cancellation">Stops the entry.</param>
    public async Task<EntryEnding?> Run(bool stored, CancellationToken cancellation)
    {
        if (await session.ReadAll(Moments.AfterWrite, cancellation) is { } lost)
        {
            return lost;
        }

        if (!stored && await Store(cancellation) is { } closed)
        {
            return closed;
        }

        if (await session.NotConfirmed("before-power-cycle", cancellation) is { } refusal)
        {
            return refusal;
        }

        var (says, seen) = await new PowerCycleWatch(session.Link, session.Person, time).Run(cancellation);
        if (says is PersonSays.No no)
        {
            return new EntryEnding.AwaitsPowerCycle(no.Why);
        }

        if (seen)
        {
            await session.Records.Append(session.Task.Tag, new RecordBody.PowerCycleSeen(), cancellation);
        }

        await session.Link.DisposeAsync();
        return await ReadAgain(seen, cancellation);
    }

    private async Task<EntryEnding?> Store(CancellationToken cancellation)
    {
        if (await session.Gate(session.Task.Sheet.Lines, cancellation) is { } closed)
        {
            return closed;
        }

        var outcome = session.Task.Profile.Store is null ? StoreOutcomes.NotNeeded : StoreOutcomes.Of(await session.Link.Store(CancellationToken.None));
        await session.Records.Append(session.Task.Tag, new RecordBody.StoreAsked(outcome), cancellation);
        session.Tell($"The drive was told to keep its parameters: {outcome}.");
        return null;
    }

    private async Task<EntryEnding?> ReadAgain(bool seen, CancellationToken cancellation)
    {
        var opening = await links.Open(cancellation);
        while (opening is LinkOpening.Failed failed)
        {
            // One attempt for each word of the person: never a loop of its own.
            var again = new ToConfirm("drive-is-on-again", $"The drive is on again and ready. The last attempt to reach it failed: {failed.Why}.", "after-power-cycle");
            if (await Confirming.All([again], session.Task.Tag, session.Person, session.Records, null, cancellation) is { } why)
            {
                return new EntryEnding.LinkFailed($"{failed.Why}; {why}");
            }

            opening = await links.Open(cancellation);
        }

        await using var link = ((LinkOpening.Opened)opening).Link;
        var (identity, lost) = await EntrySession.WhoIs(link, cancellation);
        if (lost is not null)
        {
            return new EntryEnding.LinkFailed(lost);
        }

        if (!string.Equals(identity, session.Identity, StringComparison.Ordinal))
        {
            return new EntryEnding.RefusedForSafety($"another drive answers: {identity}, not {session.Identity}");
        }

        if (await session.On(link).ReadAll(Moments.AfterPowerCycle, cancellation) is { } gone)
        {
            return gone;
        }

        session.Book.PowerCycle = seen ? PowerCycleProof.Proved : PowerCycleProof.NotSeen;
        return seen ? null : new EntryEnding.AwaitsPowerCycle("the drive was not seen to lose power");
    }
}
