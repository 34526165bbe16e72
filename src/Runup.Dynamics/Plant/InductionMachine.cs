using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
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
internal readonly struct InductionMachine<T>
    where T : struct, ILanes<T>
{
    internal readonly T StatorOhm;
    internal readonly T RotorOhm;
    internal readonly T PerStatorLeakageH;
    internal readonly T PerRotorLeakageH;
    internal readonly T PolePairs;
    private readonly T magnetizingH;
    private readonly T rotorLeakageH;
    private readonly T perCoreOhm;
    private readonly T torquePerFluxCurrent;
    private readonly T withoutCoreH;

    /// <summary>A machine for each lane.</summary>
    internal InductionMachine(IReadOnlyList<EquivalentCircuit> circuits)
    {
        // One cage here: what two are together at rated slip.
        circuits = [.. circuits.Select(c => c.WithOneCage())];
        StatorOhm = Of(circuits, c => c.StatorResistance.Ohms);
        RotorOhm = Of(circuits, c => c.RotorResistance.Ohms);
        PerStatorLeakageH = Of(circuits, c => c.RatedFrequency.RadiansPerSecond / c.StatorLeakage.Ohms);
        PerRotorLeakageH = Of(circuits, c => c.RatedFrequency.RadiansPerSecond / c.RotorLeakage.Ohms);
        magnetizingH = Of(circuits, c => c.Magnetizing.Ohms / c.RatedFrequency.RadiansPerSecond);
        rotorLeakageH = T.Of(1) / PerRotorLeakageH;
        perCoreOhm = Of(circuits, c => c.CoreLoss is { } core ? 1 / core.Ohms : 0);
        withoutCoreH = T.Of(1) / ((T.Of(1) / magnetizingH) + PerStatorLeakageH + PerRotorLeakageH);
        HasCore = T.Any(T.Less(default, perCoreOhm));
        PolePairs = Of(circuits, c => c.Poles.Pairs);
        torquePerFluxCurrent = 1.5 * PolePairs;
    }

    /// <summary>Some member has core loss; without any the share of the magnetizing flux is real.</summary>
    internal bool HasCore { get; }

    /// <summary>Rotor flux that no stator current feeds falls with this rate: rr / (Llr + Lm), in 1/s.</summary>
    internal T OpenRotorRate => RotorOhm / (rotorLeakageH + magnetizingH);

    /// <summary>Flux of the stator over flux of the rotor while the stator carries no current: Lm / (Llr + Lm).</summary>
    internal T OpenStatorShare => magnetizingH / (rotorLeakageH + magnetizingH);

    /// <summary>Inductance that the stator shows while the rotor flux is held: Lls + Lm·Llr/(Lm + Llr), in H.</summary>
    internal T TransientH => (T.Of(1) / PerStatorLeakageH) + (magnetizingH * rotorLeakageH / (magnetizingH + rotorLeakageH));

    /// <summary>Fastest rate of the fluxes, about rs/L′ + rr/L′ beside the frame's own, in 1/s.</summary>
    internal T FastestRate => (StatorOhm + RotorOhm) / TransientH;

    /// <summary>Rate at which the shaft swings against the field, √(dT/dω / (J·τ)), at a voltage and frequency, in 1/s.</summary>
    /// <remarks>dT/dω = 3·V²·(P/2)²/(ω²·rr) about synchronous speed, τ = L′/rr the lag of the torque; V phase voltage rms.</remarks>
    internal T SwingRate(T phaseV, T radPerS, T inertia) =>
        PolePairs * phaseV / radPerS * T.Sqrt(T.Of(3) / (inertia * TransientH));

    /// <summary>How the magnetizing flux follows from the others at a speed of the frame; constant while that speed is.</summary>
    /// <remarks>λm = (λs/Lls + λr/Llr) / (1/Lm + 1/Lls + 1/Llr + jω/rc).</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal MagnetizingShare<T> ShareAt(T frameRadPerS)
    {
        if (!HasCore)
        {
            return new MagnetizingShare<T>(withoutCoreH, default);
        }

        // With g the core's part, ω/rc · λm's share without it: (1 − jg)/(1 + g²) of that share.
        var core = frameRadPerS * perCoreOhm * withoutCoreH;
        var per = withoutCoreH / (T.Of(1) + (core * core));
        return new MagnetizingShare<T>(per, -core * per);
    }

    /// <summary>Power lost in the core, three phases, in W.</summary>
    internal T CoreLossW(in MachineCurrents<T> currents, T frameRadPerS) =>
        1.5 * frameRadPerS * frameRadPerS * perCoreOhm * ((currents.FluxQmWb * currents.FluxQmWb) + (currents.FluxDmWb * currents.FluxDmWb));

    /// <summary>Energy in the fields, in J: 3/4 (is·λs + ir·λr), without the core's current.</summary>
    internal static T FieldEnergyJ(in SixStates<T> x, in MachineCurrents<T> i) =>
        0.75 * ((i.QsA * x.X1) + (i.DsA * x.X2) + (i.QrA * x.X3) + (i.DrA * x.X4));

    /// <summary>Currents from the flux linkages; without core loss the share is real, which its caller knows.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal MachineCurrents<T> Currents(in MagnetizingShare<T> share, T qsWb, T dsWb, T qrWb, T drWb, bool withCore = true)
    {
        var (ownQ, ownD) = (qsWb * PerStatorLeakageH, dsWb * PerStatorLeakageH);
        var (farQ, farD) = (qrWb * PerRotorLeakageH, drWb * PerRotorLeakageH);
        var (sumQ, sumD) = (ownQ + farQ, ownD + farD);

        // With x = q and y = −d as Krause's complex vector, (x + jy)·(re + j·im).
        var qmWb = withCore ? T.MultiplyAdd(share.Real, sumQ, share.Imaginary * sumD) : share.Real * sumQ;
        var dmWb = withCore ? T.MultiplySubtractFrom(share.Imaginary, sumQ, share.Real * sumD) : share.Real * sumD;
        return new MachineCurrents<T>
        {
            QsA = T.MultiplySubtractFrom(PerStatorLeakageH, qmWb, ownQ),
            DsA = T.MultiplySubtractFrom(PerStatorLeakageH, dmWb, ownD),
            QrA = T.MultiplySubtractFrom(PerRotorLeakageH, qmWb, farQ),
            DrA = T.MultiplySubtractFrom(PerRotorLeakageH, dmWb, farD),
            FluxQmWb = qmWb,
            FluxDmWb = dmWb,
        };
    }

    /// <summary>Rates of the flux linkages under a voltage, in a frame of a speed, the rotor slipping behind it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Voltages(
        in MachineCurrents<T> i, T qsWb, T dsWb, T qrWb, T drWb, T frameRadPerS, T slipRadPerS, T qsV, T dsV, out T qs, out T ds, out T qr, out T dr)
    {
        qs = T.MultiplySubtractFrom(StatorOhm, i.QsA, T.MultiplySubtractFrom(frameRadPerS, dsWb, qsV));
        ds = T.MultiplySubtractFrom(StatorOhm, i.DsA, T.MultiplyAdd(frameRadPerS, qsWb, dsV));
        qr = T.MultiplySubtractFrom(RotorOhm, i.QrA, T.MultiplySubtractFrom(slipRadPerS, drWb, default));
        dr = T.MultiplySubtractFrom(RotorOhm, i.DrA, slipRadPerS * qrWb);
    }

    /// <summary>Torque that the field develops on the rotor, in N·m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T TorqueNm(in MachineCurrents<T> i, T qrWb, T drWb) => torquePerFluxCurrent * T.MultiplySubtractFrom(drWb, i.QrA, qrWb * i.DrA);

    private static T Of(IReadOnlyList<EquivalentCircuit> circuits, Func<EquivalentCircuit, double> figure) => LaneSet.From<T, EquivalentCircuit>(circuits, figure);
}
