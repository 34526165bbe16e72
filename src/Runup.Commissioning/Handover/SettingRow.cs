using System.Globalization;
using Runup.Commissioning.Plan;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>A make-independent setting with its reason, for a reader.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">Its value with unit.</param>
/// <param name="Rank">How much it matters.</param>
/// <param name="Reason">Why this value.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Bounds">What else would do, or null.</param>
/// <param name="EnteredAs">The drive's parameters that carry it, or why none does.</param>
public sealed record SettingRow(string Name, string Value, Rank Rank, string Reason, string Source, string? Bounds, string EnteredAs)
{
    /// <summary>The rows of a plan.</summary>
    public static IReadOnlyList<SettingRow> Of(SettingsPlan plan, IReadOnlyList<SheetLine> sheet)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Lines.Select(line => new SettingRow(
            line.Setting.Name, Text(line.Setting.Form, line.Value), line.Rank, line.Reason, line.Source, Between(line), Entered(line.Setting, sheet)))];
    }

    private static string Text(SettingForm form, SettingValue value) => (form, value) switch
    {
        (_, SettingValue.Choice choice) => choice.Name,
        (SettingForm.Numeric numeric, SettingValue.Number number) => Number(numeric, number.Si),
        _ => value.ToString(),
    };

    private static string Number(SettingForm.Numeric form, double si) => form.Unit switch
    {
        "W" => BothUnits.Write(Dimension.Power, si),
        "1" => Plain(si / form.SiPerUnit),
        var unit => $"{Plain(si / form.SiPerUnit)} {unit}",
    };

    // Four digits, and a large number whole: a bit rate is no approximation.
    private static string Plain(double value) => value.ToString(Math.Abs(value) >= 1000 ? "0" : "G4", CultureInfo.InvariantCulture);

    private static string? Between(PlannedSetting line) => line.Setting.Form is not SettingForm.Numeric form ? null : (line.Low, line.High) switch
    {
        ({ } low, { } high) => $"{Number(form, low)} to {Number(form, high)}",
        ({ } low, null) => $"at least {Number(form, low)}",
        (null, { } high) => $"at most {Number(form, high)}",
        _ => null,
    };

    private static string Entered(Setting setting, IReadOnlyList<SheetLine> sheet)
    {
        var lines = sheet.Where(l => l.Settings.Contains(setting)).ToList();
        return lines.Count == 0 ? "not on the sheet" : string.Join("; ", lines.Select(Entered));
    }

    private static string Entered(SheetLine line) => line switch
    {
        { Parameter: { } parameter, Display: { } display } => $"{parameter.Number} {parameter.Name} = {display} {line.Unit}".TrimEnd(),
        { Parameter: { } parameter } => $"{parameter.Number} {parameter.Name}: {line.Note ?? "a person has to choose its value"}",
        _ => line.Note ?? "the drive has no parameter for it",
    };
}
