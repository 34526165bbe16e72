using Runup.Engineering.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>Where a motor runs under a load: on the stable branch of its torque curve, or nowhere.</summary>
/// <remarks>The slip is found between the generator's and the motor's peak, where the shaft torque rises with slip, to the last digits.</remarks>
public abstract record OperatingPoint
{
    private OperatingPoint()
    {
    }

    /// <summary>The motor carries the load.</summary>
    /// <param name="Solution">Its steady state.</param>
    public sealed record Runs(CircuitSolution Solution) : OperatingPoint;

    /// <summary>The load is more than the motor has at this voltage and frequency.</summary>
    /// <param name="Largest">The steady state at the largest torque (or power) in the direction asked for.</param>
    public sealed record BeyondBreakdown(CircuitSolution Largest) : OperatingPoint;

    /// <summary>Where the shaft gives a torque; negative when the load drives.</summary>
    public static OperatingPoint AtShaftTorque(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, Torque torque) =>
        Find(circuit, voltage, frequency, torque.NewtonMetres, flow => flow.ShaftTorque_Nm);

    /// <summary>Where the shaft gives a power; negative when the load drives.</summary>
    public static OperatingPoint AtShaftPower(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, ShaftPower power) =>
        Find(circuit, voltage, frequency, power.Watts, flow => flow.Shaft_W);

    /// <summary>Uncoupled: the motor turns only itself.</summary>
    public static OperatingPoint Uncoupled(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency) =>
        AtShaftTorque(circuit, voltage, frequency, Torque.FromNewtonMetres(0));

    private static OperatingPoint Find(
        EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, double wanted, Func<PhaseFlow, double> quantity)
    {
        var phases = new PhaseCircuit(circuit, frequency.Hertz);
        var phase_V = voltage.Phase.Volts;
        double At(double slip) => quantity(phases.At(phase_V, slip));

        var motorSlip = Peak.Between(0, Breakdown.Largest(phases, phase_V, 1).Slip, At);
        var generatorSlip = Peak.Between(Breakdown.Largest(phases, phase_V, -1).Slip, 0, slip => -At(slip));
        var slip = At(motorSlip) < wanted ? motorSlip
            : At(generatorSlip) > wanted ? generatorSlip
            : Root.Between(generatorSlip, motorSlip, candidate => At(candidate) - wanted);
        var solution = CircuitSolution.At(circuit, voltage, frequency, Slip.FromRatio(slip));
        return slip == motorSlip || slip == generatorSlip ? new BeyondBreakdown(solution) : new Runs(solution);
    }
}
