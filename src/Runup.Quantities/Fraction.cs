namespace Runup.Quantities;

/// <summary>A part of a stated whole, as a ratio.</summary>
public readonly record struct Fraction : IQuantity<Fraction>
{
    private Fraction(double ratio) => Ratio = Guard.Finite(ratio);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Fraction;

    /// <summary>The value in SI units.</summary>
    public double Ratio { get; }

    /// <inheritdoc/>
    public double Si => Ratio;

    /// <summary>The part in per cent.</summary>
    public double Percent => Ratio * 100;

    /// <summary>Makes the part from per cent.</summary>
    public static Fraction FromPercent(double percent) => new(percent / 100);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Fraction FromRatio(double ratio) => new(ratio);

    /// <inheritdoc/>
    public static Fraction FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
