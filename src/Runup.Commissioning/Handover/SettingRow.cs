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
    private const int Given = 4;
    private const int WorkedOut = 3;

    /// <summary>The rows of a plan.</summary>
    public static IReadOnlyList<SettingRow> Of(SettingsPlan plan, IReadOnlyList<SheetLine> sheet)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Lines.Select(line => new SettingRow(
            line.Setting.Name, Text(line.Setting.Form, line.Value, DigitsOf(line)), line.Rank, line.Reason, line.Source, Between(line), Entered(line.Setting, sheet)))];
    }

    private static string Text(SettingForm form, SettingValue value, int digits) => (form, value) switch
    {
        (_, SettingValue.Choice choice) => choice.Name,
        (SettingForm.Numeric numeric, SettingValue.Number number) => Number(numeric, number.Si, digits),
        _ => value.ToString(),
    };

    private static string Number(SettingForm.Numeric form, double si, int digits) => form.Unit switch
    {
        "W" => BothUnits.Write(Dimension.Power, si),
        "1" => Plain(si / form.SiPerUnit, digits),
        var unit => $"{Plain(si / form.SiPerUnit, digits)} {unit}",
    };

    // A large number whole: a bit rate is no approximation.
    private static string Plain(double value, int digits) => Math.Abs(value) >= 1000
        ? value.ToString("0", CultureInfo.InvariantCulture)
        : value.ToString(digits == Given ? "G4" : "G3", CultureInfo.InvariantCulture);

    // What plate and job file say stands as they say it; what is worked out is no better than three digits.
    private static int DigitsOf(PlannedSetting line) =>
        line.Source.StartsWith("motor plate", StringComparison.Ordinal) || line.Source.StartsWith("job file", StringComparison.Ordinal) ? Given : WorkedOut;

    private static string? Between(PlannedSetting line) => line.Setting.Form is not SettingForm.Numeric form ? null : (line.Low, line.High) switch
    {
        ({ } low, { } high) when low.Equals(high) => $"{Bound(form, line, low, Math.Ceiling)} only",
        ({ } low, { } high) => $"{Bound(form, line, low, Math.Ceiling)} to {Bound(form, line, high, Math.Floor)}",
        ({ } low, null) => $"at least {Bound(form, line, low, Math.Ceiling)}",
        (null, { } high) => $"at most {Bound(form, line, high, Math.Floor)}",
        _ => null,
    };

    // Rounded to the side that still would do; where the value itself is the bound, as the value.
    private static string Bound(SettingForm.Numeric form, PlannedSetting line, double si, Func<double, double> inwards) =>
        line.Value is SettingValue.Number value && value.Si.Equals(si) ? Number(form, si, DigitsOf(line)) : Number(form, Rounded(si / form.SiPerUnit, inwards) * form.SiPerUnit, WorkedOut);

    private static double Rounded(double value, Func<double, double> inwards)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - (WorkedOut - 1));
        return inwards(Math.Round(value / step, 6)) * step;
    }

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
