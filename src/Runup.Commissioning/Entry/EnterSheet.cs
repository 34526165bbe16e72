using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>Enters a sheet into a drive over a link and proves it, each line by reading it back.</summary>
/// <remarks>
/// The record is the only state. Whenever it is cut off, another entry finds in the record what had been done, reads the drive
/// again and goes on; the values as found are those of the first reading ever. One instance enters once.
/// </remarks>
public sealed class EnterSheet(EntryTask task, IDriveLinks links, IRecords records, IPerson person, TimeProvider time, IProgress<EntryEvent>? progress = null)
{
    private readonly EntryBook book = new(task.Sheet);

    /// <summary>Enters the sheet. Cancelling stops between two writes; the one under way is finished and recorded first.</summary>
    public Task<EntryReport> Run(CancellationToken cancellation) => new EntryCourse(task, book, records).Run(OnLink, cancellation);

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
                        ? await new EntryCourse(task, book, records).Steps(new EntryOverLink(new(task, opened.Link, identity, book, records, person, progress), links, time), cancellation)
                        : new EntryEnding.LinkFailed(lost);
                }

            default:
                throw new InvalidOperationException("The set of openings is closed.");
        }
    }
}
