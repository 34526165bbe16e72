using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>A flywheel that carries the peaks of a load, so that the motor's torque stays below a limit.</summary>
/// <remarks>
/// With the motor's torque on a straight line of slip speed, T = k Δω, the torque goes towards the load's with τ = J/k: J = k t/ln((T_L − T₀)/(T_L − T_lim)). T₀ torque before the
/// peak, T_L load at the peak, T_lim limit (N·m), t length of the peak (s), k (N·m·s/rad) torque over slip speed. Validity: up to about rated torque, constant supply frequency.
/// Assumption: the motor stands at T₀ when the peak begins.
/// </remarks>
[Source("dubey", "section 2.9, load equalization")]
public static class LoadEqualizer
{
    /// <summary>Inertia at the motor's shaft, rotor and all, for a peak.</summary>
    /// <param name="law">The motor's slip.</param>
    /// <param name="rated">Torque at the rated slip.</param>
    /// <param name="before">Torque before the peak.</param>
    /// <param name="peak">The load's torque at the peak.</param>
    /// <param name="limit">Most that the motor shall give, between the two.</param>
    /// <param name="lasting">How long the peak lasts.</param>
    /// <exception cref="ArgumentException">The limit does not lie between the torque before and the peak.</exception>
    public static Inertia InertiaFor(SlipLaw law, Torque rated, Torque before, Torque peak, Torque limit, Duration lasting)
    {
        var (whole, left) = (peak.NewtonMetres - before.NewtonMetres, peak.NewtonMetres - limit.NewtonMetres);
        if (!(left > 0 && left < whole))
        {
            throw new ArgumentException("The limit lies between the torque before the peak and the peak itself.", nameof(limit));
        }

        var slipSpeed_radPerS = law.RatedSlip.Ratio * law.RatedFrequency.SynchronousSpeed(law.Poles).RadiansPerSecond;
        return Inertia.FromKilogramSquareMetres(rated.NewtonMetres / slipSpeed_radPerS * lasting.Seconds / Math.Log(whole / left));
    }
}
