using Runup.Engineering;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>What low-voltage cage motors usually are: bands wide enough that no motor sold is outside, and narrow enough to tell a horsepower from a kilowatt.</summary>
/// <remarks>
/// Efficiency: between losses of 1.15 times class IE1 and 0.8 times class IE4 (IEC 60034-30-1). Power factor and slip: by pole number and output, linear in
/// lg P between the outputs listed; common practice, no source. The currents of NEC table 430.250 are on the high side and widen the band downwards.
/// </remarks>
[Source("iec-60034-30-1", "tables of nominal efficiencies, classes IE1 and IE4")]
[Source("nec", "table 430.250")]
[Source("common-practice", "power factor and slip of usual motors")]
internal static class UsualMotors
{
    private static readonly double[] Outputs_kW = [0.18, 0.75, 4, 18.5, 75, 200];

    // Rows: 2, 4, 6, 8 and more poles. Columns: the outputs above.
    private static readonly double[][] LowestPowerFactor =
    [
        [0.62, 0.72, 0.80, 0.83, 0.84, 0.84],
        [0.52, 0.62, 0.74, 0.78, 0.80, 0.81],
        [0.48, 0.56, 0.66, 0.73, 0.77, 0.78],
        [0.42, 0.50, 0.59, 0.67, 0.73, 0.75],
    ];

    private static readonly double[][] HighestPowerFactor =
    [
        [0.82, 0.87, 0.92, 0.93, 0.93, 0.93],
        [0.76, 0.83, 0.88, 0.905, 0.915, 0.915],
        [0.72, 0.77, 0.82, 0.865, 0.885, 0.89],
        [0.65, 0.72, 0.78, 0.825, 0.855, 0.87],
    ];

    private static readonly double[] EfficiencyOutputs_kW = [0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 4, 7.5, 15, 30, 55, 110, 200];
    private static readonly Lazy<double[]>[] LowestEfficiency = Nominals("IE1");
    private static readonly Lazy<double[]>[] HighestEfficiency = Nominals("IE4");

    private const double OrdinaryPartOfHighestSlip = 0.5;
    private static readonly double[] SlipOutputs_kW = [0.37, 0.75, 1.5, 4, 7.5, 22, 75, 200];
    private static readonly double[] HighestSlips = [0.14, 0.12, 0.10, 0.09, 0.08, 0.07, 0.06, 0.05];

    private static readonly double[] Kilowatts =
    [
        0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 3.7, 4, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55, 75, 90, 110, 132, 150, 160,
        185, 200, 220, 250, 280, 315, 355, 400, 450, 500,
    ];

    private static readonly double[] Horsepowers =
        [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 350, 400, 450, 500];

    // η·cos φ that NEC table 430.250 implies at 460 V: 745.7·hp/(√3·460·I), against kW.
    private static readonly Lazy<(double[] Outputs_kW, double[] Products)> Nec = new(ReadNec);

    /// <summary>Lowest and highest usual power factor at full load.</summary>
    internal static (double Low, double High) PowerFactor(double output_W, int poles)
    {
        var row = Row(poles);
        var kW = output_W / 1000;
        return (Interpolate(Outputs_kW, LowestPowerFactor[row], kW), Interpolate(Outputs_kW, HighestPowerFactor[row], kW));
    }

    /// <summary>Lowest and highest usual efficiency at full load; a slip larger than ordinary designs have costs what it burns in the rotor.</summary>
    internal static (double Low, double High) Efficiency(double output_W, int poles, double slip = 0)
    {
        var row = Row(poles);
        var lowest = Interpolate(EfficiencyOutputs_kW, LowestEfficiency[row].Value, output_W / 1000);
        var highest = Interpolate(EfficiencyOutputs_kW, HighestEfficiency[row].Value, output_W / 1000);
        var ordinary = OrdinaryPartOfHighestSlip * HighestSlip(output_W);
        var burnt = slip > ordinary && slip < 1 ? (1 - slip) / (1 - ordinary) : 1;
        return ((1 - ((1 - lowest) * 1.15)) * burnt, 1 - ((1 - highest) * 0.8));
    }

    /// <summary>Lowest and highest usual η·cos φ at full load.</summary>
    internal static (double Low, double High) Product(double output_W, int poles)
    {
        var (efficiency, powerFactor) = (Efficiency(output_W, poles), PowerFactor(output_W, poles));
        return (Math.Min(efficiency.Low * powerFactor.Low, 0.97 * Interpolate(Nec.Value.Outputs_kW, Nec.Value.Products, output_W / 1000)), efficiency.High * powerFactor.High);
    }

    /// <summary>The largest slip at full load that a motor of this output usually has, high-slip designs apart.</summary>
    internal static double HighestSlip(double output_W) => Interpolate(SlipOutputs_kW, HighestSlips, output_W / 1000);

    /// <summary>Whether motors of so many kilowatts are made: the preferred outputs of IEC 60072-1 (from memory).</summary>
    internal static bool IsKilowattRating(double kW) => IsAmong(Kilowatts, kW);

    /// <summary>Whether motors of so many horsepower are made: the outputs of NEC table 430.250.</summary>
    internal static bool IsHorsepowerRating(double hp) => IsAmong(Horsepowers, hp);

    /// <summary>The output that is made and lies nearest, in kilowatts or horsepower; itself where none lies within a part of it.</summary>
    internal static double NearestRating_W(double output_W, double part)
    {
        var nearest = Kilowatts.Select(kW => kW * 1000).Concat(Horsepowers.Select(hp => hp * PlateFigures.WattsPerHorsepower)).MinBy(made => Math.Abs(made - output_W));
        return Math.Abs((nearest / output_W) - 1) < part ? nearest : output_W;
    }

    /// <summary>Nominal efficiencies of a class at 50 Hz for the outputs below.</summary>
    private static Lazy<double[]>[] Nominals(string className) =>
        [.. Enumerable.Range(1, 4).Select(pairs => new Lazy<double[]>(() => Array.ConvertAll(EfficiencyOutputs_kW, kW =>
            EfficiencyClass.Nominal(className, ShaftPower.FromWatts(kW * 1000), PoleCount.FromPoles(2 * pairs), ElectricalFrequency.FromHertz(50))?.Value.Ratio ?? double.NaN)))];

    private static (double[] Outputs_kW, double[] Products) ReadNec()
    {
        var rows = FullLoadCurrent.All.Where(row => row.Voltage.Volts == 460).OrderBy(row => row.Horsepower).ToList();
        var watts = rows.Select(row => row.Horsepower * PlateFigures.WattsPerHorsepower).ToArray();
        return (
            Array.ConvertAll(watts, output => output / 1000),
            rows.Select((row, place) => watts[place] / (Math.Sqrt(3) * 460 * row.Current.Amperes)).ToArray());
    }

    private static int Row(int poles) => Math.Clamp((poles / 2) - 1, 0, LowestPowerFactor.Length - 1);

    private static bool IsAmong(double[] ratings, double value) => Array.Exists(ratings, rating => Math.Abs((value / rating) - 1) < 0.015);

    /// <summary>Linear in the logarithm of the place; beyond the ends the nearest end.</summary>
    private static double Interpolate(double[] places, double[] values, double at)
    {
        if (!(at > places[0]))
        {
            return values[0];
        }

        for (var upper = 1; upper < places.Length; upper++)
        {
            if (at <= places[upper])
            {
                var part = Math.Log(at / places[upper - 1]) / Math.Log(places[upper] / places[upper - 1]);
                return values[upper - 1] + (part * (values[upper] - values[upper - 1]));
            }
        }

        return values[^1];
    }
}
