using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>
/// The course of every entry, whichever way it goes: as found first, the difference written in order, each line proved, stored,
/// the power taken away, and looked at again; the record is the only state.
/// </summary>
internal sealed class EntryCourse(EntryTask task, EntryBook book, IRecords records)
{
    /// <summary>Runs what there is to do where the checks permit it, and reports; cancelling ends it as interrupted.</summary>
    public async Task<EntryReport> Run(Func<CancellationToken, Task<EntryEnding>> steps, CancellationToken cancellation)
    {
        if (!task.Verdict.MayBeEntered)
        {
            return book.Report(new EntryEnding.RefusedForSafety($"the checks forbid to enter it: {string.Join(", ", task.Verdict.EntryBlockedBy)}"));
        }

        EntryEnding ending;
        try
        {
            ending = await steps(cancellation);
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

    /// <summary>The steps in their order.</summary>
    public async Task<EntryEnding> Steps(IEntryWay way, CancellationToken cancellation)
    {
        var history = EntryHistory.Of(await records.Of(task.Tag, cancellation));
        if (await way.FindOut(history, cancellation) is { } lost)
        {
            return lost;
        }

        var differing = task.Sheet.Lines.Where(book.Differs).ToList();
        if (differing.Count == 0 && history.Open is null)
        {
            book.PowerCycle = PowerCycleProof.NotNeeded;
            way.Tell("The drive holds the whole sheet already; nothing is written.");
            return await Close(cancellation);
        }

        return await way.MayWrite(differing, cancellation) ?? await Begun(way, differing, history.Open, cancellation);
    }

    private async Task<EntryEnding> Begun(IEntryWay way, List<EntryLine> differing, OpenEntry? open, CancellationToken cancellation)
    {
        await records.Append(task.Tag, new RecordBody.EntryBegun(task.Sheet.Sha256, [.. differing.Select(l => l.Number)], open is not null), cancellation);
        return await way.Write(cancellation)
            ?? await way.Keep(differing.Count == 0 ? open : null, cancellation)
            ?? await Close(cancellation);
    }

    private async Task<EntryEnding> Close(CancellationToken cancellation)
    {
        var ending = new EntryEnding.Finished();
        var report = book.Report(ending);
        var failed = report.Failed.ToDictionary(f => f.Parameter, f => f.Outcome.Name, StringComparer.Ordinal);
        await records.Append(task.Tag, new RecordBody.EntryEnded(
            report.Verified.Count,
            failed,
            book.PowerCycle == PowerCycleProof.Proved,
            report.VerifiedByEye.Count > 0 ? report.VerifiedByEye.Count : null,
            book.PowerCycle == PowerCycleProof.SeenByEye ? true : null), cancellation);
        return ending;
    }
}
