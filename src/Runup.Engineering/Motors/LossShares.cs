using System.Globalization;
using System.Runtime.InteropServices;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>How the losses at the rated point that the slip does not explain are shared out.</summary>
/// <remarks>
/// L = P₁ − P₂/(1 − s) is what stator copper, core, friction and stray take (with the rotor copper that friction and stray cause).
/// Stray: the assigned allowance, at most 15 % of L; friction 10 % of L; core 25 % of L; the stator copper is the rest, at least half.
/// P₁ input (W), P₂ output (W), s slip. The shares are common practice, no source.
/// </remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct LossShares(double Friction_W, double Stray_W, double Core_W, double StatorCopper_W, double AirGap_W)
{
    private const double FrictionShare = 0.10;
    private const double CoreShare = 0.25;
    private const double LargestStrayShare = 0.15;

    internal static LossShares At(RatedPoint point)
    {
        var input = point.Input_W;
        var rest = input - (point.Output_W / (1 - point.Slip));
        var allowance = StrayLoss.AssignedAllowance(ShaftPower.FromWatts(point.Output_W)).Ratio * input;
        var mechanical = rest * (1 - point.Slip);
        var stray = Math.Min(allowance, LargestStrayShare * mechanical);
        var friction = FrictionShare * mechanical;
        var core = CoreShare * rest;
        var airGap = (point.Output_W + friction + stray) / (1 - point.Slip);
        return new LossShares(friction, stray, core, input - airGap - core, airGap);
    }

    internal IEnumerable<Assumption> Assumptions()
    {
        static string Watts(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:G3} W");
        yield return new Assumption(
            "stray loss at the rated point (assigned allowance, at most 15 % of what is left beside the rotor copper)", Watts(Stray_W), "IEC 60034-2-1, assigned allowance", true);
        yield return new Assumption(
            "friction and windage loss (10 % of the losses beside the rotor copper)", Watts(Friction_W), Assumption.CommonPractice, false);
        yield return new Assumption(
            "core loss (25 % of the losses beside the rotor copper)", Watts(Core_W), Assumption.CommonPractice, false);
    }
}
