using Runup.Quantities;

namespace Runup.Engineering.Thermal;

/// <summary>How a motor warms at constant load: θ(t) = θ∞ (1 − e^(−t/τ)).</summary>
/// <remarks>θ rise over the air (K), θ∞ at last, τ time constant. Validity: one body of even temperature, from cold, constant load and cooling; a real motor's winding runs ahead in the first minutes.</remarks>
/// <param name="FinalRise_K">Rise at last, in K.</param>
/// <param name="TimeConstant">Time to 63 % of it.</param>
[Source("dubey", "section 4.2, thermal model of a motor for heating and cooling")]
public sealed record HeatingCurve(double FinalRise_K, Duration TimeConstant)
{
    /// <summary>The curve through two rises, the second after twice the time of the first: e^(−t/τ) = θ₂/θ₁ − 1.</summary>
    /// <exception cref="ArgumentException">The rises are not those of something that warms ever more slowly.</exception>
    public static HeatingCurve Through(Duration time, double rise_K, double riseAfterTwice_K)
    {
        var left = (riseAfterTwice_K / rise_K) - 1;
        return left is > 0 and < 1
            ? new(rise_K / (1 - left), Duration.FromSeconds(-time.Seconds / Math.Log(left)))
            : throw new ArgumentException("The second rise lies between the first and twice the first.", nameof(riseAfterTwice_K));
    }

    /// <summary>Rise after a time, in K.</summary>
    public double After_K(Duration time) => FinalRise_K * (1 - Math.Exp(-time.Seconds / TimeConstant.Seconds));
}
