using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Invented motors with efficiencies of IEC 60034-30-1 (classes IE1 to IE4) and usual power factors (common practice, no source), rounded as plates print.</summary>
/// <remarks>About a quarter of the losses is the rotor's, so that s is about (1 − η)/4: common practice, no source.</remarks>
internal static class GeneratedPlates
{
    internal static readonly double[] Kilowatts =
        [0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55, 75, 90, 110, 132, 160, 200];

    internal static readonly double[] Horsepowers = [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250];

    private static readonly int[] PoleCounts = [2, 4, 6, 8];
    private static readonly string[] Classes = ["IE1", "IE2", "IE3", "IE4"];
    private static readonly double[] WithinBand = [0.15, 0.5, 0.85];

    // cos φ at 0.37, 4, 37 and 200 kW: worst and best usual, for 2, 4, 6 and 8 poles.
    private static readonly double[][] Worst = [[0.72, 0.83, 0.86, 0.87], [0.64, 0.77, 0.81, 0.83], [0.58, 0.69, 0.77, 0.80], [0.52, 0.62, 0.71, 0.76]];
    private static readonly double[][] Best = [[0.83, 0.90, 0.92, 0.92], [0.78, 0.86, 0.90, 0.91], [0.73, 0.80, 0.87, 0.88], [0.66, 0.76, 0.83, 0.86]];

    internal sealed record Generated(double Output_W, int Poles, double Hertz, double Volts, double Amperes, double Rpm, double PowerFactor, double EfficiencyPercent)
    {
        internal PlateSurvey As(string output, bool powerFactor, bool efficiency, bool poles = true) => Plates.Of(
            output, Volts, Amperes, Hertz, Rpm, poles ? Poles : null, powerFactor ? PowerFactor : null, efficiency ? EfficiencyPercent : null);
    }

    internal static IEnumerable<Generated> Of(double output_W)
    {
        foreach (var poles in PoleCounts)
        {
            foreach (var className in Classes)
            {
                foreach (var within in WithinBand)
                {
                    foreach (var (hertz, volts) in ((double, double)[])[(50, 400), (60, 460)])
                    {
                        yield return One(output_W, poles, className, within, hertz, volts);
                    }
                }
            }
        }
    }

    internal static string Kw(double watts) => (watts / 1000).ToString(CultureInfo.InvariantCulture) + " kW";

    internal static string HpOf(double number) => number.ToString(CultureInfo.InvariantCulture) + " hp";

    private static Generated One(double output_W, int poles, string className, double within, double hertz, double volts)
    {
        var efficiency = EfficiencyClass.Nominal(className, ShaftPower.FromWatts(output_W), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(50))!.Value.Ratio;
        var row = (poles / 2) - 1;
        var powerFactor = At(Worst[row], output_W) + (within * (At(Best[row], output_W) - At(Worst[row], output_W)));
        var current = output_W / (Math.Sqrt(3) * volts * efficiency * powerFactor);
        var slip = (0.24 + (0.04 * within)) * (1 - efficiency);
        return new(
            output_W, poles, hertz, volts, Significant(current, 3), Math.Round(120 * hertz / poles * (1 - slip)), Math.Round(powerFactor, 2), Math.Round(efficiency * 100, 1));
    }

    private static double At(double[] values, double output_W)
    {
        double[] places = [0.37, 4, 37, 200];
        var x = Math.Clamp(output_W / 1000, places[0], places[^1]);
        var upper = Math.Max(1, Array.FindIndex(places, place => x <= place));
        var part = Math.Log(x / places[upper - 1]) / Math.Log(places[upper] / places[upper - 1]);
        return values[upper - 1] + (part * (values[upper] - values[upper - 1]));
    }

    internal static double Significant(double value, int digits)
    {
        var scale = Math.Pow(10, digits - 1 - (int)Math.Floor(Math.Log10(value)));
        return Math.Round(value * scale) / scale;
    }
}
