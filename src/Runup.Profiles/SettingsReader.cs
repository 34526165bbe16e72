using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What a drive's parameters say in make-independent settings: the inverse of the sheet.</summary>
public static class SettingsReader
{
    /// <summary>The settings that the values say; a parameter that is not known, or whose value has no counterpart, says nothing.</summary>
    public static SettingSet Read(DriveProfile profile, DriveSize size, ParameterValues values)
    {
        var at = new Surroundings(profile, size, values);
        var settings = SettingSet.Empty;
        foreach (var parameter in profile.Parameters)
        {
            if (!parameter.IsKept || values[parameter.Number] is not { } raw)
            {
                continue;
            }

            foreach (var (setting, value) in SettingCodec.Decode(at, parameter, raw))
            {
                settings = settings.With(setting, value);
            }
        }

        return settings;
    }
}
