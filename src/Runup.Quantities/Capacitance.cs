namespace Runup.Quantities;

/// <summary>Capacitance.</summary>
public readonly record struct Capacitance : IQuantity<Capacitance>
{
    private Capacitance(double farads) => Farads = Guard.NotNegative(farads);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Capacitance;

    /// <summary>The value in SI units.</summary>
    public double Farads { get; }

    /// <inheritdoc/>
    public double Si => Farads;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Capacitance FromFarads(double farads) => new(farads);

    /// <inheritdoc/>
    public static Capacitance FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
