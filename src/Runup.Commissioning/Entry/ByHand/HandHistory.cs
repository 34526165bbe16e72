using System.Collections.Immutable;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>What a set's record tells a person who goes on by hand: what each parameter showed last, and what was looked at already.</summary>
internal sealed record HandHistory
{
    private readonly DriveProfile profile;
    private readonly string identity;

    private HandHistory(DriveProfile profile) => (this.profile, identity) = (profile, Identity(profile));

    /// <summary>The last value known of each parameter of this drive.</summary>
    public ImmutableDictionary<string, long> Known { get; private init; } = ImmutableDictionary.Create<string, long>(StringComparer.Ordinal);

    /// <summary>Whether a look at the drive was finished, and no entry ended since.</summary>
    public bool LookedThrough { get; private init; }

    /// <summary>What was seen, or left out, in a look that was broken off.</summary>
    public ImmutableDictionary<string, long?> HalfLook { get; private init; } = ImmutableDictionary.Create<string, long?>(StringComparer.Ordinal);

    /// <summary>What is known as the codec wants it.</summary>
    public ParameterValues Values => ParameterValues.From(Known);

    /// <summary>What a profile's drive is called in the record: as over a link, so that both ways tell of one drive.</summary>
    public static string Identity(DriveProfile profile) =>
        profile.Identity is { } says ? $"{says.Vendor} {says.Product} {says.Revision}".Trim() : profile.Title;

    /// <summary>Folds a set's record, oldest first.</summary>
    public static HandHistory Of(DriveProfile profile, IEnumerable<Recorded> record) =>
        record.Aggregate(new HandHistory(profile), (history, entry) => history.And(entry.Body));

    private HandHistory And(RecordBody body) => body switch
    {
        RecordBody.ParametersRead read when !string.Equals(read.Identity, identity, StringComparison.Ordinal) => new HandHistory(profile),
        RecordBody.ParametersRead read => With(read.Values) with { LookedThrough = true, HalfLook = HalfLook.Clear() },
        RecordBody.ParameterSeen { Moment: Moments.AfterWrite } seen => Hold(seen.Parameter, seen.Raw),
        RecordBody.ParameterSeen seen => Hold(seen.Parameter, seen.Raw) with { HalfLook = HalfLook.SetItem(seen.Parameter, seen.Raw) },
        RecordBody.WriteIntended intended => Doubt(intended).Hold(intended.Parameter, null) with { HalfLook = HalfLook.Clear() },
        RecordBody.WriteEnded ended => Hold(ended.Parameter, ended.ReadBack),
        RecordBody.PowerCycleSeen or RecordBody.EntryBegun { Resumed: false } => this with { HalfLook = HalfLook.Clear() },
        RecordBody.EntryEnded => this with { LookedThrough = false },
        _ => this,
    };

    // Cut off just then, nobody says what has become of those that stand in its unit or that it sets to their factory values.
    private HandHistory Doubt(RecordBody.WriteIntended intended) => intended.Before == intended.Raw || profile.Find(intended.Parameter) is not { } written
        ? this
        : EntryOrder.MovedBy(profile, written).Aggregate(this, (history, dependent) => history.Hold(dependent.Number, null));

    private HandHistory With(IReadOnlyDictionary<string, long?> values) => values.Aggregate(this, (history, value) => history.Hold(value.Key, value.Value));

    private HandHistory Hold(string number, long? value) => this with { Known = value is { } raw ? Known.SetItem(number, raw) : Known.Remove(number) };
}
