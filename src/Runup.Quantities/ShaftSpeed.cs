namespace Runup.Quantities;

/// <summary>Speed of a shaft; negative turns backward.</summary>
public readonly record struct ShaftSpeed : IQuantity<ShaftSpeed>
{
    private ShaftSpeed(double radiansPerSecond) => RadiansPerSecond = Guard.Finite(radiansPerSecond);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.RotationalSpeed;

    /// <summary>The value in SI units.</summary>
    public double RadiansPerSecond { get; }

    /// <inheritdoc/>
    public double Si => RadiansPerSecond;

    /// <summary>The speed in revolutions per minute.</summary>
    public double Rpm => RadiansPerSecond * (30 / Math.PI);

    /// <summary>Makes the speed from revolutions per minute.</summary>
    public static ShaftSpeed FromRpm(double rpm) => new(rpm * (Math.PI / 30));

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static ShaftSpeed FromRadiansPerSecond(double radiansPerSecond) => new(radiansPerSecond);

    /// <inheritdoc/>
    public static ShaftSpeed FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
