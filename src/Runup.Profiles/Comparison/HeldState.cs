using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What a drive of a known size holds, or would hold.</summary>
/// <param name="Profile">The drive's profile.</param>
/// <param name="Size">Its size.</param>
/// <param name="Values">What its parameters hold; those that are not known are left out.</param>
public sealed record HeldState(DriveProfile Profile, DriveSize Size, ParameterValues Values)
{
    private SettingSet? settings;

    // A changed copy must not keep what was read from the old values.
    private HeldState(HeldState other) => (Profile, Size, Values, SpeaksOf) = (other.Profile, other.Size, other.Values, other.SpeaksOf);

    /// <summary>The parameters that it speaks of; null for all that are known. Of a plan, those that the plan decides.</summary>
    public IReadOnlySet<string>? SpeaksOf { get; init; }

    /// <summary>What all of it says in make-independent settings, also what it only takes for granted.</summary>
    public SettingSet Settings => settings ??= SettingsReader.Read(Profile, Size, Values);

    /// <summary>The value of a parameter in counts, if it speaks of it.</summary>
    public long? Of(Parameter parameter) => SpeaksOf?.Contains(parameter.Number) is false ? null : Values[parameter.Number];

    /// <summary>The value of a setting, if it speaks of a parameter that carries it.</summary>
    public SettingValue? Of(Setting setting) => Carrying(setting).Any() ? Settings[setting] : null;

    /// <summary>The parameters that carry a setting and of which it speaks.</summary>
    public IEnumerable<Parameter> Carrying(Setting setting) => Profile.Carrying(setting).Where(p => p.IsKept && Of(p) is not null);

    /// <summary>What the display shows of a parameter, with its unit; null where it does not speak of it.</summary>
    public string? Shown(Parameter parameter) => Of(parameter) is { } raw ? DisplayText.Shown(parameter, raw, Values).Text : null;

    /// <summary>
    /// This state laid over another: what it does not speak of is as there, or from the factory where the other is of another
    /// family or does not know it either. What it speaks of stays.
    /// </summary>
    public HeldState Over(HeldState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var spoken = Profile.Parameters.Where(p => Of(p) is not null).Select(p => p.Number).ToHashSet(StringComparer.Ordinal);
        var below = ParameterValues.Defaults(Profile, Size);
        below = IsOfFamily(other) ? below.With(other.Values) : below.With(Values);
        return new(Profile, Size, below.With(ParameterValues.From(spoken.Select(n => KeyValuePair.Create(n, Values[n]!.Value))))) { SpeaksOf = spoken };
    }

    /// <summary>Whether the other is a drive of the same family, so that numbers mean the same.</summary>
    public bool IsOfFamily(HeldState other) => string.Equals(Profile.Family, other?.Profile.Family, StringComparison.Ordinal);

    /// <summary>This state with one setting as it can best be said on this drive.</summary>
    public SettingValue? Saying(Setting setting, SettingValue value)
    {
        var lines = Sheet.For(Profile, Size, SettingSet.Empty.With(setting, value), Values);
        return lines.Any(l => l.Parameter is null || l.Raw is null || l.Fit is Fit.OutOfRange)
            ? null
            : SettingsReader.Read(Profile, Size, Sheet.After(Profile, Size, lines, Values))[setting];
    }
}
