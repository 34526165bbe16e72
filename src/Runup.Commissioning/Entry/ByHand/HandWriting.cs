using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>Has a person set the lines that differ, in the sheet's order, each with its two entries in the record around the question.</summary>
internal sealed class HandWriting(EntryTask task, EntryBook book, HandLook look, IRecords records)
{
    /// <summary>How the entry ends where the person stops; null when each line had its turn.</summary>
    public async Task<EntryEnding?> Run(CancellationToken cancellation)
    {
        var differing = task.Sheet.Lines.Count(book.Differs);
        if (differing > 0)
        {
            look.Person.Tell($"Now {differing} parameters to set, from top to bottom; {task.Sheet.Lines.Count - differing} of the sheet's {task.Sheet.Lines.Count} were seen with their value and are not asked again.");
        }

        return await HandWalk.Along(task.Sheet.Lines.Count, (place, cameBack) => Turn(place, cameBack, cancellation)) ? null : new EntryEnding.Interrupted();
    }

    private async Task<HandTurn> Turn(int place, bool cameBack, CancellationToken cancellation)
    {
        var line = task.Sheet.Lines[place];
        if (!cameBack && !book.Differs(line))
        {
            return HandTurn.PassedBy;
        }

        if (book.LeftOutForItsUnit(line))
        {
            return HandTurn.PassedBy;
        }

        string? trouble = null;
        while (true)
        {
            var held = book.Held(line.Number);
            await records.Append(task.Tag, new RecordBody.WriteIntended(line.Number, held, line.Raw), CancellationToken.None);
            switch (await look.Ask(line.Parameter, (LookFor.Entered, place + 1, task.Sheet.Lines.Count), held, line.Raw, book.Values, trouble, cancellation))
            {
                case HandAnswer.Shows shows when shows.Raw == line.Raw:
                    await Ended(line, new WriteOutcome.VerifiedByEye(), shows.Raw);
                    await Forget(line, held);
                    return HandTurn.Done;
                case HandAnswer.Shows shows:
                    await Ended(line, new WriteOutcome.Differs(shows.Raw, "the display shows another value"), shows.Raw);
                    await Forget(line, held);
                    trouble = $"It is to show {Shown(line, line.Raw)}, not {Shown(line, shows.Raw)}; that is on record as differing. Set it, or leave it so: s REASON";
                    break;
                case HandAnswer.LeftOut left:
                    await LeftOut(line, held, $"left out by {look.Person.Name}: {left.Why}");
                    return HandTurn.Done;
                case HandAnswer.Back:
                    await LeftOut(line, held, "gone back before it was entered");
                    return HandTurn.Back;
                default:
                    await LeftOut(line, held, "stopped before it was entered");
                    return HandTurn.Quit;
            }
        }
    }

    private async Task Ended(EntryLine line, WriteOutcome outcome, long? seen)
    {
        book.Ended(line.Number, outcome);
        book.Read(line.Number, seen);
        await records.Append(task.Tag, new RecordBody.WriteEnded(line.Number, outcome.Name, seen, outcome.Why, look.Person.Name), CancellationToken.None);
    }

    // What it showed before still stands: a person who leaves it out did not touch it.
    private async Task LeftOut(EntryLine line, long? held, string why)
    {
        if (held == line.Raw)
        {
            await Ended(line, new WriteOutcome.VerifiedByEye(), held);
            return;
        }

        var outcome = book.LeftOut(line, why);
        await records.Append(task.Tag, new RecordBody.WriteEnded(line.Number, outcome.Name, held, why, look.Person.Name), CancellationToken.None);
    }

    // With another unit the digits of others mean something else, and what is set to its factory value is not what it was: what they showed before says nothing now.
    private async Task Forget(EntryLine line, long? held)
    {
        if (book.Held(line.Number) == held)
        {
            return;
        }

        foreach (var parameter in EntryOrder.MovedBy(task.Profile, line.Parameter).Where(p => book.Held(p.Number) is not null))
        {
            var why = EntryOrder.UnitChosenBy(parameter) == line.Number ? $"its unit changed with {line.Number}" : $"{line.Number} set it to its factory value";
            book.Read(parameter.Number, null);
            await records.Append(task.Tag, new RecordBody.ParameterSeen(Moments.AfterWrite, parameter.Number, null, look.Person.Name, why), CancellationToken.None);
        }
    }

    private string Shown(EntryLine line, long raw) =>
        DisplayText.Shown(line.Parameter, raw, ParameterValues.Defaults(task.Profile, task.Size).With(book.Values)).Text;
}
