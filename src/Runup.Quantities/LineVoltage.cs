namespace Runup.Quantities;

/// <summary>Voltage between two lines of a three-phase system, rms.</summary>
public readonly record struct LineVoltage : IQuantity<LineVoltage>
{
    private LineVoltage(double volts) => Volts = Guard.NotNegative(volts);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <summary>The value in SI units.</summary>
    public double Volts { get; }

    /// <inheritdoc/>
    public double Si => Volts;

    /// <summary>The voltage from line to star point: V / √3.</summary>
    public PhaseVoltage Phase => PhaseVoltage.FromVolts(Volts / Math.Sqrt(3));

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static LineVoltage FromVolts(double volts) => new(volts);

    /// <inheritdoc/>
    public static LineVoltage FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
