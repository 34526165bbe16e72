using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Control of flux and torque, with an encoder or without: the current is kept on two axes, of which one makes the flux and the other the torque.</summary>
/// <remarks>
/// <para>
/// The speed that an <see cref="IFluxModel{T}"/> tells is kept at the ramp's frequency by i_q* = K·(e + ∫e/T), within √(I_max² − i_d²); i_d* makes the rated flux, less above base frequency and
/// where the bus has no voltage left. Each current has v = L_σ·α·(e + ∫e·R/L_σ) and the voltages of motion beside: v_q + ω·(L_σ·i_d + λr), v_d − ω·L_σ·i_q.
/// </para>
/// <para>The flux is built up at rest before the ramp starts. Gains: α 300 /s; full torque at ten times rated slip, T 0.15 s; with an encoder at four times, T 0.06 s (found by trial on motors from 0.75 to 75 kW).</para>
/// </remarks>
internal sealed class VectorControl<T>
    where T : struct, ILanes<T>
{
    private const double CurrentRate = 300;
    private const double SpeedRatio = 10;
    private const double SpeedIntegralS = 0.15;
    private const double EncoderSpeedRatio = 4;
    private const double EncoderSpeedIntegralS = 0.06;
    private const double FluxRate = 10;

    // Of the level of overvoltage control: within it the torque that brakes goes to zero (by trial).
    private const double BusWindow = 0.02;
    private const double BuiltUp = 0.85;
    private const double WeakeningRate = 4;
    private const double LeastWeakened = 0.3;

    private readonly VectorFigures figures;
    private readonly IFluxModel<T> flux;
    private readonly ShaftEncoder<T>? encoder;
    private readonly double polePairs;
    private readonly double? overvoltageV;
    private readonly double speedGain;
    private readonly double speedIntegralS;
    private T integralQ;
    private T integralD;
    private T speedIntegral;
    private T lastQ;
    private T lastD;
    private T lastBusV;
    private T weakened = T.Of(1);

    internal VectorControl(ControlFigures control)
    {
        figures = new VectorFigures(control);
        overvoltageV = control.Settings.OvervoltageControl ? control.OvervoltageControlV : null;
        if (control.Settings.Encoder is { } told)
        {
            polePairs = told.Poles.Pairs;
            encoder = new ShaftEncoder<T>(told.PulsesPerTurn);
        }

        flux = encoder is null ? new FluxObserver<T>(figures) : new EncoderFluxModel<T>(figures, polePairs);
        (var ratio, speedIntegralS) = encoder is null ? (SpeedRatio, SpeedIntegralS) : (EncoderSpeedRatio, EncoderSpeedIntegralS);
        speedGain = figures.RatedTorqueA / (ratio * figures.RatedSlipRadPerS);
    }

    /// <summary>Output frequency, in Hz.</summary>
    internal T FrequencyHz => (0.5 / Math.PI) * flux.FrameRadPerS;

    /// <summary>Speed of the motor as a frequency, in Hz, as it is known.</summary>
    internal T SpeedHz => (0.5 / Math.PI) * (encoder is null ? flux.RotorRadPerS : polePairs * encoder.RadPerS);

    /// <summary>Set where the torque is at what the current limit leaves.</summary>
    internal T Limited { get; private set; }

    /// <summary>+1 where the limit holds the motor below the ramp, −1 above, else 0.</summary>
    internal T HeldBack { get; private set; }

    /// <summary>Set where the flux stands, so that the ramp may start.</summary>
    internal T FluxStands { get; private set; }

    internal void Reset(T where)
    {
        flux.Reset(where);
        (integralQ, integralD) = (T.Choose(where, default, integralQ), T.Choose(where, default, integralD));
        speedIntegral = T.Choose(where, default, speedIntegral);
        (Limited, FluxStands) = (T.And(Limited, T.Not(where)), T.And(FluxStands, T.Not(where)));
        HeldBack = T.Choose(where, default, HeldBack);
        weakened = T.Choose(where, T.Of(1), weakened);
    }

    /// <summary>Takes over a motor that was found turning.</summary>
    internal void Take(T where, T hz) => flux.Take(where, hz, figures.RatedFluxWb * (1 + (figures.LeakageH / figures.MagnetizingH)));

    /// <summary>Counts on where there is an encoder, with the output on or off.</summary>
    internal void Count(in Measurement<T> measured) => encoder?.Sample(measured.SpeedRadPerS);

    /// <summary>One sample: the voltage for a speed of the ramp, line to line, rms.</summary>
    internal OutputVoltage<T> Sample(in Measurement<T> measured, T rampHz)
    {
        var (currentQ, currentD) = (Math.Sqrt(2) * measured.AlongA, Math.Sqrt(2) * measured.AcrossA);
        var fluxWb = WantedFlux(measured.BusV);
        var meanBusV = 0.5 * (lastBusV + measured.BusV);
        flux.Sample(new FluxSample<T>(lastQ * meanBusV, lastD * meanBusV, currentQ, currentD, fluxWb, encoder?.RadPerS ?? default));
        FluxStands = T.Or(FluxStands, T.Less(BuiltUp * fluxWb, flux.FluxWb));
        var wantedD = LaneSet.Clamp(
            (1 / figures.MagnetizingH) * (fluxWb + ((FluxRate * figures.MagnetizingH / figures.RotorOhm) * (fluxWb - flux.FluxWb))), default, T.Of(0.8 * figures.MostA));
        var wantedQ = Torque(rampHz, wantedD, measured.BusV);
        return Voltage(wantedQ, wantedD, currentQ, currentD, measured.BusV);
    }

    /// <summary>What the modulator made of it, peaks of the phase over the bus voltage.</summary>
    internal void Applied(T along, T across, T busV) => (lastQ, lastD, lastBusV) = (along, across, busV);

    private T WantedFlux(T busV)
    {
        var mostV = (VectorFigures.VoltageShare * Modulator.LargestLineRatio * Math.Sqrt(2.0 / 3)) * busV;
        var fast = T.Max(T.Abs(flux.FrameRadPerS), T.Of(1));
        return weakened * T.Min(T.Of(figures.RatedFluxWb), mostV * T.Of(figures.MagnetizingH / (figures.MagnetizingH + figures.LeakageH)) / fast);
    }

    private T Torque(T rampHz, T wantedD, T busV)
    {
        var most = T.Sqrt(T.Max(T.Of(figures.MostA * figures.MostA) - (wantedD * wantedD), default));
        var error = T.Choose(FluxStands, (2 * Math.PI * rampHz) - flux.RotorRadPerS, default);
        var wanted = speedIntegral + (speedGain * error);
        var braking = Braking(busV) * most;
        var held = LaneSet.Clamp(
            wanted, T.Choose(T.Less(default, flux.RotorRadPerS), -braking, -most), T.Choose(T.Less(flux.RotorRadPerS, default), braking, most));
        Limited = T.Less(T.Of(1e-9), T.Abs(wanted - held));
        HeldBack = T.Choose(Limited, LaneSet.Sign(wanted), default);
        var further = T.Less(default, (wanted - held) * error);
        speedIntegral = LaneSet.Clamp(
            T.Choose(further, speedIntegral, speedIntegral + ((speedGain * ControlFigures.TickS / speedIntegralS) * error)), -most, most);
        return held;
    }

    // What of the torque may brake: less as the bus comes near the level of overvoltage control.
    private T Braking(T busV) => overvoltageV is { } level ? LaneSet.Clamp((1 / (BusWindow * level)) * (T.Of(level) - busV), default, T.Of(1)) : T.Of(1);

    private OutputVoltage<T> Voltage(T wantedQ, T wantedD, T currentQ, T currentD, T busV)
    {
        var gain = CurrentRate * figures.LeakageH;
        var integral = CurrentRate * (figures.StatorOhm + figures.RotorOhm) * ControlFigures.TickS;
        var (errorQ, errorD) = (wantedQ - currentQ, wantedD - currentD);
        var omega = flux.FrameRadPerS;
        var voltQ = (gain * errorQ) + integralQ + (omega * ((figures.LeakageH * currentD) + flux.FluxWb));
        var voltD = (gain * errorD) + integralD - (omega * (figures.LeakageH * currentQ));
        var most = (Modulator.LargestLineRatio * Math.Sqrt(2.0 / 3)) * busV;
        var size = T.Sqrt((voltQ * voltQ) + (voltD * voltD));
        var within = T.Less(size, most);
        var room = LaneSet.Clamp(T.Of(VectorFigures.VoltageShare) - (size / most), T.Of(-0.2), T.Of(0.2));
        weakened = LaneSet.Clamp(weakened + ((WeakeningRate * ControlFigures.TickS) * room), T.Of(LeastWeakened), T.Of(1));
        integralQ = T.Choose(within, integralQ + (integral * errorQ), integralQ);
        integralD = T.Choose(within, integralD + (integral * errorD), integralD);
        return new OutputVoltage<T>(Math.Sqrt(1.5) * voltQ, Math.Sqrt(1.5) * voltD);
    }
}
