using Runup.Quantities;

namespace Runup.Engineering.Supply;

/// <summary>Line voltages that are not alike, and what they do to a motor on the line. Behind a drive the rectifier carries it and the motor does not feel it.</summary>
/// <remarks>
/// u = largest difference from the mean over the mean. The rise of the winding grows by 2 u² per cent, u in per cent. Permitted output by NEMA MG 1, figure 14-1: 1 up to 1 %, 0.95 at 2 %, 0.88 at
/// 3 %, 0.82 at 4 %, 0.75 at 5 %, straight between; beyond 5 % the motor is not run. Insulation lives half as long for each 10 K. Validity: unbalance up to 5 %, rated load.
/// </remarks>
[Source("nema-mg-1", "12.45 and figure 14-1, effect of voltage unbalance (from memory)")]
public static class VoltageUnbalance
{
    private static readonly double[] OutputAtPercent = [1, 1, 0.95, 0.88, 0.82, 0.75];

    /// <summary>The unbalance of three line voltages.</summary>
    public static Fraction Of(LineVoltage first, LineVoltage second, LineVoltage third)
    {
        double[] volts = [first.Volts, second.Volts, third.Volts];
        var mean = volts.Average();
        return Fraction.FromRatio(volts.Max(v => Math.Abs(v - mean)) / mean);
    }

    /// <summary>Rise of the winding over that with balanced voltages.</summary>
    [Source("hubert", "section 5.14, effect of unbalanced line voltages")]
    public static Ratio RiseRatio(Fraction unbalance) => Ratio.FromValue(1 + (2 * unbalance.Percent * unbalance.Percent / 100));

    /// <summary>Permitted output over rated output; null above 5 %, where the motor is not run.</summary>
    public static Fraction? PermittedOutput(Fraction unbalance)
    {
        var percent = unbalance.Percent;
        if (percent is not (>= 0 and <= 5))
        {
            return null;
        }

        var below = Math.Min((int)percent, OutputAtPercent.Length - 2);
        return Fraction.FromRatio(OutputAtPercent[below] + ((percent - below) * (OutputAtPercent[below + 1] - OutputAtPercent[below])));
    }

    /// <summary>Life of insulation over its life without a further rise: half for each 10 K.</summary>
    [Source("common-practice", "insulation lives half as long for each 10 K")]
    public static Ratio LifeRatio(double furtherRise_K) => Ratio.FromValue(Math.Pow(2, -furtherRise_K / 10));
}
