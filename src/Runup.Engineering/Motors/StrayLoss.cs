using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>Additional load loss of a motor whose test sheet is not at hand.</summary>
public static class StrayLoss
{
    /// <summary>The assigned allowance, as a share of the rated input.</summary>
    /// <remarks>
    /// P_LL = P₁ (0.025 − 0.005 lg(P₂ / 1 kW)) from 1 kW to 10 MW; 2.5 % of P₁ below, 0.5 % above. P₁ rated input (W), P₂ rated output (W).
    /// Recalled from memory. Validity: rated point. Assumption: the motor is an average one; good motors of today stray less.
    /// </remarks>
    [Source("iec-60034-2-1", "assigned allowance for additional load losses")]
    public static Fraction AssignedAllowance(ShaftPower output)
    {
        var kW = Math.Clamp(output.Watts / 1000, 1, 10_000);
        return Fraction.FromRatio(0.025 - (0.005 * Math.Log10(kW)));
    }
}
