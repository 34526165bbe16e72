using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Where the rotor's flux points and how fast it turns, from voltage and current alone: the voltage model, held at low frequency by the flux asked for.</summary>
/// <remarks>
/// <para>
/// In the frame in which the drive works, x = q − j·d: pλs = v − Rs·is − jω·λs + g·(λ* − λr) and λr = λs − Lσ·is, all leakage on the stator's side. The frame is turned so that λr
/// stays on its d axis: with δ = λqr/λdr, ω = ωr + ωslip + K_p·δ, pωr = K_i·δ, ωslip = Rr·iqs/λdr. ωr is the estimate of the speed.
/// </para>
/// <para>The pull g towards the flux asked for keeps offset and drift in check; it is what bends the estimate below a hertz or two, where the voltage model sees nothing. Gains: g 6 /s, K_p 100 /s, K_i 2500 /s² (found by trial on motors from 0.75 to 75 kW).</para>
/// </remarks>
[Engineering.Source("krause", "chapter 6, voltage and flux linkage equations in the arbitrary reference frame (from memory)")]
internal sealed class FluxObserver<T> : IFluxModel<T>
    where T : struct, ILanes<T>
{
    private const double Pull = 6;
    private const double Proportional = 100;
    private const double Integral = 2500;

    // Of the flux asked for: below it nothing is told of angle and speed.
    private const double LeastFlux = 0.2;

    private readonly VectorFigures figures;
    private T fluxQ;
    private T fluxD;
    private T lastQ;
    private T lastD;

    internal FluxObserver(VectorFigures figures) => this.figures = figures;

    /// <inheritdoc/>
    public T RotorRadPerS { get; private set; }

    /// <inheritdoc/>
    public T FrameRadPerS { get; private set; }

    /// <inheritdoc/>
    public T FluxWb { get; private set; }

    /// <inheritdoc/>
    public void Reset(T where)
    {
        (fluxQ, fluxD) = (T.Choose(where, default, fluxQ), T.Choose(where, default, fluxD));
        (RotorRadPerS, FrameRadPerS) = (T.Choose(where, default, RotorRadPerS), T.Choose(where, default, FrameRadPerS));
        FluxWb = T.Choose(where, default, FluxWb);
    }

    /// <inheritdoc/>
    /// <remarks>The motor stands under a voltage along the q axis, which puts its flux on the d axis.</remarks>
    public void Take(T where, T hz, double fluxWb)
    {
        var radPerS = (2 * Math.PI) * hz;
        var turns = T.And(where, T.Less(T.Of(1), T.Abs(hz)));
        fluxD = T.Choose(turns, LaneSet.Sign(hz) * T.Of(fluxWb), fluxD);
        (RotorRadPerS, FrameRadPerS) = (T.Choose(turns, radPerS, RotorRadPerS), T.Choose(turns, radPerS, FrameRadPerS));
    }

    /// <inheritdoc/>
    public void Sample(in FluxSample<T> at)
    {
        var (voltQ, voltD, currentQ, currentD, wantedFluxWb, _) = at;
        T rotorQ = fluxQ - (figures.LeakageH * currentQ), rotorD = fluxD - (figures.LeakageH * currentD);
        var slopeQ = voltQ - ((0.5 * figures.StatorOhm) * (currentQ + lastQ)) - (Pull * rotorQ);
        var slopeD = voltD - ((0.5 * figures.StatorOhm) * (currentD + lastD)) + (Pull * (wantedFluxWb - rotorD));
        (lastQ, lastD) = (currentQ, currentD);
        Turn(slopeQ, slopeD);
        rotorQ = fluxQ - (figures.LeakageH * currentQ);
        FluxWb = fluxD - (figures.LeakageH * currentD);
        var there = T.Less(LeastFlux * wantedFluxWb, FluxWb);
        var along = T.Max(FluxWb, LeastFlux * wantedFluxWb);
        var angle = LaneSet.Clamp(rotorQ / along, T.Of(-1), T.Of(1));
        RotorRadPerS = T.Choose(there, RotorRadPerS + ((Integral * ControlFigures.TickS) * angle), RotorRadPerS);
        var slip = figures.RotorOhm * currentQ / along;
        FrameRadPerS = T.Choose(there, RotorRadPerS + slip + (Proportional * angle), FrameRadPerS);
    }

    // λ′ = ((1 − jθ/2)·λ + T·slope) / (1 + jθ/2), θ = ω·T: the turn keeps the length of the flux whatever the speed, where plain steps would make it grow.
    private void Turn(T slopeQ, T slopeD)
    {
        var half = (0.5 * ControlFigures.TickS) * FrameRadPerS;
        var real = fluxQ - (half * fluxD) + (ControlFigures.TickS * slopeQ);
        var imaginary = -fluxD - (half * fluxQ) - (ControlFigures.TickS * slopeD);
        var per = T.Of(1) / (T.Of(1) + (half * half));
        fluxQ = per * (real + (half * imaginary));
        fluxD = -(per * (imaginary - (half * real)));
    }
}
