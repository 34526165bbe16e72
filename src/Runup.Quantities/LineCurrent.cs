namespace Runup.Quantities;

/// <summary>Current in a line conductor, rms; in the star equivalent also the phase current.</summary>
public readonly record struct LineCurrent : IQuantity<LineCurrent>
{
    private LineCurrent(double amperes) => Amperes = Guard.NotNegative(amperes);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Current;

    /// <summary>The value in SI units.</summary>
    public double Amperes { get; }

    /// <inheritdoc/>
    public double Si => Amperes;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static LineCurrent FromAmperes(double amperes) => new(amperes);

    /// <inheritdoc/>
    public static LineCurrent FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
