using System.Runtime.CompilerServices;
using Runup.Engineering;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>The induction machine with flux linkages as states, in a frame that turns with its voltage.</summary>
/// <remarks>
/// <para>
/// In the notation of Krause (q and d axes, rotor referred to the stator, ω the speed of the frame, ωr the electrical speed of the rotor):
/// pλqs = vqs − rs·iqs − ω·λds; pλds = vds − rs·ids + ω·λqs; pλqr = −rr·iqr − (ω − ωr)·λdr; pλdr = −rr·idr + (ω − ωr)·λqr (Wb/s = V);
/// λs = Lls·is + λm, λr = Llr·ir + λm (Wb); Te = 3/2 · (P/2) · (λqr·idr − λdr·iqr) (N·m).
/// </para>
/// <para>
/// Core loss: the resistance rc across the magnetizing branch takes the current jω·λm/rc, that is, the voltage of λm is taken as it is once
/// λm stands still in the frame. Exact in the steady state of a frame that turns with the field; during transients the small current that
/// p·λm would drive through rc is left out, because following it would need steps of microseconds.
/// </para>
/// <para>Assumes sinusoidal windings, three equal phases, no saturation, one cage with constant resistance.</para>
/// </remarks>
[Source("krause", "chapter 6, voltage and flux linkage equations in the arbitrary reference frame (from memory)")]
internal readonly struct InductionMachine
{
    internal readonly double StatorOhm;
    internal readonly double RotorOhm;
    internal readonly double PerStatorLeakageH;
    internal readonly double PerRotorLeakageH;
    internal readonly double PolePairs;
    private readonly double magnetizingH;
    private readonly double rotorLeakageH;
    private readonly double perCoreOhm;

    internal InductionMachine(EquivalentCircuit circuit)
    {
        // One cage here: what two are together at rated slip.
        circuit = circuit.WithOneCage();
        var baseRadPerS = circuit.RatedFrequency.RadiansPerSecond;
        StatorOhm = circuit.StatorResistance.Ohms;
        RotorOhm = circuit.RotorResistance.Ohms;
        PerStatorLeakageH = baseRadPerS / circuit.StatorLeakage.Ohms;
        PerRotorLeakageH = baseRadPerS / circuit.RotorLeakage.Ohms;
        magnetizingH = circuit.Magnetizing.Ohms / baseRadPerS;
        rotorLeakageH = 1 / PerRotorLeakageH;
        perCoreOhm = circuit.CoreLoss is { } core ? 1 / core.Ohms : 0;
        PolePairs = circuit.Poles.Pairs;
    }

    /// <summary>Rotor flux that no stator current feeds falls with this rate: rr / (Llr + Lm), in 1/s.</summary>
    internal double OpenRotorRate => RotorOhm / (rotorLeakageH + magnetizingH);

    /// <summary>Flux of the stator over flux of the rotor while the stator carries no current: Lm / (Llr + Lm).</summary>
    internal double OpenStatorShare => magnetizingH / (rotorLeakageH + magnetizingH);

    /// <summary>Inductance that the stator shows while the rotor flux is held: Lls + Lm·Llr/(Lm + Llr), in H.</summary>
    internal double TransientH => (1 / PerStatorLeakageH) + (magnetizingH * rotorLeakageH / (magnetizingH + rotorLeakageH));

    /// <summary>Fastest rate of the fluxes, about rs/L′ + rr/L′ beside the frame's own, in 1/s.</summary>
    internal double FastestRate => (StatorOhm + RotorOhm) / TransientH;

    /// <summary>Rate at which the shaft swings against the field, √(dT/dω / (J·τ)), at a voltage and frequency, in 1/s.</summary>
    /// <remarks>dT/dω = 3·V²·(P/2)²/(ω²·rr) about synchronous speed, τ = L′/rr the lag of the torque; V phase voltage rms.</remarks>
    internal double SwingRate(double phaseV, double radPerS, double inertia) =>
        PolePairs * phaseV / radPerS * Math.Sqrt(3 / (inertia * TransientH));

    /// <summary>How the magnetizing flux follows from the others at a speed of the frame; constant while that speed is.</summary>
    /// <remarks>λm = (λs/Lls + λr/Llr) / (1/Lm + 1/Lls + 1/Llr + jω/rc).</remarks>
    internal MagnetizingShare ShareAt(double frameRadPerS)
    {
        var sum = (1 / magnetizingH) + PerStatorLeakageH + PerRotorLeakageH;
        var core = frameRadPerS * perCoreOhm;
        var square = (sum * sum) + (core * core);
        return new MagnetizingShare(sum / square, -core / square);
    }

    /// <summary>Power lost in the core, three phases, in W.</summary>
    internal double CoreLossW(in MachineCurrents currents, double frameRadPerS) =>
        1.5 * frameRadPerS * frameRadPerS * perCoreOhm * ((currents.FluxQmWb * currents.FluxQmWb) + (currents.FluxDmWb * currents.FluxDmWb));

    /// <summary>Energy in the fields, in J: 3/4 (is·λs + ir·λr), without the core's current.</summary>
    internal static double FieldEnergyJ(in MachineFluxes f, in MachineCurrents i) =>
        0.75 * ((i.QsA * f.QsWb) + (i.DsA * f.DsWb) + (i.QrA * f.QrWb) + (i.DrA * f.DrWb));

    /// <summary>Currents and torque from the flux linkages.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal MachineCurrents Currents(in MagnetizingShare share, double qsWb, double dsWb, double qrWb, double drWb)
    {
        var sumQ = (qsWb * PerStatorLeakageH) + (qrWb * PerRotorLeakageH);
        var sumD = (dsWb * PerStatorLeakageH) + (drWb * PerRotorLeakageH);

        // With x = q and y = −d as Krause's complex vector, (x + jy)·(re + j·im).
        var qmWb = (share.Real * sumQ) + (share.Imaginary * sumD);
        var dmWb = (share.Real * sumD) - (share.Imaginary * sumQ);
        return new MachineCurrents
        {
            QsA = (qsWb - qmWb) * PerStatorLeakageH,
            DsA = (dsWb - dmWb) * PerStatorLeakageH,
            QrA = (qrWb - qmWb) * PerRotorLeakageH,
            DrA = (drWb - dmWb) * PerRotorLeakageH,
            FluxQmWb = qmWb,
            FluxDmWb = dmWb,
        };
    }

    /// <summary>Torque that the field develops on the rotor, in N·m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double TorqueNm(in MachineCurrents i, double qrWb, double drWb) => 1.5 * PolePairs * ((qrWb * i.DrA) - (drWb * i.QrA));
}
