using Runup.Profiles;
using Runup.Settings;

namespace Runup.SimulatedDrive;

/// <summary>What a drive remembers: parameters at work, and those that it keeps through power-off.</summary>
/// <param name="profile">The drive's family.</param>
/// <param name="size">Its size.</param>
public sealed class DriveMemory(DriveProfile profile, DriveSize size)
{
    private readonly IReadOnlyList<Parameter> waiting = [.. profile.Parameters.Where(p => p.NeedsRestart)];
    private ParameterValues kept = ParameterValues.Defaults(profile, size);
    private ParameterValues atPowerOn = ParameterValues.Defaults(profile, size);

    /// <summary>The values as they are read back.</summary>
    public ParameterValues Values { get; private set; } = ParameterValues.Defaults(profile, size);

    /// <summary>The make-independent settings that the values at work mean: of what acts only after off and on, the values that power returned to.</summary>
    public SettingSet Settings { get; private set; } = SettingsReader.Read(profile, size, ParameterValues.Defaults(profile, size));

    /// <summary>Takes a value at work; whether it may was asked before.</summary>
    public void Take(Parameter parameter, long raw)
    {
        Use(profile.Written(parameter, raw, size, Values));
        if (profile.Store is null)
        {
            kept = Values;
        }
    }

    /// <summary>Keeps all values that can be kept.</summary>
    public void Keep() =>
        kept = kept.With(ParameterValues.From(
            from parameter in profile.Parameters
            where parameter.Stored && Values[parameter.Number] is not null
            select KeyValuePair.Create(parameter.Number, Values[parameter.Number]!.Value)));

    /// <summary>Power returns: what was not kept is lost.</summary>
    public void LosePower()
    {
        atPowerOn = kept;
        Use(kept);
    }

    /// <summary>Puts values to work.</summary>
    internal void Use(ParameterValues values)
    {
        Values = values;
        Settings = SettingsReader.Read(profile, size, waiting.Aggregate(values, (at, p) => at.With(p.Number, atPowerOn[p.Number]!.Value)));
    }
}
