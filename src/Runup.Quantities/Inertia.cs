namespace Runup.Quantities;

/// <summary>Moment of inertia J = ∫ r² dm about the shaft (not GD², which is four times as much in kgf·m²).</summary>
public readonly record struct Inertia : IQuantity<Inertia>
{
    private Inertia(double kilogramSquareMetres) => KilogramSquareMetres = Guard.NotNegative(kilogramSquareMetres);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Inertia;

    /// <summary>The value in SI units.</summary>
    public double KilogramSquareMetres { get; }

    /// <inheritdoc/>
    public double Si => KilogramSquareMetres;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Inertia FromKilogramSquareMetres(double kilogramSquareMetres) => new(kilogramSquareMetres);

    /// <inheritdoc/>
    public static Inertia FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
