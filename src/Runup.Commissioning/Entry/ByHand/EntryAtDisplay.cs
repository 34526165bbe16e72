using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>The steps of an entry by a person at the drive's display.</summary>
internal sealed class EntryAtDisplay(EntryTask task, EntryBook book, IReadOnlyList<Parameter> lookAt, HandLook look, IRecords records) : IEntryWay
{
    private readonly string identity = HandHistory.Identity(task.Profile);
    private HandHistory? before;

    public async Task<EntryEnding?> FindOut(EntryHistory history, CancellationToken cancellation)
    {
        before = HandHistory.Of(task.Profile, await records.Of(task.Tag, cancellation));
        if (history.Open is null && !before.LookedThrough)
        {
            var moment = history.AsFound.ContainsKey(identity) ? Moments.BeforeEntry : Moments.AsFound;
            Tell($"First what the display shows now, {lookAt.Count} parameters: so that it can be put back. Nothing is changed yet.");
            var factory = ParameterValues.Defaults(task.Profile, task.Size);
            var through = new LookThrough(task.Tag, identity, look, records);
            if (await through.Run(moment, LookFor.Found, lookAt, p => before.Known.TryGetValue(p.Number, out var raw) ? raw : factory[p.Number]!.Value, before, cancellation) is not { } seen)
            {
                return new EntryEnding.Interrupted();
            }

            book.Read(seen);
            return null;
        }

        book.Read(before.Known.ToDictionary(k => k.Key, k => (long?)k.Value, StringComparer.Ordinal));
        if (history.Open is { } open)
        {
            await GoOnWith(open);
        }

        return null;
    }

    public Task<EntryEnding?> MayWrite(IReadOnlyList<EntryLine> lines, CancellationToken cancellation) =>
        lines.Count == 0 ? Task.FromResult<EntryEnding?>(null) : NotConfirmed("before-first-write", cancellation);

    public Task<EntryEnding?> Write(CancellationToken cancellation) => new HandWriting(task, book, look, records).Run(cancellation);

    public async Task<EntryEnding?> Keep(OpenEntry? before, CancellationToken cancellation)
    {
        var entered = task.Sheet.Lines.Where(l => book.WasWritten(l) && !book.Differs(l)).ToList();
        if (entered.Count == 0)
        {
            book.PowerCycle = PowerCycleProof.NotNeeded;
            return null;
        }

        if (before is not { PowerCycled: true }
            && (await Stored(before is { Stored: true }, cancellation) ?? await NotConfirmed("before-power-cycle", cancellation) ?? await Cycled(cancellation)) is { } unproved)
        {
            return unproved;
        }

        var half = HandHistory.Of(task.Profile, await records.Of(task.Tag, cancellation));
        Tell($"Now the {entered.Count} that were entered once more: did the drive keep them without power?");
        var wanted = entered.ToDictionary(l => l.Number, l => l.Raw, StringComparer.Ordinal);
        var through = new LookThrough(task.Tag, identity, look, records);
        if (await through.Run(Moments.AfterPowerCycle, LookFor.Kept, [.. entered.Select(l => l.Parameter)], p => wanted[p.Number], half, cancellation) is not { } seen)
        {
            return new EntryEnding.Interrupted();
        }

        book.Read(seen);
        book.PowerCycle = PowerCycleProof.SeenByEye;
        return null;
    }

    public void Tell(string words) => look.Person.Tell(words);

    private async Task GoOnWith(OpenEntry open)
    {
        var verified = open.Ended.Where(e => WriteOutcome.IsProof(e.Value)).Select(e => e.Key).Order(StringComparer.Ordinal).ToList();
        Tell($"An entry was cut off; {verified.Count} parameters had been verified and are not asked again. It goes on.");
        if (open.UnderWay is { } intended)
        {
            await records.Append(task.Tag, new RecordBody.WriteEnded(intended.Parameter, "unverified", null, "the entry was cut off while it was being entered", look.Person.Name), CancellationToken.None);
        }

        var same = string.Equals(open.SheetSha256, task.Sheet.Sha256, StringComparison.Ordinal);
        book.Resumed = new(verified, open.UnderWay?.Parameter, null, same);
        foreach (var line in task.Sheet.Lines.Where(l => same && open.Ended.TryGetValue(l.Number, out var name) && WriteOutcome.IsProof(name)))
        {
            book.Ended(line.Number, open.Ended[line.Number] is "verified" ? new WriteOutcome.Verified() : new WriteOutcome.VerifiedByEye());
        }
    }

    private async Task<EntryEnding?> NotConfirmed(string step, CancellationToken cancellation) =>
        await Confirming.All(Confirming.BeforeTheShaftMayMove(step, byHand: true), task.Tag, look.Person, records, null, cancellation) is { } why
            ? new EntryEnding.RefusedForSafety(why)
            : null;

    private async Task<EntryEnding?> Stored(bool stored, CancellationToken cancellation)
    {
        if (stored)
        {
            return null;
        }

        if (task.Profile.Store is not { } store)
        {
            await records.Append(task.Tag, new RecordBody.StoreAsked(StoreOutcomes.NotNeeded), CancellationToken.None);
            return null;
        }

        var parameter = task.Profile.Find(store.Parameter)!;
        var set = new ToConfirm("told-to-keep", $"Set {parameter} to {DisplayText.Of(parameter, store.Write, book.Values)}, or as the drive's manual says, so that it keeps what was entered. Is that done?", "before-power-cycle");
        if (await Confirming.All([set], task.Tag, look.Person, records, null, cancellation) is { } why)
        {
            return new EntryEnding.AwaitsPowerCycle($"the drive was not told to keep its parameters; {why}");
        }

        await records.Append(task.Tag, new RecordBody.StoreAsked(StoreOutcomes.ByHand), CancellationToken.None);
        return null;
    }

    private async Task<EntryEnding?> Cycled(CancellationToken cancellation)
    {
        if (await look.Person.PowerCycle(cancellation) is PersonSays.No no)
        {
            return new EntryEnding.AwaitsPowerCycle(no.Why);
        }

        await records.Append(task.Tag, new RecordBody.PowerCycleSeen(look.Person.Name), CancellationToken.None);
        return null;
    }
}
