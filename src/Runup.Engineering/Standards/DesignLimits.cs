using System.Globalization;
using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>What a design letter promises of starting and breakdown: least torques over rated torque, largest locked-rotor current.</summary>
/// <remarks>
/// Design N by IEC 60034-12, outputs above a band's lower end up to and including its upper, 2 to 8 poles. Designs A and B by NEMA MG 1, the tabulated horsepower
/// next to the output by ratio, at 60 Hz; locked-rotor current of design B by the 230 V column, in inverse proportion to voltage. Elsewhere none.
/// </remarks>
/// <param name="LockedRotorTorque">Least locked-rotor torque; null where the table has none.</param>
/// <param name="BreakdownTorque">Least breakdown torque; null where the table has none.</param>
/// <param name="LockedRotorCurrent">Largest locked-rotor current; null where the table has none.</param>
/// <param name="Source">Standard and table.</param>
/// <param name="Certainty">How sure the torques are.</param>
[Source("iec-60034-12", "design N, minimum torques")]
[Source("nema-mg-1", "12.35, 12.38 and 12.39")]
public sealed record DesignLimits(Ratio? LockedRotorTorque, Ratio? BreakdownTorque, LineCurrent? LockedRotorCurrent, string Source, Certainty Certainty)
{
    private const double WattsPerHorsepower = 745.69987158227;

    // Beyond this the next tabulated output is another motor's.
    private const double NearEnough = 1.3;

    private static readonly Lazy<StandardTable> DesignN = new(() => StandardTable.Read("iec-60034-12-design-n"));
    private static readonly Lazy<StandardTable> DesignB = new(() => StandardTable.Read("nema-mg1-design-b-torque"));
    private static readonly Lazy<StandardTable> Currents = new(() => StandardTable.Read("nema-mg1-locked-rotor-current"));

    /// <summary>The limits of a design letter; null where no table is at hand.</summary>
    public static DesignLimits? Of(string? letter, ShaftPower output, PoleCount poles, LineVoltage voltage) => letter?.Trim().ToUpperInvariant() switch
    {
        "N" or "NE" => Iec(output.Watts / 1000, poles.Poles),
        "A" => Nema(output.Watts / WattsPerHorsepower, poles.Poles, null),
        "B" => Nema(output.Watts / WattsPerHorsepower, poles.Poles, voltage),
        _ => null,
    };

    private static DesignLimits? Iec(double kW, int poles)
    {
        var table = DesignN.Value;
        if (poles is not (2 or 4 or 6 or 8))
        {
            return null;
        }

        foreach (var row in table.Rows)
        {
            var ends = table.Text(row, "kW_range").Split('-').Select(end => double.Parse(end, CultureInfo.InvariantCulture)).ToArray();
            if (kW > ends[0] && kW <= ends[1])
            {
                var isSeen = table.Text(row, "mark").StartsWith("seen", StringComparison.Ordinal) && poles <= 4;
                return new DesignLimits(
                    Ratio.FromValue(table.Number(row, $"Tl_{poles}p")!.Value),
                    Ratio.FromValue(table.Number(row, $"Tb_{poles}p")!.Value),
                    null,
                    "IEC 60034-12, design N",
                    isSeen ? Certainty.Seen : Certainty.Memory);
            }
        }

        return null;
    }

    private static DesignLimits? Nema(double horsepower, int poles, LineVoltage? voltage)
    {
        var (torques, currents) = (DesignB.Value, Currents.Value);
        var torque = Nearest(torques, horsepower);
        var speed = 7200 / Math.Max(2, poles);
        double? Percent(string column) => torque is not null && torques.Columns.Contains(column, StringComparer.Ordinal) ? torques.Number(torque, column) / 100 : null;
        var starting = Percent($"LRT_{speed}");
        var breakdown = Percent(speed >= 1200 ? $"BDT_{speed}" : "BDT_900_and_lower");
        LineCurrent? current = voltage is { Volts: > 0 } at && Nearest(currents, horsepower) is { } row
            ? LineCurrent.FromAmperes(currents.Number(row, "LRA_230V")!.Value * 230 / at.Volts)
            : null;
        return starting is null && breakdown is null && current is null
            ? null
            : new DesignLimits(As(starting), As(breakdown), current, "NEMA MG 1, designs A and B", Certainty.Memory);
    }

    private static Ratio? As(double? value) => value is { } ratio ? Ratio.FromValue(ratio) : null;

    private static string[]? Nearest(StandardTable table, double horsepower)
    {
        double Away(string[] row) => Math.Abs(Math.Log(table.Number(row, "hp")!.Value / horsepower));
        var nearest = table.Rows.MinBy(Away);
        return nearest is not null && Away(nearest) < Math.Log(NearEnough) ? nearest : null;
    }
}
