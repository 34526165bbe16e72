namespace Runup.Quantities;

/// <summary>Cross-section of a conductor.</summary>
public readonly record struct CrossSection : IQuantity<CrossSection>
{
    private CrossSection(double squareMetres) => SquareMetres = Guard.NotNegative(squareMetres);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Area;

    /// <summary>The value in SI units.</summary>
    public double SquareMetres { get; }

    /// <inheritdoc/>
    public double Si => SquareMetres;

    /// <summary>The cross-section in mm².</summary>
    public double SquareMillimetres => SquareMetres * 1e6;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static CrossSection FromSquareMetres(double squareMetres) => new(squareMetres);

    /// <inheritdoc/>
    public static CrossSection FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
