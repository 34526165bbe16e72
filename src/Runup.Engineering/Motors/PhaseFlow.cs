using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors;

/// <summary>What flows in the T circuit at one slip, as bare numbers; powers are of all three phases.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct PhaseFlow(
    in PhaseCircuit circuit,
    double slip,
    double phase_V,
    double active_A,
    double reactive_A,
    double currentSquare,
    double emfSquare,
    double rotorConductance_siemens,
    double rotorSusceptance_siemens)
{
    private readonly PhaseCircuit circuit = circuit;
    private readonly double currentSquare = currentSquare;
    private readonly double emfSquare = emfSquare;
    private readonly double rotorConductance_siemens = rotorConductance_siemens;
    private readonly double rotorSusceptance_siemens = rotorSusceptance_siemens;

    internal double Slip { get; } = slip;

    internal double Phase_V { get; } = phase_V;

    /// <summary>Stator current in phase with the voltage; the voltage is real.</summary>
    internal double Active_A { get; } = active_A;

    /// <summary>Stator current at right angles to the voltage; negative lags.</summary>
    internal double Reactive_A { get; } = reactive_A;

    internal double Current_A => Math.Sqrt(currentSquare);

    internal double AirGapEmf_V => Math.Sqrt(emfSquare);

    internal double RotorCurrent_A => Math.Sqrt(emfSquare) * double.Hypot(rotorConductance_siemens, rotorSusceptance_siemens);

    internal double Input_W => 3 * Phase_V * Active_A;

    internal double AirGap_W => 3 * emfSquare * rotorConductance_siemens;

    internal double Speed_radPerS => circuit.SynchronousSpeed_radPerS * (1 - Slip);

    internal double DevelopedTorque_Nm => AirGap_W / circuit.SynchronousSpeed_radPerS;

    internal double ShaftTorque_Nm => DevelopedTorque_Nm - circuit.MechanicalLossTorque(Speed_radPerS, currentSquare);

    internal double Shaft_W => ShaftTorque_Nm * Speed_radPerS;

    internal double StatorCopper_W => 3 * currentSquare * circuit.StatorResistance_ohm;

    internal double Core_W => 3 * emfSquare * circuit.CoreLoss_siemens;

    internal double RotorCopper_W => AirGap_W * Slip;

    internal (double Friction_W, double Stray_W) Mechanical => circuit.MechanicalLosses(Speed_radPerS, currentSquare);
}
