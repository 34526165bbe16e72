namespace Runup.Quantities;

/// <summary>Speed of the rotating field.</summary>
public readonly record struct SynchronousSpeed : IQuantity<SynchronousSpeed>
{
    private SynchronousSpeed(double radiansPerSecond) => RadiansPerSecond = Guard.NotNegative(radiansPerSecond);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.RotationalSpeed;

    /// <summary>The value in SI units.</summary>
    public double RadiansPerSecond { get; }

    /// <inheritdoc/>
    public double Si => RadiansPerSecond;

    /// <summary>The speed in revolutions per minute.</summary>
    public double Rpm => RadiansPerSecond * (30 / Math.PI);

    /// <summary>Makes the speed from revolutions per minute.</summary>
    public static SynchronousSpeed FromRpm(double rpm) => new(rpm * (Math.PI / 30));

    /// <summary>The slip of a shaft against this field: (ns − n) / ns.</summary>
    public Slip SlipOf(ShaftSpeed shaft) => Slip.FromRatio((RadiansPerSecond - shaft.RadiansPerSecond) / RadiansPerSecond);

    /// <summary>The speed of a shaft at a slip: ns (1 − s).</summary>
    public ShaftSpeed At(Slip slip) => ShaftSpeed.FromRadiansPerSecond(RadiansPerSecond * (1 - slip.Ratio));

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static SynchronousSpeed FromRadiansPerSecond(double radiansPerSecond) => new(radiansPerSecond);

    /// <inheritdoc/>
    public static SynchronousSpeed FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
