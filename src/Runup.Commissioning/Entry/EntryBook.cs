using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>What an entry under way knows: what the drive holds, and how each write ended.</summary>
internal sealed class EntryBook(EntrySheet sheet)
{
    private readonly Dictionary<string, long> held = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WriteOutcome> outcomes = new(StringComparer.Ordinal);
    private readonly HashSet<string> earlier = new(StringComparer.Ordinal);
    private readonly HashSet<string> leftOut = new(StringComparer.Ordinal);

    public bool EverRead { get; private set; }

    public CutOffEntry? Resumed { get; set; }

    public PowerCycleProof PowerCycle { get; set; }

    public string? RunSource { get; set; }

    public long? Held(string number) => held.TryGetValue(number, out var raw) ? raw : null;

    public bool Differs(EntryLine line) => Held(line.Number) != line.Raw;

    public bool WasVerified(EntryLine line) => outcomes.GetValueOrDefault(line.Number) is WriteOutcome.Verified;

    public ParameterValues Values => ParameterValues.From(held);

    /// <summary>What was read of all that could be read.</summary>
    public void Read(IReadOnlyDictionary<string, long?> values)
    {
        EverRead = true;
        foreach (var (number, value) in values)
        {
            Read(number, value);
        }
    }

    public void Read(string number, long? value)
    {
        if (value is { } raw)
        {
            held[number] = raw;
        }
        else
        {
            held.Remove(number);
        }
    }

    public void Ended(string number, WriteOutcome outcome)
    {
        outcomes[number] = outcome;
        leftOut.Remove(number);
        earlier.Remove(number);
    }

    /// <summary>How a write ended that the entry before had sent, which was cut off.</summary>
    public void EndedBefore(string number, WriteOutcome outcome)
    {
        Ended(number, outcome);
        earlier.Add(number);
    }

    /// <summary>A line that is not entered: what the drive held of it before still stands.</summary>
    public WriteOutcome LeftOut(EntryLine line, string why)
    {
        leftOut.Add(line.Number);
        return outcomes[line.Number] = Held(line.Number) is { } held ? new WriteOutcome.Differs(held, why) : new WriteOutcome.Unverified(why);
    }

    /// <summary>Leaves a line out whose digits would mean something else, since what chooses their unit is not as the sheet asks; whether it did.</summary>
    public bool LeftOutForItsUnit(EntryLine line)
    {
        var chooser = EntryOrder.UnitChosenBy(line.Parameter);
        if (chooser is null || sheet.Lines.FirstOrDefault(l => l.Number == chooser && Differs(l)) is not { } open)
        {
            return false;
        }

        LeftOut(line, $"not entered, since it stands in a unit that {open.Parameter} chooses, and that is not as the sheet asks");
        return true;
    }

    /// <summary>Whether a value was entered and not left out.</summary>
    public bool WasWritten(EntryLine line) => outcomes.ContainsKey(line.Number) && !leftOut.Contains(line.Number);

    /// <summary>The lines' fate; each stands in exactly one of the four lists.</summary>
    public EntryReport Report(EntryEnding ending)
    {
        var fates = sheet.Lines.Select(line => (line.Number, Fate: Fate(line, ending))).ToList();
        return new()
        {
            Ending = ending,
            Resumed = Resumed,
            Written = [.. sheet.Lines.Where(l => WasWritten(l) && !earlier.Contains(l.Number)).Select(l => l.Number)],
            WrittenBefore = [.. sheet.Lines.Where(l => WasWritten(l) && earlier.Contains(l.Number)).Select(l => l.Number)],
            Verified = [.. fates.Where(f => f.Fate is WriteOutcome.Verified).Select(f => f.Number)],
            VerifiedByEye = [.. fates.Where(f => f.Fate is WriteOutcome.VerifiedByEye).Select(f => f.Number)],
            Skipped = [.. fates.Where(f => f.Fate is null).Select(f => f.Number)],
            Failed = [.. fates.Where(f => f.Fate is not (null or WriteOutcome.Verified or WriteOutcome.VerifiedByEye)).Select(f => new FailedLine(f.Number, f.Fate!))],
            Left = sheet.Left,
            PowerCycle = PowerCycle,
            RunSource = RunSource,
        };
    }

    // Null: it held the sheet's value from the start and none was written.
    private WriteOutcome? Fate(EntryLine line, EntryEnding ending) => (outcomes.GetValueOrDefault(line.Number), Held(line.Number)) switch
    {
        (null, { } raw) when raw == line.Raw => null,
        (null, { } raw) => new WriteOutcome.Differs(raw, $"not written: {Why(ending)}"),
        (null, null) => new WriteOutcome.Unverified(EverRead ? $"the drive does not give its value, and it was not written: {Why(ending)}" : $"nothing was entered: {Why(ending)}"),
        (WriteOutcome.VerifiedByEye seen, { } raw) when raw == line.Raw => seen,
        (not null, { } raw) when raw == line.Raw => new WriteOutcome.Verified(),
        (WriteOutcome.Verified, { } raw) => new WriteOutcome.Differs(raw, "it was verified after its write, and a later reading differs"),
        (WriteOutcome.Verified, null) => new WriteOutcome.Unverified("it was verified after its write, and a later reading failed"),
        (WriteOutcome.VerifiedByEye, { } raw) => new WriteOutcome.Differs(raw, "it was seen after its entry, and a later look shows another value"),
        (WriteOutcome.VerifiedByEye, null) => new WriteOutcome.Unverified("it was seen after its entry, and not found by a later look"),
        var (outcome, _) => outcome,
    };

    private static string Why(EntryEnding ending) => ending switch
    {
        EntryEnding.RefusedForSafety refused => refused.Why,
        EntryEnding.LinkFailed lost => lost.Why,
        EntryEnding.Interrupted => "the entry was interrupted before its turn",
        EntryEnding.AwaitsPowerCycle awaits => awaits.Why,
        _ => "the entry ended before its turn",
    };
}
