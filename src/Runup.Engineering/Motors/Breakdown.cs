using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>The largest torque that a motor develops at a voltage and a frequency.</summary>
/// <remarks>
/// <para>
/// From the Thevenin equivalent of supply, stator and magnetizing branch seen from the rotor: s = ±Rr / √(Rth² + (Xth + Xlr)²),
/// T = 3 Vth² / (2 ω_s (√(Rth² + (Xth + Xlr)²) ± Rth)); plus for the motor, minus for the generator.
/// Vth Thevenin voltage (V), Rth + jXth Thevenin impedance (Ω), ω_s synchronous speed (rad/s).
/// </para>
/// <para>
/// Validity: as <see cref="CircuitSolution"/>. Exact with a core-loss resistance too, since the circuit is linear. With two cages there is no closed form:
/// T = 3 Vth² Re Y / (ω_s |1 + (Rth + jXth) Y|²), Y the admittance of the rotor, is searched over slips up to 1.
/// </para>
/// <para>Assumption: torque at the air gap; friction and stray loss, whose laws hold around the rated point, are not taken off.</para>
/// </remarks>
/// <param name="Torque">The largest torque at the air gap; negative for the generator.</param>
/// <param name="Slip">The slip at which it is developed.</param>
[Source("fitzgerald", "section 6.5, torque and power by use of Thevenin's theorem")]
public sealed record Breakdown(Torque Torque, Slip Slip)
{
    /// <summary>Of the motor.</summary>
    public static Breakdown Of(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency) =>
        From(new PhaseCircuit(circuit, frequency.Hertz), voltage.Phase.Volts, 1);

    /// <summary>Of the machine as a generator.</summary>
    public static Breakdown OfGenerator(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency) =>
        From(new PhaseCircuit(circuit, frequency.Hertz), voltage.Phase.Volts, -1);

    /// <summary>The voltage at which the motor's largest torque is a given one: U = U₁ √(T/T₁), T₁ the largest torque at U₁ = rated voltage.</summary>
    public static LineVoltage VoltageFor(EquivalentCircuit circuit, ElectricalFrequency frequency, Torque torque) => LineVoltage.FromVolts(
        circuit.RatedVoltage.Volts * Math.Sqrt(torque.NewtonMetres / Of(circuit, circuit.RatedVoltage, frequency).Torque.NewtonMetres));

    private static Breakdown From(in PhaseCircuit circuit, double phase_V, int sign)
    {
        var (torque, slip) = Largest(circuit, phase_V, sign);
        return new Breakdown(Torque.FromNewtonMetres(torque), Slip.FromRatio(slip));
    }

    internal static (double Torque_Nm, double Slip) Largest(in PhaseCircuit circuit, double phase_V, int sign)
    {
        var (rth, xth, ratio) = circuit.Thevenin();
        if (circuit.HasTwoCages)
        {
            return TwoCageBreakdown.Largest(circuit, rth, xth, phase_V * ratio, sign);
        }

        var impedance = double.Hypot(rth, xth + circuit.RotorLeakage_ohm);
        var vth = phase_V * ratio;
        var torque = sign * 3 * vth * vth / (2 * circuit.SynchronousSpeed_radPerS * (impedance + (sign * rth)));
        return (torque, sign * circuit.RotorResistance_ohm / impedance);
    }
}
