using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>The rotor's flux by the current model, from the currents and the measured speed: it holds at standstill, where voltages tell nothing.</summary>
/// <remarks>
/// In the frame that turns with the flux, all leakage on the stator's side: pλr = Rr·i_d − (Rr/Lm)·λr, ω = ωr + Rr·i_q/λr, ωr the shaft's speed times pole pairs. A wrong Rr turns the frame off the flux; the
/// speed is right all the same.
/// </remarks>
[Engineering.Source("krause", "chapter 6, voltage and flux linkage equations in the arbitrary reference frame (from memory)")]
internal sealed class EncoderFluxModel<T>(VectorFigures figures, double polePairs) : IFluxModel<T>
    where T : struct, ILanes<T>
{
    // Of the flux asked for: with less the slip is reckoned as with that.
    private const double LeastFlux = 0.2;

    /// <inheritdoc/>
    public T RotorRadPerS { get; private set; }

    /// <inheritdoc/>
    public T FrameRadPerS { get; private set; }

    /// <inheritdoc/>
    public T FluxWb { get; private set; }

    /// <inheritdoc/>
    public void Reset(T where) => FluxWb = T.Choose(where, default, FluxWb);

    /// <inheritdoc/>
    public void Take(T where, T hz, double fluxWb) => FluxWb = T.Choose(T.And(where, T.Less(T.Of(1), T.Abs(hz))), T.Of(fluxWb), FluxWb);

    /// <inheritdoc/>
    public void Sample(in FluxSample<T> at)
    {
        var decay = ControlFigures.TickS * figures.RotorOhm / figures.MagnetizingH;
        FluxWb += decay * ((figures.MagnetizingH * at.CurrentD) - FluxWb);
        RotorRadPerS = polePairs * at.ShaftRadPerS;
        FrameRadPerS = RotorRadPerS + (figures.RotorOhm * at.CurrentQ / T.Max(FluxWb, LeastFlux * at.WantedFluxWb));
    }
}
