using Runup.Profiles;
using Runup.Settings;

namespace Runup.Cli.DriveProfiles;

/// <summary>A parameter in the words of a table.</summary>
internal static class ParameterWords
{
    internal static string Values(DriveProfile profile, Parameter parameter, DriveSize size, ParameterValues held)
    {
        if (parameter.Form is ParameterForm.Choices choices)
        {
            return string.Join(", ", choices.Values.Select(v => v.Label));
        }

        var form = (ParameterForm.Numeric)parameter.Form;
        var range = profile.Range(parameter, size, held);
        var unit = DisplayText.Unit(parameter, held) is { } u ? " " + u : "";
        var specials = form.Specials.Select(s => ", " + DisplayText.Of(parameter, s.Raw, held));
        return $"{DisplayText.Of(parameter, range.Low, held)} to {DisplayText.Of(parameter, range.High, held)}{unit}{string.Concat(specials)}";
    }

    internal static string Access(ParameterAccess access) => access switch
    {
        ParameterAccess.AnyTime => "any time",
        ParameterAccess.StoppedOnly => "stopped",
        ParameterAccess.ReadOnly => "reading",
        ParameterAccess.Action => "acts once",
        ParameterAccess.Command => "command",
        _ => throw new ArgumentOutOfRangeException(nameof(access), access, null),
    };

    internal static string Meaning(Parameter parameter) => parameter.Meaning switch
    {
        null when parameter.Perhaps.Count > 0 => "perhaps " + string.Join(" with ", parameter.Perhaps.Select(s => s.Name)) + " (not confirmed)",
        null => "",
        Meaning.Quantity q => q.Setting.Name + Conversion(q.Conversion),
        var m => string.Join(" with ", m.Settings.Select((Setting s) => s.Name)),
    };

    private static string Conversion(Conversion conversion) => conversion switch
    {
        Runup.Profiles.Conversion.Direct => "",
        Runup.Profiles.Conversion.CountedOver c => $", counted to {(c.Frequency is Basis.Of of ? $"the frequency of {of.Parameter}" : $"{c.Frequency}")}",
        Runup.Profiles.Conversion.PartOf p => $", as a part of {Whole(p.Whole)}",
        Runup.Profiles.Conversion.Absolute a => $", where the setting is a part of {Whole(a.Whole)}",
        Runup.Profiles.Conversion.NoSlipSpeed => ", as speed at no slip",
        Runup.Profiles.Conversion.BelowSynchronous => ", as rated slip",
        Runup.Profiles.Conversion.OfRatedSlip => ", as a slip",
        Runup.Profiles.Conversion.SpeedChange s => $", as change of speed in the time of {s.Time}",
        Runup.Profiles.Conversion.ChangeTime t => $", as time for the change of speed of {t.Speed}",
        _ => throw new ArgumentOutOfRangeException(nameof(conversion), conversion, null),
    };

    private static string Whole(Basis whole) => whole is Basis.Of of ? of.Parameter : whole.ToString();
}
