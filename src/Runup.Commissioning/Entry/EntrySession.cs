using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>What the parts of an entry share while one link stands.</summary>
internal sealed class EntrySession(EntryTask task, IDriveLink link, string identity, EntryBook book, IRecords records, IPerson person, IProgress<EntryEvent>? progress)
{
    public EntryTask Task => task;

    public IDriveLink Link => link;

    public string Identity => identity;

    public EntryBook Book => book;

    public IRecords Records => records;

    public IPerson Person => person;

    public static async Task<(string Text, string? Lost)> WhoIs(IDriveLink link, CancellationToken cancellation) =>
        await link.Identify(cancellation) switch
        {
            LinkReply<string>.Answered answered => (answered.Value, null),
            LinkReply<string>.Refused => ("does not say what it is", null),
            LinkReply<string>.Unanswered lost => ("", lost.Why),
            _ => throw new InvalidOperationException("The set of replies is closed."),
        };

    /// <summary>The same entry on another link to the same drive.</summary>
    public EntrySession On(IDriveLink another) => new(task, another, identity, book, records, person, progress);

    /// <summary>Null where the drive's state permits to write these lines now; else how the entry ends.</summary>
    public async Task<EntryEnding?> Gate(IReadOnlyList<EntryLine> lines, CancellationToken cancellation) =>
        WriteGate.Judge(await link.Status(cancellation), task.SafeWhileRunning(lines)) switch
        {
            WriteGate.Open => null,
            WriteGate.Refused refused => new EntryEnding.RefusedForSafety(refused.Why),
            WriteGate.NoLink lost => new EntryEnding.LinkFailed(lost.Why),
            _ => throw new InvalidOperationException("The set of gates is closed."),
        };

    /// <summary>Null where the person confirmed what a step needs that may move the shaft; else how the entry ends.</summary>
    public async Task<EntryEnding?> NotConfirmed(string step, CancellationToken cancellation) =>
        await Confirming.All(Confirming.BeforeTheShaftMayMove(step), task.Tag, person, records, null, cancellation) is { } why
            ? new EntryEnding.RefusedForSafety(why)
            : null;

    /// <summary>Reads all that the drive keeps, and keeps it in the record; why the link is lost, or null.</summary>
    public async Task<EntryEnding?> ReadAll(string moment, CancellationToken cancellation)
    {
        var (values, lost) = await link.ReadKept(task.Kept, cancellation);
        if (values is null)
        {
            return new EntryEnding.LinkFailed(lost!);
        }

        book.Read(values);
        await records.Append(task.Tag, new RecordBody.ParametersRead(moment, identity, values), cancellation);
        Tell($"All {values.Count} parameters are read and kept ({moment}).");
        return null;
    }

    public void Tell(string words) => progress?.Report(new(words, null, null, 0, task.Sheet.Lines.Count));

    public void Tell(string words, EntryLine line, WriteOutcome? outcome, int done) => progress?.Report(new(words, line, outcome, done, task.Sheet.Lines.Count));
}
