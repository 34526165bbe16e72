using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>Closed forms of J dω/dt = T for torques that do not change with speed, or do so on a straight line.</summary>
/// <remarks>Validity: one turning mass, torque as said over the whole change. <see cref="Acceleration"/> and <see cref="Deceleration"/> integrate what motor and drive really have.</remarks>
[Source("dubey", "chapter 2, dynamics of electrical drives")]
public static class EquationOfMotion
{
    /// <summary>Time from a speed to another under a surplus torque that stays: t = J Δω/T.</summary>
    /// <exception cref="ArgumentException">The torque drives away from that speed.</exception>
    public static Duration Time(Inertia inertia, Torque surplus, ShaftSpeed from, ShaftSpeed to)
    {
        var time_s = inertia.KilogramSquareMetres * (to.RadiansPerSecond - from.RadiansPerSecond) / surplus.NewtonMetres;
        return time_s >= 0 ? Duration.FromSeconds(time_s) : throw new ArgumentException("The torque drives away from the speed asked for.", nameof(surplus));
    }

    /// <summary>Inertia that gains so much speed in a second under a surplus torque: J = T/α, as a timed run-up at a known torque tells it.</summary>
    public static Inertia InertiaOf(Torque surplus, ShaftSpeed gainedPerSecond) =>
        Inertia.FromKilogramSquareMetres(surplus.NewtonMetres / gainedPerSecond.RadiansPerSecond);

    /// <summary>Time to a speed where the surplus torque falls on a straight line to zero at a steady speed: t = τ ln((ω∞ − ω₀)/(ω∞ − ω₁)), τ = J (ω∞ − ω₀)/T₀.</summary>
    /// <param name="inertia">J.</param>
    /// <param name="surplus">T₀, at the speed of the beginning.</param>
    /// <param name="from">ω₀.</param>
    /// <param name="steady">ω∞, where the surplus is zero.</param>
    /// <param name="to">ω₁, short of the steady speed.</param>
    /// <exception cref="ArgumentException">The speed asked for does not lie between beginning and steady speed.</exception>
    public static Duration TimeTowards(Inertia inertia, Torque surplus, ShaftSpeed from, ShaftSpeed steady, ShaftSpeed to)
    {
        var (whole, left) = (steady.RadiansPerSecond - from.RadiansPerSecond, steady.RadiansPerSecond - to.RadiansPerSecond);
        return left / whole is > 0 and <= 1
            ? Duration.FromSeconds(inertia.KilogramSquareMetres * whole / surplus.NewtonMetres * Math.Log(whole / left))
            : throw new ArgumentException("The speed asked for lies between the beginning and the steady speed.", nameof(to));
    }
}
