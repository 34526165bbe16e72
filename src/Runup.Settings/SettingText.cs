using System.Globalization;

namespace Runup.Settings;

/// <summary>A setting's value for people, in the vocabulary's unit.</summary>
public static class SettingText
{
    /// <summary>The value with its unit; a choice by its name.</summary>
    public static string Of(Setting setting, SettingValue value) => value switch
    {
        SettingValue.Number number => Number(setting, number.Si),
        SettingValue.Choice choice => choice.Name,
        _ => throw new InvalidOperationException("Every kind of value is told apart."),
    };

    /// <summary>A number of the setting, given in SI, in its unit.</summary>
    public static string Number(Setting setting, double si, int digits = 6)
    {
        ArgumentNullException.ThrowIfNull(setting);
        var (unit, siPerUnit) = setting.Form is SettingForm.Numeric n ? (n.Unit is "1" ? "" : " " + n.Unit, n.SiPerUnit) : ("", 1);
        return (si / siPerUnit).ToString(string.Create(CultureInfo.InvariantCulture, $"G{digits}"), CultureInfo.InvariantCulture) + unit;
    }
}
