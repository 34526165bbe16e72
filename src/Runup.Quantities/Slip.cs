namespace Runup.Quantities;

/// <summary>Slip of a rotor against the field, as a ratio: 0 at synchronous speed, 1 at standstill, negative when generating.</summary>
public readonly record struct Slip : IQuantity<Slip>
{
    private Slip(double ratio) => Ratio = Guard.Finite(ratio);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Fraction;

    /// <summary>The value in SI units.</summary>
    public double Ratio { get; }

    /// <inheritdoc/>
    public double Si => Ratio;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Slip FromRatio(double ratio) => new(ratio);

    /// <inheritdoc/>
    public static Slip FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
