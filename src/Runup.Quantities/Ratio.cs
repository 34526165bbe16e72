namespace Runup.Quantities;

/// <summary>A pure number, such as a service factor, a torque ratio or a gear ratio (motor speed over machine speed).</summary>
public readonly record struct Ratio : IQuantity<Ratio>
{
    private Ratio(double value) => Value = Guard.NotNegative(value);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PureNumber;

    /// <summary>The value in SI units.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public double Si => Value;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Ratio FromValue(double value) => new(value);

    /// <inheritdoc/>
    public static Ratio FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
