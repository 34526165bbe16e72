using System.Globalization;
using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>Nominal efficiencies of the classes IE1 to IE4 for single-speed induction motors of 0.12 kW to 1000 kW, 2 to 8 poles.</summary>
/// <remarks>
/// 50 Hz, IE2 to IE4, 0.12 kW to 200 kW: η = A x³ + B x² + C x + D per cent, x = lg(P / 1 kW), rounded to 0.1. 50 Hz, IE1: the tabulated outputs,
/// between them linear in lg P (an assumption). 60 Hz: IE3 only; no interpolation, from the midpoint of two tabulated outputs the upper one. Above 200 kW
/// the rows printed for those outputs. Elsewhere none.
/// </remarks>
[Source("iec-60034-30-1", "Tables of nominal efficiencies; interpolation coefficients")]
[Source("nema-mg-1", "Tables 12-11 and 12-12")]
public static class EfficiencyClass
{
    /// <summary>Name of the class of NEMA MG 1 Table 12-11.</summary>
    public const string EnergyEfficient = "ENERGY EFFICIENT";

    private const string Premium = "PREMIUM";
    private const double KilowattsPerHorsepower = 0.74569987158227;
    private const double InterpolatedUpTo_kW = 200;
    private const string Source50 = "IEC 60034-30-1, 50 Hz";
    private const string Source60 = "IEC 60034-30-1, 60 Hz";

    private static readonly Lazy<StandardTable> Nema1211 = new(() => StandardTable.Read("nema-mg1-12-11"));
    private static readonly Lazy<StandardTable> Nema1212 = new(() => StandardTable.Read("nema-mg1-12-12"));
    private static readonly Lazy<StandardTable> Coefficients = new(() => StandardTable.Read("iec-60034-30-1-coefficients-50hz"));
    private static readonly Lazy<StandardTable> Efficiencies50 = new(() => StandardTable.Read("iec-60034-30-1"));
    private static readonly Lazy<StandardTable> Efficiencies60 = new(() => StandardTable.Read("iec-60034-30-1-60hz-ie3"));

    /// <summary>The class that a plate prints, as "IE3", "ie3-90.4 %", "NEMA Premium": IE1 to IE5, PREMIUM or ENERGY EFFICIENT; null where it is none.</summary>
    public static string? NameOf(string printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        var text = printed.Trim().ToUpperInvariant().Replace("IE ", "IE", StringComparison.Ordinal);
        return text is ['I', 'E', >= '1' and <= '5', ..] && !(text.Length > 3 && char.IsAsciiLetterOrDigit(text[3])) ? text[..3]
            : text is Premium or "NEMA PREMIUM" or "PREMIUM EFFICIENCY" ? Premium
            : text is EnergyEfficient ? EnergyEfficient
            : null;
    }

    /// <summary>The nominal efficiency; null where the tables have none.</summary>
    /// <param name="className">IE1, IE2, IE3 or IE4; premium or energy efficient (NEMA MG 1, 60 Hz, enclosed).</param>
    /// <param name="output">Rated output.</param>
    /// <param name="poles">Poles, 2 to 8.</param>
    /// <param name="frequency">50 Hz or 60 Hz.</param>
    public static Tabulated<Efficiency>? Nominal(string className, ShaftPower output, PoleCount poles, ElectricalFrequency frequency)
    {
        var name = NameOf(className) ?? string.Empty;
        var kW = output.Watts / 1000;
        if (poles.Poles is < 2 or > 8 || !(kW is >= 0.12 and <= 1000))
        {
            return null;
        }

        if (name is Premium or EnergyEfficient)
        {
            return frequency.Hertz == 60 ? Nema(name == EnergyEfficient ? Nema1211.Value : Nema1212.Value, name == EnergyEfficient ? "12-11" : "12-12", kW, poles) : null;
        }

        return frequency.Hertz switch
        {
            50 when kW > InterpolatedUpTo_kW => AboveInterpolation(name, kW, poles),
            50 => Interpolated(name, kW, poles) ?? BetweenRows(name, kW, poles),
            60 => NearestRow(name, kW, poles),
            _ => null,
        };
    }

    // Enclosed motors; no interpolation: the tabulated horsepower next to the output by ratio, within a quarter.
    private static Tabulated<Efficiency>? Nema(StandardTable table, string number, double kW, PoleCount poles)
    {
        double Away(string[] row) => Math.Abs(Math.Log(table.Number(row, "hp")!.Value * KilowattsPerHorsepower / kW));
        var nearest = table.Rows.MinBy(Away)!;
        return Away(nearest) < Math.Log(1.25) && table.Number(nearest, $"encl_{poles.Poles}p") is { } percent
            ? Of(percent, $"NEMA MG 1 Table {number}", Certainty.Seen)
            : null;
    }

