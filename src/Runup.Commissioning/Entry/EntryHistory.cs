using System.Collections.Immutable;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>What the record of a set tells about entry: what was found first, and an entry that was cut off.</summary>
public sealed record EntryHistory
{
    private bool written;

    private EntryHistory()
    {
    }

    /// <summary>Nothing recorded.</summary>
    public static EntryHistory Empty { get; } = new();

    /// <summary>The first values read of each drive, by what it says it is; never overwritten by later ones.</summary>
    public ImmutableDictionary<string, ParameterValues> AsFound { get; private init; } = ImmutableDictionary.Create<string, ParameterValues>(StringComparer.Ordinal);

    /// <summary>The entry that was begun and not ended, or null.</summary>
    public OpenEntry? Open { get; private init; }

    /// <summary>Folds a set's record, oldest first.</summary>
    public static EntryHistory Of(IEnumerable<Recorded> record) => record.Aggregate(Empty, (history, entry) => history.And(entry.Body));

    /// <summary>This history and one entry of the record more.</summary>
    public EntryHistory And(RecordBody body) => body switch
    {
        RecordBody.ParametersRead { Moment: Moments.AsFound } read when !AsFound.ContainsKey(read.Identity) =>
            this with { AsFound = AsFound.Add(read.Identity, Known(read)) },
        // What a person did not look at first is still as found when it is read later, as long as nothing was written.
        RecordBody.ParametersRead read when !written && AsFound.TryGetValue(read.Identity, out var first) =>
            this with { AsFound = AsFound.SetItem(read.Identity, Known(read).With(first)) },
        RecordBody.WriteIntended intended => this with { written = true, Open = Open?.And(intended) },
        RecordBody.EntryBegun { Resumed: true } begun when Open is { } open => this with { Open = open with { SheetSha256 = begun.SheetSha256 } },
        RecordBody.EntryBegun begun => this with { Open = new(begun.SheetSha256) },
        RecordBody.EntryEnded => this with { Open = null },
        _ => Open is null ? this : this with { Open = Open.And(body) },
    };

    private static ParameterValues Known(RecordBody.ParametersRead read) => ParameterValues.From(
        read.Values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value)));
}

/// <summary>An entry that was begun and not ended.</summary>
/// <param name="SheetSha256">Checksum of its sheet.</param>
public sealed record OpenEntry(string SheetSha256)
{
    /// <summary>How each write ended, by parameter number, the last one of each.</summary>
    public ImmutableDictionary<string, string> Ended { get; init; } = ImmutableDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>The write that was begun and of which nobody knows how it ended, or null.</summary>
    public RecordBody.WriteIntended? UnderWay { get; init; }

    /// <summary>Whether the drive was told to keep what is in it now.</summary>
    public bool Stored { get; init; }

    /// <summary>Whether it was off and on again since the last write: what it holds now, it keeps.</summary>
    public bool PowerCycled { get; init; }

    /// <summary>This entry and one entry of the record more.</summary>
    public OpenEntry And(RecordBody body) => body switch
    {
        RecordBody.WriteIntended intended => this with { UnderWay = intended, Stored = false, PowerCycled = false },
        RecordBody.WriteEnded ended => this with { Ended = Ended.SetItem(ended.Parameter, ended.Outcome), UnderWay = null },
        RecordBody.StoreAsked { Outcome: StoreOutcomes.Accepted or StoreOutcomes.NotNeeded or StoreOutcomes.ByHand } => this with { Stored = true },
        RecordBody.PowerCycleSeen => this with { PowerCycled = true },
        _ => this,
    };
}
