namespace Runup.Quantities;

/// <summary>Efficiency, as a ratio.</summary>
public readonly record struct Efficiency : IQuantity<Efficiency>
{
    private Efficiency(double ratio) => Ratio = Guard.NotNegative(ratio);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Fraction;

    /// <summary>The value in SI units.</summary>
    public double Ratio { get; }

    /// <inheritdoc/>
    public double Si => Ratio;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Efficiency FromRatio(double ratio) => new(ratio);

    /// <inheritdoc/>
    public static Efficiency FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
