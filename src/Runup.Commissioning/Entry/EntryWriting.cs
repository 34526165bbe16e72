using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>Writes the lines that differ, in the sheet's order, each behind the gate of the drive's state.</summary>
internal sealed class EntryWriting(EntrySession session)
{
    private readonly EntryTask task = session.Task;
    private readonly EntryBook book = session.Book;
    private readonly ProvenWrite writing = new(session.Task.Tag, session.Link, session.Records);

    /// <summary>How the entry ends where it can't go on; null when each line had its turn.</summary>
    public async Task<EntryEnding?> Run(CancellationToken cancellation)
    {
        for (var i = 0; i < task.Sheet.Lines.Count; i++)
        {
            if (book.Differs(task.Sheet.Lines[i]) && await Line(i, cancellation) is { } ending)
            {
                return ending;
            }
        }

        // A later line may have changed an earlier one: those that were verified and differ now are written once more.
        for (var i = 0; i < task.Sheet.Lines.Count; i++)
        {
            if (book.Differs(task.Sheet.Lines[i]) && book.WasVerified(task.Sheet.Lines[i]) && await Line(i, cancellation) is { } ending)
            {
                return ending;
            }
        }

        return null;
    }

    private async Task<EntryEnding?> Line(int place, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var line = task.Sheet.Lines[place];
        if (book.LeftOutForItsUnit(line))
        {
            return null;
        }

        if (await session.Gate([line], cancellation) is { } closed)
        {
            return closed;
        }

        session.Tell($"{line.Parameter}: {DisplayText.Shown(line.Parameter, line.Raw, book.Values).Text}.{(line.CanStartMotor ? " It can make the motor start by itself." : "")}", line, null, place);
        var result = await writing.Of(line.Parameter, book.Held(line.Number), line.Raw);
        book.Ended(line.Number, result.Outcome);
        book.Read(line.Number, result.ReadBack);
        session.Tell(result.Outcome.Why is { } why ? $"{line.Parameter}: {result.Outcome.Name}, {why}." : $"{line.Parameter}: verified.", line, result.Outcome, place + 1);
        return (result.LinkLost ?? await ReadDependents(line.Parameter)) is { } lost ? new EntryEnding.LinkFailed(lost) : null;
    }

    // A unit that this parameter chooses, or a value that is worked out from it, may read otherwise now.
    private async Task<string?> ReadDependents(Parameter written)
    {
        var dependents = task.Kept.Where(p => EntryOrder.Before(task.Profile, p).Contains(written.Number, StringComparer.Ordinal)).ToList();
        if (dependents.Count == 0)
        {
            return null;
        }

        var (values, lost) = await session.Link.ReadAll(dependents, CancellationToken.None);
        if (values is not null)
        {
            book.Read(values);
        }

        return lost;
    }
}
