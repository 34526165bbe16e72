using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>What the simulated motor and shaft have beyond the plain model: iron that saturates, a second cage, a shaft that twists.</summary>
/// <remarks>Several times slower than the plain model, and for one drive only: an ensemble keeps the plain one.</remarks>
public sealed record PlantDetail
{
    /// <summary>
    /// Share a of the magnetizing current that the iron takes at rated voltage without load: i/i₀ = (1 − a)·ψ + a·ψ⁷, ψ the flux over the one there. Zero: a straight line.
    /// </summary>
    public Fraction IronShare { get; init; }

    /// <summary>The second cage of the circuit turns with the first, instead of one that is equal to both at rated slip.</summary>
    public bool TwoCages { get; init; } = true;

    /// <summary>The shaft between motor and machine; null: stiff.</summary>
    public ShaftCoupling? Coupling { get; init; }
}

/// <summary>A shaft or coupling that twists, at the motor's speed.</summary>
/// <param name="Stiffness_NmPerRad">Torque for each radian of twist.</param>
/// <param name="Damping_NmsPerRad">Torque for each rad/s of difference between its ends.</param>
public sealed record ShaftCoupling(double Stiffness_NmPerRad, double Damping_NmsPerRad);
