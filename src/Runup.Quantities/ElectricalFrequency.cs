namespace Runup.Quantities;

/// <summary>Frequency of the voltage on supply or motor.</summary>
public readonly record struct ElectricalFrequency : IQuantity<ElectricalFrequency>
{
    private ElectricalFrequency(double hertz) => Hertz = Guard.NotNegative(hertz);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Frequency;

    /// <summary>The value in SI units.</summary>
    public double Hertz { get; }

    /// <inheritdoc/>
    public double Si => Hertz;

    /// <summary>The angular frequency 2πf, in rad/s.</summary>
    public double RadiansPerSecond => 2 * Math.PI * Hertz;

    /// <summary>The speed of the field in a machine of this many poles: 120 f / poles in rpm.</summary>
    public SynchronousSpeed SynchronousSpeed(PoleCount poles) => Quantities.SynchronousSpeed.FromRadiansPerSecond(RadiansPerSecond / poles.Pairs);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static ElectricalFrequency FromHertz(double hertz) => new(hertz);

    /// <inheritdoc/>
    public static ElectricalFrequency FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