    private static Tabulated<Efficiency>? Interpolated(string name, double kW, PoleCount poles)
    {
        var table = Coefficients.Value;
        var polesText = poles.Poles.ToString(CultureInfo.InvariantCulture);
        foreach (var row in table.Rows)
        {
            var (low, high) = Range(table.Text(row, "kW_range"));
            if (table.Text(row, "class") == name && table.Text(row, "poles") == polesText && kW >= low && kW <= high && Mark(table.Text(row, "mark"), poles) == Certainty.Seen)
            {
                double Coefficient(string column) => table.Number(row, column)!.Value;
                var x = Math.Log10(kW);
                var percent = (((((Coefficient("A") * x) + Coefficient("B")) * x) + Coefficient("C")) * x) + Coefficient("D");
                return Of(Math.Round(percent, 1, MidpointRounding.AwayFromZero), Source50, Certainty.Seen);
            }
        }

        return null;
    }

    private static Tabulated<Efficiency>? BetweenRows(string name, double kW, PoleCount poles)
    {
        var rows = RowsOf(Efficiencies50.Value, name, poles);
        var upper = rows.FindIndex(row => row.kW >= kW);
        if (upper < 0)
        {
            return null;
        }

        var (above, below) = (rows[upper], rows[Math.Max(0, upper - 1)]);
        var part = above.kW == below.kW ? 0 : Math.Log(kW / below.kW) / Math.Log(above.kW / below.kW);
        var certainty = above.Mark == below.Mark ? above.Mark : Certainty.Memory;
        return Of(below.Percent + (part * (above.Percent - below.Percent)), Source50, certainty);
    }

    private static Tabulated<Efficiency>? AboveInterpolation(string name, double kW, PoleCount poles)
    {
        var table = Efficiencies50.Value;
        var row = table.Rows.LastOrDefault(row =>
            table.Text(row, "class") == name && IsRange(table.Text(row, "kW")) && kW >= LowestOutput(table.Text(row, "kW")));
        return row is null ? null : Of(table.Number(row, Column(poles))!.Value, Source50, Certainty.Memory);
    }

    private static Tabulated<Efficiency>? NearestRow(string name, double kW, PoleCount poles)
    {
        if (name != "IE3")
        {
            return null;
        }

        var rows = RowsOf(Efficiencies60.Value, null, poles);
        var upper = rows.FindIndex(row => row.kW >= kW);
        var place = upper < 0 ? rows.Count - 1
            : upper > 0 && kW < (rows[upper].kW + rows[upper - 1].kW) / 2 ? upper - 1
            : upper;
        return Of(rows[place].Percent, Source60, Certainty.Memory);
    }

    private static List<(double kW, double Percent, Certainty Mark)> RowsOf(StandardTable table, string? name, PoleCount poles) =>
        (from row in table.Rows
         where name is null || table.Text(row, "class") == name
         let kW = table.Text(row, "kW")
         where name is null || !IsRange(kW)
         select (LowestOutput(kW), table.Number(row, Column(poles))!.Value, name is null ? Certainty.Memory : Mark(table.Text(row, "mark"), poles))).ToList();

    private static Tabulated<Efficiency> Of(double percent, string source, Certainty certainty) =>
        new(Efficiency.FromRatio(percent / 100), source, certainty);

    private static string Column(PoleCount poles) => $"eff_{poles.Poles}pole";

    private static Certainty Mark(string mark, PoleCount poles) =>
        mark.StartsWith("seen", StringComparison.Ordinal) && !(poles.Poles == 8 && mark.Contains("8-pole memory", StringComparison.Ordinal))
            ? Certainty.Seen
            : Certainty.Memory;

    private static bool IsRange(string outputs) => outputs.AsSpan().ContainsAny('-', '>');

    private static double LowestOutput(string outputs) => double.Parse(outputs.TrimStart('>').Split('-', ' ')[0], CultureInfo.InvariantCulture);

    private static (double Low, double High) Range(string outputs)
    {
        var ends = outputs.Split('-');
        return (double.Parse(ends[0], CultureInfo.InvariantCulture), double.Parse(ends[1], CultureInfo.InvariantCulture));
    }
}
