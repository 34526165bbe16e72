namespace Runup.Quantities;

/// <summary>Apparent power, such as a fault level or a transformer's rating.</summary>
public readonly record struct ApparentPower : IQuantity<ApparentPower>
{
    private ApparentPower(double voltAmperes) => VoltAmperes = Guard.NotNegative(voltAmperes);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.ApparentPower;

    /// <summary>The value in SI units.</summary>
    public double VoltAmperes { get; }

    /// <inheritdoc/>
    public double Si => VoltAmperes;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static ApparentPower FromVoltAmperes(double voltAmperes) => new(voltAmperes);

    /// <inheritdoc/>
    public static ApparentPower FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
