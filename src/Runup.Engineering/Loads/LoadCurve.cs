using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>Torque that a driven machine asks for at its own shaft, against its speed.</summary>
public abstract record LoadCurve
{
    private LoadCurve()
    {
    }

    /// <summary>Torque at a speed of the machine's shaft; all but <see cref="Hoisting"/> oppose the direction of motion.</summary>
    public abstract Torque At(ShaftSpeed speed);

    /// <summary>The same machine seen the other way round: what it asks for backward, as a curve of forward speeds.</summary>
    public virtual LoadCurve Reversed => this;

    /// <summary>So many equal machines together.</summary>
    public abstract LoadCurve Times(int count);

    private static Torque Several(Torque one, int count) => Torque.FromNewtonMetres(count * one.NewtonMetres);

    /// <summary>The same torque at every speed: T = T₀ · sign(ω).</summary>
    /// <param name="Torque">Torque at the machine's shaft.</param>
    public sealed record Constant(Torque Torque) : LoadCurve
    {
        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed) =>
            Torque.FromNewtonMetres(Torque.NewtonMetres * Math.Sign(speed.RadiansPerSecond));

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new Constant(Several(Torque, count));
    }

    /// <summary>A lifted mass: the same torque at every speed, standstill included, whichever way the shaft turns: it opposes lifting and drives lowering.</summary>
    /// <remarks>T = m g d/2, m mass (kg), g standard gravity (m/s²), d diameter of the drum (m). Forward lifts. Validity: rope and drum of one diameter, no second fall.</remarks>
    /// <param name="Torque">Torque at the drum; negative where forward lowers.</param>
    [Source("common-practice", "weight at the radius of the drum")]
    public sealed record Hoisting(Torque Torque) : LoadCurve
    {
        /// <summary>A mass on a drum.</summary>
        public static Hoisting Of(Mass mass, Length drumDiameter) =>
            new(LinearMotion.OfDrum(drumDiameter).Lifting(mass, default, Efficiency.FromRatio(1)));

        /// <inheritdoc/>
        public override LoadCurve Reversed => new Hoisting(Torque.FromNewtonMetres(-Torque.NewtonMetres));

        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed) => Torque;

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new Hoisting(Several(Torque, count));
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

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new Quadratic(Several(Torque, count), Speed);
    }

    /// <summary>Torque with speed, as calenders and viscous mixers: T = T₁ ω/ω₁.</summary>
    /// <param name="Torque">Torque at the stated speed.</param>
    /// <param name="Speed">The stated speed of the machine's shaft.</param>
    public sealed record Linear(Torque Torque, ShaftSpeed Speed) : LoadCurve
    {
        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed) =>
            Torque.FromNewtonMetres(Torque.NewtonMetres * speed.RadiansPerSecond / Speed.RadiansPerSecond);

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new Linear(Several(Torque, count), Speed);
    }

    /// <summary>The same power from the stated speed up, as winders and spindles: T = T₁ ω₁/ω; below it the torque at that speed.</summary>
    /// <param name="Torque">Torque at the stated speed.</param>
    /// <param name="Speed">The stated speed of the machine's shaft: the lowest at which the full power is taken.</param>
    public sealed record ConstantPower(Torque Torque, ShaftSpeed Speed) : LoadCurve
    {
        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed)
        {
            var ratio = Math.Min(1, Math.Abs(Speed.RadiansPerSecond / speed.RadiansPerSecond));
            return Torque.FromNewtonMetres(Torque.NewtonMetres * ratio * Math.Sign(speed.RadiansPerSecond));
        }

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new ConstantPower(Several(Torque, count), Speed);
    }

    /// <summary>Torque read off a table against the magnitude of speed, linear between the points, the end values beyond them.</summary>
    public sealed record Table : LoadCurve
    {
        /// <summary>Makes the curve from points in order of speed.</summary>
        /// <exception cref="ArgumentException">There is no point, or the speeds do not ascend from zero or above.</exception>
        public Table(IReadOnlyList<(ShaftSpeed Speed, Torque Torque)> points)
        {
            var ascends = points.Count > 0 && points[0].Speed.RadiansPerSecond >= 0
                && points.Zip(points.Skip(1)).All(pair => pair.First.Speed.RadiansPerSecond < pair.Second.Speed.RadiansPerSecond);
            Points = ascends ? [.. points] : throw new ArgumentException("A load table needs at least one point, and speeds that ascend from zero or above.", nameof(points));
        }

        /// <summary>The points, speeds ascending.</summary>
        public IReadOnlyList<(ShaftSpeed Speed, Torque Torque)> Points { get; }

        /// <inheritdoc/>
        public override Torque At(ShaftSpeed speed)
        {
            var magnitude = Math.Abs(speed.RadiansPerSecond);
            var upper = 0;
            while (upper < Points.Count - 1 && Points[upper].Speed.RadiansPerSecond < magnitude)
            {
                upper++;
            }

            var (above, below) = (Points[upper], Points[Math.Max(0, upper - 1)]);
            var span = above.Speed.RadiansPerSecond - below.Speed.RadiansPerSecond;
            var part = span > 0 ? Math.Clamp((magnitude - below.Speed.RadiansPerSecond) / span, 0, 1) : 1;
            var torque = below.Torque.NewtonMetres + (part * (above.Torque.NewtonMetres - below.Torque.NewtonMetres));
            return Torque.FromNewtonMetres(torque * Math.Sign(speed.RadiansPerSecond));
        }

        /// <inheritdoc/>
        public override LoadCurve Times(int count) => new Table([.. Points.Select(point => (point.Speed, Several(point.Torque, count)))]);
    }
}
