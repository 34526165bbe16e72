using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>Whether a plate's output, voltage, current, power factor and efficiency agree.</summary>
/// <remarks>
/// <para>
/// |P / (√3 U I cos φ η) − 1| against the largest that rounding of the printed digits can make of it: each value may be off by half of its last
/// digit, all in the worst direction. P output (W), U line voltage (V), I line current (A), cos φ power factor, η efficiency.
/// </para>
/// <para>Validity: three-phase motor at its rated point. Assumption: the plate prints sine-wave values of one and the same column.</para>
/// </remarks>
[Source("iec-60034-1", "rating plate and rated values")]
public abstract record PlateBalance
{
    // What is left of the balance when every value counts as exact: the arithmetic of the reader's own conversions.
    private const double SmallestTolerance = 1e-9;

    private PlateBalance()
    {
    }

    /// <summary>The values agree within their rounding.</summary>
    /// <param name="Imbalance">P / (√3 U I cos φ η) − 1.</param>
    /// <param name="Tolerance">The largest magnitude that rounding explains.</param>
    public sealed record Consistent(Fraction Imbalance, Fraction Tolerance) : PlateBalance;

    /// <summary>The values disagree by more than their rounding.</summary>
    /// <param name="Imbalance">P / (√3 U I cos φ η) − 1.</param>
    /// <param name="Tolerance">The largest magnitude that rounding explains.</param>
    public sealed record Inconsistent(Fraction Imbalance, Fraction Tolerance) : PlateBalance;

    /// <summary>Power factor or efficiency is not printed (or is zero): nothing to hold against each other.</summary>
    public sealed record Undetermined : PlateBalance;

    /// <summary>Holds the plate's values against each other.</summary>
    public static PlateBalance Of(Nameplate plate)
    {
        var rounding = plate.Rounding;
        var imbalance = (ImpliedProduct(plate) / (plate.PowerFactor?.Ratio * plate.Efficiency?.Ratio)) - 1;
        if (imbalance is not { } value || !double.IsFinite(value))
        {
            return new Undetermined();
        }

        var tolerance = SmallestTolerance
            + Part(rounding.OutputWatts, plate.Output.Watts)
            + Part(rounding.VoltageVolts, plate.Voltage.Volts)
            + Part(rounding.CurrentAmperes, plate.Current.Amperes)
            + Part(rounding.PowerFactor, plate.PowerFactor!.Value.Ratio)
            + Part(rounding.Efficiency, plate.Efficiency!.Value.Ratio);
        return Math.Abs(value) <= tolerance
            ? new Consistent(Fraction.FromRatio(value), Fraction.FromRatio(tolerance))
            : new Inconsistent(Fraction.FromRatio(value), Fraction.FromRatio(tolerance));
    }

    /// <summary>The product η·cos φ that output, voltage and current imply: P / (√3 U I); not finite without voltage or current.</summary>
    public static double ImpliedProduct(Nameplate plate) =>
        plate.Output.Watts / (Math.Sqrt(3) * plate.Voltage.Volts * plate.Current.Amperes);

    private static double Part(double halfDigit, double value) => double.IsFinite(halfDigit / value) ? Math.Abs(halfDigit / value) : 0;
}
