namespace Runup.Quantities;

/// <summary>Mass.</summary>
public readonly record struct Mass : IQuantity<Mass>
{
    private Mass(double kilograms) => Kilograms = Guard.NotNegative(kilograms);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Mass;

    /// <summary>The value in SI units.</summary>
    public double Kilograms { get; }

    /// <inheritdoc/>
    public double Si => Kilograms;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Mass FromKilograms(double kilograms) => new(kilograms);

    /// <inheritdoc/>
    public static Mass FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
