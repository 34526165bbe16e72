using System.Globalization;
using Runup.Commissioning.Plan;
using Runup.Settings;

namespace Runup.Cli.Plan;

/// <summary>Settings in the vocabulary's units and words.</summary>
internal static class SettingWords
{
    internal static double InUnit(Setting setting, double si) => setting.Form is SettingForm.Numeric numeric ? si / numeric.SiPerUnit : si;

    internal static string Unit(Setting setting) => setting.Form is SettingForm.Numeric numeric ? numeric.Unit : "";

    /// <summary>The unit beside a value; a pure number has none, since "4 1" is read as forty-one.</summary>
    internal static string UnitInWords(Setting setting) => Unit(setting) is "1" ? "" : Unit(setting);

    internal static string Value(Setting setting, SettingValue value) => value switch
    {
        SettingValue.Number number => InUnit(setting, number.Si).ToString("G5", CultureInfo.InvariantCulture),
        SettingValue.Choice choice => choice.Name,
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "There is no such value."),
    };

    internal static string Word(this Rank rank) => rank switch
    {
        Rank.Must => "must",
        Rank.Should => "should",
        Rank.May => "may",
        _ => throw new ArgumentOutOfRangeException(nameof(rank), rank, "There is no such rank."),
    };
}
