using System.Globalization;
using Runup.Quantities;

namespace Runup.Reports.Handover;

/// <summary>Readings with as many digits as their unit is read with on site.</summary>
internal static class Numbers
{
    /// <summary>A value with its unit; a dash where there is none.</summary>
    public static string Of(double? value, string unit) => value is { } number ? $"{Digits(number, unit)} {Symbol(unit)}".TrimEnd() : "–";

    /// <summary>The digits alone.</summary>
    public static string Digits(double value, string unit)
    {
        if (!double.IsFinite(value))
        {
            return "not a number";
        }

        var text = value.ToString(Format(unit, Math.Abs(value)), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text;
    }

    /// <summary>Low and high with one unit; null where neither is given.</summary>
    public static string? Between(double? low, double? high, string unit) => (low, high) switch
    {
        ({ } l, { } h) => $"{Digits(l, unit)} to {Digits(h, unit)} {Symbol(unit)}".TrimEnd(),
        ({ } l, null) => $"at least {Of(l, unit)}",
        (null, { } h) => $"at most {Of(h, unit)}",
        _ => null,
    };

    /// <summary>A current's part of the rated one.</summary>
    public static string? PercentOf(double? value, string unit, LineCurrent rated) =>
        value is { } amperes && unit is "A" && rated.Amperes > 0 ? string.Create(CultureInfo.InvariantCulture, $"{100 * amperes / rated.Amperes:0} %") : null;

    /// <summary>A figure of a finding: four digits, its unit.</summary>
    public static string Figure(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:G4} {Symbol(unit)}").TrimEnd();

    /// <summary>Value and limit of a finding behind a colon; nothing where there are none.</summary>
    public static string Against(double? value, double? limit, string? unit) => (value, limit, unit) switch
    {
        ({ } v, { } l, { } u) => $": {Figure(v, u)} against {Figure(l, u)}",
        ({ } v, null, { } u) => $": {Figure(v, u)}",
        _ => string.Empty,
    };

    /// <summary>A time with its offset, to the second.</summary>
    public static string Of(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture);

    private static string Symbol(string unit) => unit is "1" ? string.Empty : unit;

    private static string Format(string unit, double size) => unit switch
    {
        "Hz" => "F2",
        "A" => size < 10 ? "F2" : "F1",
        "V" or "rpm" => "F0",
        "%" => "F1",
        "s" => size < 10 ? "F2" : "F1",
        _ => "G4",
    };
}
