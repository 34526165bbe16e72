using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>A stretch of a duty cycle, with the torque constant or changing evenly.</summary>
/// <param name="Time">How long.</param>
/// <param name="From">Torque at its beginning.</param>
/// <param name="To">Torque at its end.</param>
public sealed record DutySegment(Duration Time, Torque From, Torque To)
{
    /// <summary>A stretch of constant torque.</summary>
    public DutySegment(Duration time, Torque torque)
        : this(time, torque, torque)
    {
    }

    /// <summary>A rest: the shaft stands still without torque, and a fan on the shaft does not cool.</summary>
    public bool IsRest { get; init; }
}

/// <summary>The equivalent constant torque of a load that repeats.</summary>
public static class DutyCycle
{
    /// <summary>The root mean square of the torque over the cycle.</summary>
    /// <remarks>
    /// T_rms = √(Σ ∫T² dt / Σ c t), where ∫T² dt = t (T₁² + T₁T₂ + T₂²)/3 for a torque that goes evenly from T₁ to T₂ in the time t (s), and c is 1, for rests the
    /// cooling that stays at standstill. Validity: cycle short against the motor's thermal time constant; heating taken as the square of torque,
    /// which holds at constant flux above about half load. Assumption: rests of a motor with its fan on the shaft count a third, if the caller says so.
    /// </remarks>
    /// <param name="segments">The stretches; at least one with a length.</param>
    /// <param name="coolingAtRest">Share of a rest that counts as cooling time: 1 for a separate fan; a third is common practice for a fan on the shaft.</param>
    /// <exception cref="ArgumentException">The cycle has no length.</exception>
    [Source("common-practice", "equivalent load by root mean square")]
    public static Torque RmsTorque(IReadOnlyList<DutySegment> segments, Fraction coolingAtRest)
    {
        var time_s = segments.Sum(segment => segment.Time.Seconds * (segment.IsRest ? coolingAtRest.Ratio : 1));
        if (!(time_s > 0))
        {
            throw new ArgumentException("A duty cycle needs a length.", nameof(segments));
        }

        var squares = segments.Sum(segment =>
        {
            var (from, to) = (segment.From.NewtonMetres, segment.To.NewtonMetres);
            return segment.Time.Seconds * ((from * from) + (from * to) + (to * to)) / 3;
        });
        return Torque.FromNewtonMetres(Math.Sqrt(squares / time_s));
    }
}
