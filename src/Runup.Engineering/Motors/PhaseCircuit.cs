using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors;

/// <summary>The T circuit at one frequency, as bare numbers for the inner loops: ohms, watts, rad/s.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct PhaseCircuit
{
    private readonly double stator_ohm;
    private readonly double statorLeakage_ohm;
    private readonly double magnetizing_ohm;
    private readonly double coreLoss_siemens;
    private readonly double rotor_ohm;
    private readonly double rotorLeakage_ohm;
    private readonly FrictionLaw friction;
    private readonly double strayPerSquareAmpere_W;
    private readonly double referenceSpeed_radPerS;

    internal PhaseCircuit(EquivalentCircuit circuit, double frequency_Hz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequency_Hz);
        if (circuit.StrayLoss.Watts != 0 && circuit.RatedCurrent is not { Amperes: > 0 })
        {
            throw new ArgumentException("A stray loss holds at a current, which this circuit does not state.", nameof(circuit));
        }

        // Leakage and main flux are taken as linear: a reactance goes with frequency, a resistance does not.
        var scale = frequency_Hz / circuit.RatedFrequency.Hertz;
        stator_ohm = circuit.StatorResistance.Ohms;
        statorLeakage_ohm = circuit.StatorLeakage.Ohms * scale;
        magnetizing_ohm = circuit.Magnetizing.Ohms * scale;
        rotor_ohm = circuit.RotorResistance.Ohms;
        rotorLeakage_ohm = circuit.RotorLeakage.Ohms * scale;
        coreLoss_siemens = circuit.CoreLoss is { } coreLoss ? 1 / coreLoss.Ohms : 0;
        friction = FrictionLaw.Of(circuit);
        strayPerSquareAmpere_W = circuit.RatedCurrent is { Amperes: > 0 } rated ? circuit.StrayLoss.Watts / (rated.Amperes * rated.Amperes) : 0;
        referenceSpeed_radPerS = circuit.RatedSpeed?.RadiansPerSecond
            ?? circuit.RatedFrequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond;
        SynchronousSpeed_radPerS = 2 * Math.PI * frequency_Hz / circuit.Poles.Pairs;
    }

    internal double SynchronousSpeed_radPerS { get; }

    internal double RotorResistance_ohm => rotor_ohm;

    internal double RotorLeakage_ohm => rotorLeakage_ohm;

    /// <summary>Currents and powers at a phase voltage and a slip.</summary>
    internal PhaseFlow At(double phase_V, double slip)
    {
        // Rotor branch as an admittance, Yr = s (Rr − j s Xlr) / (Rr² + s² Xlr²), which needs no division by the slip.
        var slipReactance = slip * rotorLeakage_ohm;
        var rotorScale = slip / ((rotor_ohm * rotor_ohm) + (slipReactance * slipReactance));
        var (gRotor, bRotor) = (rotor_ohm * rotorScale, -slipReactance * rotorScale);

        var (g, b) = (gRotor + coreLoss_siemens, bRotor - (1 / magnetizing_ohm));
        var square = (g * g) + (b * b);
        var (rInner, xInner) = (g / square, -b / square);

        var (r, x) = (stator_ohm + rInner, statorLeakage_ohm + xInner);
        var impedanceSquare = (r * r) + (x * x);
        var (active, reactive) = (phase_V * r / impedanceSquare, -phase_V * x / impedanceSquare);
        var currentSquare = (active * active) + (reactive * reactive);
        var emfSquare = currentSquare * ((rInner * rInner) + (xInner * xInner));

        return new PhaseFlow(this, slip, phase_V, active, reactive, currentSquare, emfSquare, gRotor);
    }

    /// <summary>Thevenin equivalent seen from the rotor: resistance, reactance and open-circuit voltage for one volt.</summary>
    internal (double Resistance_ohm, double Reactance_ohm, double Voltage_V) Thevenin()
    {
        var bMagnetizing = -1 / magnetizing_ohm;
        var square = (coreLoss_siemens * coreLoss_siemens) + (bMagnetizing * bMagnetizing);
        var inner = new System.Numerics.Complex(coreLoss_siemens / square, -bMagnetizing / square);
        var series = new System.Numerics.Complex(stator_ohm, statorLeakage_ohm);
        var divider = inner / (inner + series);
        var impedance = series * divider;
        return (impedance.Real, impedance.Imaginary, divider.Magnitude);
    }

    /// <summary>Friction and stray loss together with what scales them.</summary>
    internal (double Friction_W, double Stray_W) MechanicalLosses(double speed_radPerS, double currentSquare)
    {
        var square = speed_radPerS / referenceSpeed_radPerS * (speed_radPerS / referenceSpeed_radPerS);
        return (friction.Torque_Nm(speed_radPerS) * speed_radPerS, strayPerSquareAmpere_W * currentSquare * square);
    }

    /// <summary>Torque of friction and stray loss: the loss over the speed, without dividing by it.</summary>
    internal double MechanicalLossTorque(double speed_radPerS, double currentSquare) =>
        friction.Torque_Nm(speed_radPerS) + (strayPerSquareAmpere_W * currentSquare * speed_radPerS / (referenceSpeed_radPerS * referenceSpeed_radPerS));

    internal double StatorResistance_ohm => stator_ohm;

    internal double CoreLoss_siemens => coreLoss_siemens;
}
