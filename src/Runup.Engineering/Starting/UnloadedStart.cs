using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Starting;

/// <summary>Start and stop of an unloaded motor on the line, without a drive: time and heat, as for a bypass or a soft starter's lower bound.</summary>
/// <remarks>
/// With Kloss's torque T = 2 T_m/(s/s_m + s_m/s): t = J ω_s/(2 T_m) · ((s₁² − s₂²)/(2 s_m) + s_m ln(s₁/s₂)) from slip s₁ to s₂. Heat in the rotor J ω_s² (s₁² − s₂²)/2, in stator and rotor
/// together 1 + Rs/Rr times as much. T_m breakdown torque (N·m) at slip s_m, J inertia (kg·m²), ω_s synchronous speed (rad/s). Validity: no load, no friction; slips of one sign.
/// Assumptions: stator resistance does not bend the curve, no-load current neglected in the heat.
/// </remarks>
/// <param name="Inertia">At the motor's shaft.</param>
/// <param name="Synchronous">Synchronous speed.</param>
/// <param name="Largest">Breakdown torque with its slip.</param>
[Source("dubey", "section 6.6, transient analysis of starting and plugging")]
public sealed record UnloadedStart(Inertia Inertia, SynchronousSpeed Synchronous, Breakdown Largest)
{
    private double Start_s => Inertia.KilogramSquareMetres * Synchronous.RadiansPerSecond / Largest.Torque.NewtonMetres;

    /// <summary>A motor's start on its rated voltage and frequency.</summary>
    public static UnloadedStart Of(EquivalentCircuit circuit, Inertia inertia) => new(
        inertia,
        circuit.RatedFrequency.SynchronousSpeed(circuit.Poles),
        Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency));

    /// <summary>Slip at breakdown that makes the change between two slips the quickest: √((s₁² − s₂²)/(2 ln(s₁/s₂))).</summary>
    public static Slip QuickestBreakdownSlip(Slip from, Slip to) =>
        Slip.FromRatio(Math.Sqrt(Squares(from, to) / (2 * Math.Log(from.Ratio / to.Ratio))));

    /// <summary>Time between two slips: 1 to some 0.05 is a start, 2 to 1 a stop by plugging.</summary>
    public Duration Time(Slip from, Slip to)
    {
        var peak = Largest.Slip.Ratio;
        return Duration.FromSeconds(0.5 * Start_s * ((Squares(from, to) / (2 * peak)) + (peak * Math.Log(from.Ratio / to.Ratio))));
    }

    /// <summary>Heat in the rotor between two slips.</summary>
    public Energy RotorHeat(Slip from, Slip to) =>
        Energy.FromJoules(0.5 * Inertia.KilogramSquareMetres * Synchronous.RadiansPerSecond * Synchronous.RadiansPerSecond * Squares(from, to));

    /// <summary>Heat in stator and rotor between two slips.</summary>
    public Energy Heat(Slip from, Slip to, Resistance stator, Resistance rotor) =>
        Energy.FromJoules(RotorHeat(from, to).Joules * (1 + (stator.Ohms / rotor.Ohms)));

    private static double Squares(Slip from, Slip to) => (from.Ratio * from.Ratio) - (to.Ratio * to.Ratio);
}
