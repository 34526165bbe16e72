namespace Runup.Quantities;

/// <summary>Reactance at a stated frequency.</summary>
public readonly record struct Reactance : IQuantity<Reactance>
{
    private Reactance(double ohms) => Ohms = Guard.NotNegative(ohms);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Resistance;

    /// <summary>The value in SI units.</summary>
    public double Ohms { get; }

    /// <inheritdoc/>
    public double Si => Ohms;

    /// <summary>The inductance that has this reactance at a frequency: X / (2πf).</summary>
    public Inductance InductanceAt(ElectricalFrequency frequency) => Inductance.FromHenries(Ohms / frequency.RadiansPerSecond);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Reactance FromOhms(double ohms) => new(ohms);

    /// <inheritdoc/>
    public static Reactance FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
