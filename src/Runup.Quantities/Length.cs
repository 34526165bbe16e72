namespace Runup.Quantities;

/// <summary>A length, or an altitude above the sea.</summary>
public readonly record struct Length : IQuantity<Length>
{
    private Length(double metres) => Metres = Guard.Finite(metres);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Length;

    /// <summary>The value in SI units.</summary>
    public double Metres { get; }

    /// <inheritdoc/>
    public double Si => Metres;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Length FromMetres(double metres) => new(metres);

    /// <inheritdoc/>
    public static Length FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
