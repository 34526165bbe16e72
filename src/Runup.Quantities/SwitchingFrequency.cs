namespace Runup.Quantities;

/// <summary>Frequency at which the inverter's transistors switch.</summary>
public readonly record struct SwitchingFrequency : IQuantity<SwitchingFrequency>
{
    private SwitchingFrequency(double hertz) => Hertz = Guard.NotNegative(hertz);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Frequency;

    /// <summary>The value in SI units.</summary>
    public double Hertz { get; }

    /// <inheritdoc/>
    public double Si => Hertz;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static SwitchingFrequency FromHertz(double hertz) => new(hertz);

    /// <inheritdoc/>
    public static SwitchingFrequency FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
