using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>Torque that a driven machine asks for at its own shaft, against its speed.</summary>
public abstract record LoadCurve
{
    private LoadCurve()
    {
    }

    /// <summary>Torque at a speed of the machine's shaft; friction-like curves oppose the direction of motion.</summary>
    public abstract Torque At(ShaftSpeed speed);

    /// <summary>The same torque at every speed: T = T₀ · sign(ω).</summary>
    /// <param name="Torque">Torque at the machine's shaft.</param>
    public sealed record Constant(Torque Torque) : LoadCurve
    {
        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed) =>
            Torque.FromNewtonMetres(Torque.NewtonMetres * Math.Sign(speed.RadiansPerSecond));
    }

    /// <summary>Torque with the square of speed, as pumps and fans: T = T₁ (ω/ω₁)² · sign(ω).</summary>
    /// <param name="Torque">Torque at the stated speed.</param>
    /// <param name="Speed">The stated speed of the machine's shaft.</param>
    public sealed record Quadratic(Torque Torque, ShaftSpeed Speed) : LoadCurve
    {
        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed)
        {
            var ratio = speed.RadiansPerSecond / Speed.RadiansPerSecond;
            return Torque.FromNewtonMetres(Torque.NewtonMetres * ratio * Math.Abs(ratio));
        }
    }
}
