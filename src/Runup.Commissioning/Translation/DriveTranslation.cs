using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Translation;

/// <summary>An old drive's values as settings, and these in a new drive's parameters.</summary>
/// <remarks>
/// What the old drive says is taken as it stands: it ran the machine. What the new drive asks for and the old one does not say comes from the
/// job's plan where the plan decides it. No value is made up.
/// </remarks>
public sealed record DriveTranslation
{
    private DriveTranslation()
    {
    }

    /// <summary>The settings, those of the new drive in its order of entry; then what it does not offer, and what nobody could read.</summary>
    public required IReadOnlyList<TranslatedSetting> Rows { get; init; }

    /// <summary>What the new drive is to hold, over its factory values.</summary>
    public required HeldState New { get; init; }

    /// <summary>Translates.</summary>
    /// <param name="old">What the old drive holds.</param>
    /// <param name="profile">The new drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="plan">What the job decides; null where there is no job.</param>
    public static DriveTranslation Of(HeldState old, DriveProfile profile, DriveSize size, SettingsPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(old);
        var said = Said(old);
        var asked = Asked(said, profile, plan);
        var factory = ParameterValues.Defaults(profile, size);
        var lines = Profiles.Sheet.For(profile, size, said.With(asked), factory);
        var after = new HeldState(profile, size, Profiles.Sheet.After(profile, size, lines, factory));
        var rows = from line in lines
                   from setting in line.Settings
                   group line by setting into of
                   select Row(of.Key, [.. of], old, after, plan);
        return new()
        {
            Rows = [.. rows, .. Essential(said, asked, profile, after), .. Unread(old, asked)],
            New = after,
        };
    }

    private static SettingSet Said(HeldState old) =>
        Setting.All.Aggregate(SettingSet.Empty, (set, setting) => old.Of(setting) is { } value ? set.With(setting, value) : set);

    // A setting whose words on the old drive have no counterpart may still be planned.
    private static SettingSet Asked(SettingSet said, DriveProfile profile, SettingsPlan? plan) =>
        (plan?.Lines ?? []).Where(l => said[l.Setting] is null && profile.Carrying(l.Setting).Any(p => p.IsKept)).Aggregate(SettingSet.Empty, (set, l) => set.With(l.Setting, l.Value));

    private static TranslatedSetting Row(Setting setting, IReadOnlyList<SheetLine> lines, HeldState old, HeldState after, SettingsPlan? plan)
    {
        var fate = FateOf(setting, lines, old);
        return new()
        {
            Setting = setting,
            Old = Shown(setting, old),
            New = [.. lines.Where(l => l.Parameter is not null).Select(l => new TranslatedParameter(l.Parameter!, l.Raw is null ? null : after.Shown(l.Parameter!)))],
            Fate = fate,
            Note = fate switch
            {
                Fate.NotOffered => Instead.Of([setting]),
                Fate.Required => $"not known from the old drive; as the job plans it: {plan?[setting]?.Reason}",
                Fate.NeedsDecision when old.Of(setting) is null => $"what the old drive shows says no value; the job plans one: {plan?[setting]?.Reason}",
                _ => Joined(lines.Select(l => l.Note)),
            },
        };
    }

    private static Fate FateOf(Setting setting, IReadOnlyList<SheetLine> lines, HeldState old) => lines switch
    {
        [{ Mapping: Mapping.NotOffered }] => Fate.NotOffered,
        _ when lines.Any(l => l.Raw is null || l.Fit is Fit.OutOfRange) => Fate.NeedsDecision,
        _ when old.Of(setting) is null => old.Carrying(setting).Any() ? Fate.NeedsDecision : Fate.Required,
        _ when lines.Count == 1 && lines[0].Mapping is Mapping.Direct && old.Carrying(setting).All(IsDirect) => Fate.Kept,
        _ => Fate.Converted,
    };

    private static bool IsDirect(Parameter parameter) => parameter.Meaning is Meaning.Quantity { Conversion: Conversion.Direct } or Meaning.Choice { Chosen.Count: 1 };

    // Neither drive nor job says it, and the job cannot be done without.
    private static IEnumerable<TranslatedSetting> Essential(SettingSet said, SettingSet asked, DriveProfile profile, HeldState after) =>
        from setting in Essentials.All
        where said[setting] is null && asked[setting] is null
        let carrying = profile.Carrying(setting).Where(p => p.IsKept).ToList()
        where carrying.Count > 0
        select new TranslatedSetting
        {
            Setting = setting,
            New = [.. carrying.Select(p => new TranslatedParameter(p, after.Shown(p)))],
            Fate = Fate.Required,
            Note = "neither the old drive nor the job says it; what stands here is from the factory",
        };

    /// <summary>What was changed on the old drive and says nothing that another make could be told.</summary>
    private static IEnumerable<TranslatedSetting> Unread(HeldState old, SettingSet asked) =>
        from parameter in old.Profile.Parameters
        where parameter.IsKept && old.Of(parameter) is { } raw && raw != old.Profile.Default(parameter, old.Size, old.Values)
        let meant = parameter.Meaning?.Settings ?? []
        where meant.Count == 0 || meant.Any(s => old.Of(s) is null && asked[s] is null)
        select new TranslatedSetting
        {
            Setting = meant is [var only] ? only : null,
            Old = [new(parameter, old.Shown(parameter))],
            Fate = Fate.NeedsDecision,
            Note = $"{parameter.Number} {parameter.Name} was changed from the factory's and has no make-independent meaning in the profile; look in both manuals",
        };

    private static List<TranslatedParameter> Shown(Setting setting, HeldState state) => [.. state.Carrying(setting).Select(p => new TranslatedParameter(p, state.Shown(p)))];

    private static string? Joined(IEnumerable<string?> notes) => notes.OfType<string>().Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } said ? string.Join("; ", said) : null;
}
