namespace Runup.Engineering.Numerics;

/// <summary>The normal distribution.</summary>
internal static class Gaussian
{
    private const double Tail = 0.02425;

    /// <summary>How many standard deviations from the middle a share of the distribution lies below; P. J. Acklam's rational approximation, 1e-9.</summary>
    internal static double Quantile(double share)
    {
        if (share < Tail || share > 1 - Tail)
        {
            var q = Math.Sqrt(-2 * Math.Log(share < Tail ? share : 1 - share));
            var tail = (((((((((-7.784894002430293e-03 * q) - 3.223964580411365e-01) * q) - 2.400758277161838) * q) - 2.549732539343734) * q) + 4.374664141464968) * q) + 2.938163982698783;
            var below = tail / ((((((((7.784695709041462e-03 * q) + 3.224671290700398e-01) * q) + 2.445134137142996) * q) + 3.754408661907416) * q) + 1);
            return share < Tail ? below : -below;
        }

        var middle = share - 0.5;
        var r = middle * middle;
        var above = (((((((((-3.969683028665376e+01 * r) + 2.209460984245205e+02) * r) - 2.759285104469687e+02) * r) + 1.383577518672690e+02) * r) - 3.066479806614716e+01) * r) + 2.506628277459239;
        var under = (((((((((-5.447609879822406e+01 * r) + 1.615858368580409e+02) * r) - 1.556989798598866e+02) * r) + 6.680131188771972e+01) * r) - 1.328068155288572e+01) * r) + 1;
        return middle * above / under;
    }

    /// <summary>Logarithm of the density, without its constant, at a distance in standard deviations.</summary>
    internal static double LogDensity(double deviations) => -0.5 * deviations * deviations;
}
