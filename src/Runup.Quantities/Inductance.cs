namespace Runup.Quantities;

/// <summary>Inductance.</summary>
public readonly record struct Inductance : IQuantity<Inductance>
{
    private Inductance(double henries) => Henries = Guard.NotNegative(henries);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Inductance;

    /// <summary>The value in SI units.</summary>
    public double Henries { get; }

    /// <inheritdoc/>
    public double Si => Henries;

    /// <summary>The reactance at a frequency: 2πf L.</summary>
    public Reactance ReactanceAt(ElectricalFrequency frequency) => Reactance.FromOhms(Henries * frequency.RadiansPerSecond);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Inductance FromHenries(double henries) => new(henries);

    /// <inheritdoc/>
    public static Inductance FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
