namespace Runup.Quantities;

/// <summary>Mechanical power at a shaft.</summary>
public readonly record struct ShaftPower : IQuantity<ShaftPower>
{
    private ShaftPower(double watts) => Watts = Guard.Finite(watts);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Power;

    /// <summary>The value in SI units.</summary>
    public double Watts { get; }

    /// <inheritdoc/>
    public double Si => Watts;

    /// <summary>The torque that gives this power at a speed: P / ω.</summary>
    public Torque TorqueAt(ShaftSpeed speed) => Torque.FromNewtonMetres(Watts / speed.RadiansPerSecond);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static ShaftPower FromWatts(double watts) => new(watts);

    /// <inheritdoc/>
    public static ShaftPower FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
