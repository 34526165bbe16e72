using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>
/// Enters a sheet into a drive and proves it: as found first, the difference written in order, each line read back, stored,
/// the power taken away, and all read again.
/// </summary>
/// <remarks>
/// The record is the only state. Whenever it is cut off, another entry finds in the record what had been done, reads the drive
/// again and goes on; the values as found are those of the first reading ever. One instance enters once.
/// </remarks>
public sealed class EnterSheet(EntryTask task, IDriveLinks links, IRecords records, IPerson person, TimeProvider time, IProgress<EntryEvent>? progress = null)
{
    private readonly EntryBook book = new(task.Sheet);

    /// <summary>Enters the sheet. Cancelling stops between two writes; the one under way is finished and recorded first.</summary>
    public async Task<EntryReport> Run(CancellationToken cancellation)
    {
        if (!task.Verdict.MayBeEntered)
        {
            return book.Report(new EntryEnding.RefusedForSafety($"the checks forbid to enter it: {string.Join(", ", task.Verdict.EntryBlockedBy)}"));
        }

        EntryEnding ending;
        try
        {
            ending = await OnLink(cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            ending = new EntryEnding.Interrupted();
        }

        if (book.EverRead)
        {
            book.RunSource = await Control.Leave(task.Tag, task.Profile, task.Size, book.Values, records);
        }

        return book.Report(ending);
    }

    private async Task<EntryEnding> OnLink(CancellationToken cancellation)
    {
        switch (await links.Open(cancellation))
        {
            case LinkOpening.Failed failed:
                return new EntryEnding.LinkFailed(failed.Why);
            case LinkOpening.Opened opened:
                await using (opened.Link)
                {
                    var (identity, lost) = await EntrySession.WhoIs(opened.Link, cancellation);
                    return lost is null
                        ? await Entered(new(task, opened.Link, identity, book, records, person, progress), cancellation)
                        : new EntryEnding.LinkFailed(lost);
                }

            default:
                throw new InvalidOperationException("The set of openings is closed.");
        }
    }

    private async Task<EntryEnding> Entered(EntrySession session, CancellationToken cancellation)
    {
        var history = EntryHistory.Of(await records.Of(task.Tag, cancellation));
        var moment = history.AsFound.ContainsKey(session.Identity) ? Moments.BeforeEntry : Moments.AsFound;
        if (await session.ReadAll(moment, cancellation) is { } lost)
        {
            return lost;
        }

        if (history.Open is { } open)
        {
            await new EntryResuming(session).GoOnWith(open);
        }

        var differing = task.Sheet.Lines.Where(book.Differs).ToList();
        if (differing.Count == 0 && history.Open is null)
        {
            book.PowerCycle = PowerCycleProof.NotNeeded;
            session.Tell("The drive holds the whole sheet already; nothing is written.");
            return await Close(cancellation);
        }

        return await session.Gate(differing, cancellation)
            ?? await session.NotConfirmed("before-first-write", cancellation)
            ?? await Begun(session, differing, history.Open, cancellation);
    }

    private async Task<EntryEnding> Begun(EntrySession session, List<EntryLine> differing, OpenEntry? open, CancellationToken cancellation)
    {
        await records.Append(task.Tag, new RecordBody.EntryBegun(task.Sheet.Sha256, [.. differing.Select(l => l.Number)], open is not null), cancellation);
        if (await new EntryWriting(session).Run(cancellation) is { } cut)
        {
            return cut;
        }

        if (differing.Count == 0 && open is { PowerCycled: true })
        {
            // Cut off between the power cycle and the last reading: that reading was the first thing done this time.
            book.PowerCycle = PowerCycleProof.Proved;
        }
        else if (await new EntryKeeping(session, links, time).Run(stored: differing.Count == 0 && open is { Stored: true }, cancellation) is { } unproved)
        {
            return unproved;
        }

        return await Close(cancellation);
    }

    private async Task<EntryEnding> Close(CancellationToken cancellation)
    {
        var ending = new EntryEnding.Finished();
        var report = book.Report(ending);
        var failed = report.Failed.ToDictionary(f => f.Parameter, f => f.Outcome.Name, StringComparer.Ordinal);
        await records.Append(task.Tag, new RecordBody.EntryEnded(report.Verified.Count, failed, book.PowerCycle == PowerCycleProof.Proved), cancellation);
        return ending;
    }
}
