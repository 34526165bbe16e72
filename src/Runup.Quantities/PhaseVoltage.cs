namespace Runup.Quantities;

/// <summary>Voltage across one phase of the star equivalent, rms.</summary>
public readonly record struct PhaseVoltage : IQuantity<PhaseVoltage>
{
    private PhaseVoltage(double volts) => Volts = Guard.NotNegative(volts);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <summary>The value in SI units.</summary>
    public double Volts { get; }

    /// <inheritdoc/>
    public double Si => Volts;

    /// <summary>The voltage from line to line: V · √3.</summary>
    public LineVoltage Line => LineVoltage.FromVolts(Volts * Math.Sqrt(3));

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static PhaseVoltage FromVolts(double volts) => new(volts);

    /// <inheritdoc/>
    public static PhaseVoltage FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
