using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Engineering.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>The speed at which a motor carries its machine at an output frequency.</summary>
public static class SteadySpeed
{
    /// <summary>The steady state; null where the machine asks for more than the motor's largest torque.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="circuit">The motor.</param>
    /// <param name="characteristic">Voltage against frequency.</param>
    /// <param name="frequency">Output frequency.</param>
    public static CircuitSolution? At(DrivenMachine machine, EquivalentCircuit circuit, VoltsPerHertz characteristic, ElectricalFrequency frequency)
    {
        var phases = new PhaseCircuit(circuit, frequency.Hertz);
        var train = new DriveTrain(machine);
        var voltage = characteristic.At(frequency);
        var phase_V = voltage.Phase.Volts;
        double Surplus(double slip)
        {
            var flow = phases.At(phase_V, slip);
            return flow.ShaftTorque_Nm - train.Torque_Nm(flow.Speed_radPerS, 0);
        }

        var (_, motorSlip) = Breakdown.Largest(phases, phase_V, 1);
        var (_, generatorSlip) = Breakdown.Largest(phases, phase_V, -1);
        var highest = Peak.Between(0, Math.Min(1, motorSlip), Surplus);
        return Surplus(highest) < 0 || Surplus(generatorSlip) > 0
            ? null
            : CircuitSolution.At(circuit, voltage, frequency, Slip.FromRatio(Root.Between(generatorSlip, highest, Surplus)));
    }
}
