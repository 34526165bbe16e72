namespace Runup.Quantities;

/// <summary>Electrical resistance.</summary>
public readonly record struct Resistance : IQuantity<Resistance>
{
    private Resistance(double ohms) => Ohms = Guard.NotNegative(ohms);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Resistance;

    /// <summary>The value in SI units.</summary>
    public double Ohms { get; }

    /// <inheritdoc/>
    public double Si => Ohms;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Resistance FromOhms(double ohms) => new(ohms);

    /// <inheritdoc/>
    public static Resistance FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
