namespace Runup.Quantities;

/// <summary>Voltage of a direct-current circuit, such as the DC bus.</summary>
public readonly record struct DcVoltage : IQuantity<DcVoltage>
{
    private DcVoltage(double volts) => Volts = Guard.Finite(volts);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <summary>The value in SI units.</summary>
    public double Volts { get; }

    /// <inheritdoc/>
    public double Si => Volts;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static DcVoltage FromVolts(double volts) => new(volts);

    /// <inheritdoc/>
    public static DcVoltage FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
