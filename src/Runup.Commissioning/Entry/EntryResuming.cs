using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>Settles what an entry that was cut off had done, against what the drive holds now.</summary>
internal sealed class EntryResuming(EntrySession session)
{
    private static readonly LinkReply<Written> CutOff = new LinkReply<Written>.Unanswered("the entry was cut off");

    /// <summary>The write that was under way is settled and named; what had been sent counts as written where it was the same sheet.</summary>
    public async Task GoOnWith(OpenEntry open)
    {
        var book = session.Book;
        var verified = open.Ended.Where(e => WriteOutcome.IsProof(e.Value)).Select(e => e.Key).Order(StringComparer.Ordinal).ToList();
        session.Tell($"An entry was cut off; {verified.Count} parameters had been verified. It goes on.");
        if (open.UnderWay is { } intended)
        {
            var outcome = Settled(intended.Parameter, intended.Raw);
            await session.Records.Append(session.Task.Tag, new RecordBody.WriteEnded(intended.Parameter, outcome.Name, book.Held(intended.Parameter), outcome.Why), CancellationToken.None);
            session.Tell($"{intended.Parameter} was being written when the entry was cut off; read again it is {outcome.Name}.");
        }

        var same = string.Equals(open.SheetSha256, session.Task.Sheet.Sha256, StringComparison.Ordinal);
        book.Resumed = new(verified, open.UnderWay?.Parameter, open.UnderWay is { } under ? book.Held(under.Parameter) : null, same);
        foreach (var line in session.Task.Sheet.Lines)
        {
            var sent = open.Ended.ContainsKey(line.Number) || string.Equals(open.UnderWay?.Parameter, line.Number, StringComparison.Ordinal);
            if (same && sent)
            {
                book.EndedBefore(line.Number, Settled(line.Number, line.Raw));
            }
        }
    }

    private WriteOutcome Settled(string number, long raw) =>
        WriteOutcome.Judge(raw, CutOff, new LinkReply<long?>.Answered(session.Book.Held(number)));
}
