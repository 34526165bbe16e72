using Runup.Profiles;

namespace Runup.Commissioning.Handover;

/// <summary>All parameters of a drive that a record keeps, in the make's own order.</summary>
public static class ParameterTable
{
    /// <summary>The rows.</summary>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="story">What the record tells.</param>
    /// <param name="sheet">What was to be entered.</param>
    public static IReadOnlyList<ParameterRow> Of(DriveProfile profile, DriveSize size, RecordStory story, IReadOnlyList<SheetLine> sheet)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(story);
        var found = Known(story.AsFound?.Body.Values ?? new Dictionary<string, long?>(StringComparer.Ordinal));
        var left = ParameterValues.From(story.AsLeft);
        var defaults = ParameterValues.Defaults(profile, size);
        var wanted = sheet.Where(l => l is { Parameter: not null, Raw: not null, Mapping: not null }).ToDictionary(l => l.Parameter!.Number, l => l.Raw!.Value, StringComparer.Ordinal);
        var after = left.With(ParameterValues.From(wanted));
        return [.. profile.Parameters.Where(p => p.IsKept).Select(p => Row(p, (found, left, defaults, after), wanted, story))];
    }

    private static ParameterRow Row(
        Parameter p, (ParameterValues Found, ParameterValues Left, ParameterValues Defaults, ParameterValues After) values, Dictionary<string, long> wanted, RecordStory story)
    {
        var (found, left, fromFactory) = (values.Found[p.Number], values.Left[p.Number], values.Defaults[p.Number]!.Value);
        long? asked = wanted.TryGetValue(p.Number, out var raw) ? raw : null;
        var write = story.Entry.Writes.GetValueOrDefault(p.Number);
        return new()
        {
            Number = p.Number,
            Name = p.Name,
            Default = Shown(p, fromFactory, values.Defaults)!,
            AsFound = Shown(p, found, values.Found),
            AsLeft = Shown(p, left, values.Left),
            Raw = left,
            Wanted = Shown(p, asked, values.After),
            IsChanged = found is not null && left is not null && found != left,
            DiffersFromDefault = left != fromFactory,
            DiffersFromSheet = asked is not null && asked != left,
            LastWritten = write is null ? null : Shown(p, write.Raw, values.Left.With(p.Number, write.Raw)),
            IsKept = asked is null ? null : IsKept(p, asked, story.Entry),
            Written = write?.Outcome,
            SeenBy = story.ByEye.GetValueOrDefault(p.Number),
            IsNotLookedAt = left is null && write is null && story.AsFound is { } first && !first.Body.Values.ContainsKey(p.Number),
            Why = write is null or { IsProved: true } ? null : write.Ended?.Why ?? "the record breaks off before its end",
        };
    }

    // By eye only those are looked at again that were entered.
    private static bool? IsKept(Parameter p, long? asked, EntryStory entry) =>
        entry.Kept is { Body: { SeenBy: not null } kept } && !kept.Values.ContainsKey(p.Number) ? null : entry.Kept?.Body.Values.GetValueOrDefault(p.Number) == asked;

    private static string? Shown(Parameter p, long? raw, ParameterValues values) =>
        raw is { } known ? DisplayText.Shown(p, known, values).Text : null;

    private static ParameterValues Known(IReadOnlyDictionary<string, long?> values) =>
        ParameterValues.From(values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value)));
}
