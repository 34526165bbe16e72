using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors;

/// <summary>The T circuit at one frequency, as bare numbers for the inner loops: ohms, watts, rad/s.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct PhaseCircuit : IEmfAtFactor
{
    private readonly CircuitValues values;
    private readonly FrictionLaw friction;
    private readonly double scale;
    private readonly double phase_V;
    private readonly double gRotorNow;
    private readonly double bRotorNow;

    internal PhaseCircuit(EquivalentCircuit circuit, double frequency_Hz)
        : this(CircuitValues.Of(circuit), frequency_Hz)
    {
    }

    internal PhaseCircuit(in CircuitValues values, double frequency_Hz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequency_Hz);

        // Leakage is taken as linear: a reactance goes with frequency, a resistance does not.
        this.values = values;
        friction = FrictionLaw.At(values.Friction_W, values.ReferenceSpeed_radPerS);
        scale = frequency_Hz / values.RatedFrequency_Hz;
        SynchronousSpeed_radPerS = 2 * Math.PI * frequency_Hz / values.PolePairs;
    }

    private PhaseCircuit(in PhaseCircuit circuit, double phase_V, double gRotor, double bRotor)
    {
        this = circuit;
        (this.phase_V, gRotorNow, bRotorNow) = (phase_V, gRotor, bRotor);
    }

    internal double SynchronousSpeed_radPerS { get; }

    internal bool HasTwoCages => values.SecondRotor_ohm > 0;

    internal double RotorResistance_ohm => values.Rotor_ohm;

    internal double RotorLeakage_ohm => values.RotorLeakage_ohm * scale;

    internal double StatorResistance_ohm => values.Stator_ohm;

    internal double CoreLoss_siemens => values.CoreLoss_siemens;

    /// <summary>Currents and powers at a phase voltage and a slip.</summary>
    internal PhaseFlow At(double phase_V, double slip)
    {
        var (gRotor, bRotor) = RotorAdmittance(slip);
        var factor = values.Iron.IronShare > 0
            ? values.Iron.Settle(new PhaseCircuit(this, phase_V, gRotor, bRotor), scale)
            : 1;
        return Flow(phase_V, slip, gRotor, bRotor, factor);
    }

    /// <summary>Currents and powers at an air-gap voltage and a slip: what the terminals then need.</summary>
    internal PhaseFlow AtEmf(double emf_V, double slip)
    {
        var (gRotor, bRotor) = RotorAdmittance(slip);
        var factor = values.Iron.IronShare > 0 ? values.Iron.Factor(emf_V / (values.Iron.ReferenceEmf_V * scale)) : 1;
        var (iRe, iIm) = (emf_V * (gRotor + values.CoreLoss_siemens), emf_V * (bRotor - (factor / (values.Magnetizing_ohm * scale))));
        var x = values.StatorLeakage_ohm * scale;
        var (vRe, vIm) = (emf_V + (iRe * values.Stator_ohm) - (iIm * x), (iRe * x) + (iIm * values.Stator_ohm));
        var v = double.Hypot(vRe, vIm);
        return new PhaseFlow(
            this, slip, v, ((iRe * vRe) + (iIm * vIm)) / v, ((iIm * vRe) - (iRe * vIm)) / v, (iRe * iRe) + (iIm * iIm), emf_V * emf_V, gRotor, bRotor);
    }

    double IEmfAtFactor.Emf_V(double factor) => Flow(phase_V, 0, gRotorNow, bRotorNow, factor).AirGapEmf_V;

    /// <summary>Admittance of the rotor, all cages: Yr = s (Rr − j s Xlr) / (Rr² + s² Xlr²), which needs no division by the slip.</summary>
    internal (double G, double B) RotorAdmittance(double slip)
    {
        var (g, b) = Cage(slip, values.Rotor_ohm, values.RotorLeakage_ohm * scale);
        if (!HasTwoCages)
        {
            return (g, b);
        }

        var (g2, b2) = Cage(slip, values.SecondRotor_ohm, values.SecondRotorLeakage_ohm * scale);
        return (g + g2, b + b2);
    }

    /// <summary>Thevenin equivalent seen from the rotor: resistance, reactance and open-circuit voltage for one volt; the iron as at its reference flux.</summary>
    internal (double Resistance_ohm, double Reactance_ohm, double Voltage_V) Thevenin()
    {
        var bMagnetizing = -1 / (values.Magnetizing_ohm * scale);
        var square = (values.CoreLoss_siemens * values.CoreLoss_siemens) + (bMagnetizing * bMagnetizing);
        var inner = new System.Numerics.Complex(values.CoreLoss_siemens / square, -bMagnetizing / square);
        var series = new System.Numerics.Complex(values.Stator_ohm, values.StatorLeakage_ohm * scale);
        var divider = inner / (inner + series);
        var impedance = series * divider;
        return (impedance.Real, impedance.Imaginary, divider.Magnitude);
    }

    /// <summary>Friction and stray loss together with what scales them.</summary>
    internal (double Friction_W, double Stray_W) MechanicalLosses(double speed_radPerS, double currentSquare)
    {
        var relative = speed_radPerS / values.ReferenceSpeed_radPerS;
        var square = relative * relative;
        return (friction.Torque_Nm(speed_radPerS) * speed_radPerS, values.StrayPerSquareAmpere_W * currentSquare * square);
    }

    /// <summary>Torque of friction and stray loss: the loss over the speed, without dividing by it.</summary>
    internal double MechanicalLossTorque(double speed_radPerS, double currentSquare) =>
        friction.Torque_Nm(speed_radPerS) + (values.StrayPerSquareAmpere_W * currentSquare * speed_radPerS / (values.ReferenceSpeed_radPerS * values.ReferenceSpeed_radPerS));

    private static (double G, double B) Cage(double slip, double resistance_ohm, double leakage_ohm)
    {
        var slipReactance = slip * leakage_ohm;
        var rotorScale = slip / ((resistance_ohm * resistance_ohm) + (slipReactance * slipReactance));
        return (resistance_ohm * rotorScale, -slipReactance * rotorScale);
    }

    private PhaseFlow Flow(double phase_V, double slip, double gRotor, double bRotor, double magnetizingFactor)
    {
        var (g, b) = (gRotor + values.CoreLoss_siemens, bRotor - (magnetizingFactor / (values.Magnetizing_ohm * scale)));
        var square = (g * g) + (b * b);
        var (rInner, xInner) = (g / square, -b / square);

        var (r, x) = (values.Stator_ohm + rInner, (values.StatorLeakage_ohm * scale) + xInner);
        var impedanceSquare = (r * r) + (x * x);
        var (active, reactive) = (phase_V * r / impedanceSquare, -phase_V * x / impedanceSquare);
        var currentSquare = (active * active) + (reactive * reactive);
        var emfSquare = currentSquare * ((rInner * rInner) + (xInner * xInner));
        return new PhaseFlow(this, slip, phase_V, active, reactive, currentSquare, emfSquare, gRotor, bRotor);
    }
}
