namespace Runup.Quantities;

/// <summary>Torque at a shaft; positive drives forward.</summary>
public readonly record struct Torque : IQuantity<Torque>
{
    private Torque(double newtonMetres) => NewtonMetres = Guard.Finite(newtonMetres);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Torque;

    /// <summary>The value in SI units.</summary>
    public double NewtonMetres { get; }

    /// <inheritdoc/>
    public double Si => NewtonMetres;

    /// <summary>The power of this torque at a speed: T · ω.</summary>
    public ShaftPower PowerAt(ShaftSpeed speed) => ShaftPower.FromWatts(NewtonMetres * speed.RadiansPerSecond);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Torque FromNewtonMetres(double newtonMetres) => new(newtonMetres);

    /// <inheritdoc/>
    public static Torque FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
