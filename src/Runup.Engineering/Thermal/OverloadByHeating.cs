using Runup.Quantities;

namespace Runup.Engineering.Thermal;

/// <summary>By how much a motor may be loaded beyond its continuous rating when it is not loaded for long.</summary>
/// <remarks>
/// The rise must stay at what continuous rated load gives. Loss over rated loss may be 1/(1 − e^(−t/τ)) for a time t from cold, and (1 − e^(−(t/τ + r/τ_r)))/(1 − e^(−t/τ)) for t with a rest r, again
/// and again. With the part α of constant over load-dependent loss at rated load the load is p = √((1 + α) · that − α). τ heating, τ_r cooling time constant. Validity and assumptions: as
/// <see cref="HeatingCurve"/>; torque and current limits are another matter.
/// </remarks>
/// <param name="Heating">Time constant while it runs.</param>
/// <param name="Cooling">Time constant at rest; longer with the fan on the shaft.</param>
/// <param name="ConstantLoss">Loss that does not change with load over that which does, at rated load; at the load of highest efficiency, x, it is x².</param>
[Source("dubey", "section 4.4, short-time and intermittent duty")]
public sealed record OverloadByHeating(Duration Heating, Duration Cooling, Fraction ConstantLoss)
{
    /// <summary>Permitted load over continuous rated load, run for a time from cold and left to cool down again.</summary>
    public Ratio ShortTime(Duration running) => LoadFor(1 / Warmed(running));

    /// <summary>Permitted load over continuous rated load, run for a time and rested for another, again and again; at rest nothing is lost.</summary>
    public Ratio Intermittent(Duration running, Duration resting) =>
        LoadFor((1 - Math.Exp(-(running.Seconds / Heating.Seconds) - (resting.Seconds / Cooling.Seconds))) / Warmed(running));

    private double Warmed(Duration running) => 1 - Math.Exp(-running.Seconds / Heating.Seconds);

    private Ratio LoadFor(double loss) => Ratio.FromValue(Math.Sqrt(((1 + ConstantLoss.Ratio) * loss) - ConstantLoss.Ratio));
}
