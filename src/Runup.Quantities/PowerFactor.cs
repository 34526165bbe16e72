namespace Runup.Quantities;

/// <summary>Displacement power factor cos φ of the motor, as a ratio.</summary>
public readonly record struct PowerFactor : IQuantity<PowerFactor>
{
    private PowerFactor(double ratio) => Ratio = Guard.NotNegative(ratio);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PureNumber;

    /// <summary>The value in SI units.</summary>
    public double Ratio { get; }

    /// <inheritdoc/>
    public double Si => Ratio;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static PowerFactor FromRatio(double ratio) => new(ratio);

    /// <inheritdoc/>
    public static PowerFactor FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
