using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Keeps the DC bus at a level by the rate at which the frequency falls, and so by what the turning masses give.</summary>
/// <remarks>
/// The power that flows back answers the slip with the lag of the rotor's leakage, and the bus integrates it:
/// v″ ≈ (P_N/f_slip)/(C·v) · df/dt. The rate is s + K·(e − T₁·(v′ + T₂·v″)), e = level − v, ds/dt = K·w·e, T₂ the rotor's lag.
/// K is the square of the loop's rate over the gain above. Figures found by trial on motors from 0.75 to 75 kW.
/// </remarks>
internal sealed class BusRegulator<T>(ControlFigures figures, double levelV)
    where T : struct, ILanes<T>
{
    private const double LoopRate = 40;
    private const double LeadS = 0.06;
    private const double IntegralRate = 6;

    // The integral must not wind up while the bus is still far from its level; shares of the level.
    private const double MostErrorUp = 0.04;
    private const double MostErrorDown = 0.1;
    private const double Smoothing = 0.5;

    private readonly double gain = LoopRate * LoopRate * figures.BusF * levelV * figures.RatedSlipHz / figures.Settings.MotorRatedPower.Watts;
    private T lastV;
    private T fresh = LaneSet.Every<T>();
    private T lastSlope;

    /// <summary>Rate of the bus voltage, smoothed, in V/s.</summary>
    internal T Slope { get; private set; }

    /// <summary>What is left of the rate where the bus stands at its level, in Hz/s.</summary>
    internal T Integral { get; private set; }

    internal void Reset(T where)
    {
        fresh = T.Or(fresh, where);
        Slope = T.Choose(where, default, Slope);
    }

    /// <summary>Takes up a sample of the bus.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Differentiate(T busV)
    {
        lastSlope = Slope;
        var rise = T.Choose(fresh, default, busV - lastV);
        Slope = T.MultiplyAdd(T.Of(Smoothing / ControlFigures.TickS), rise, (1 - Smoothing) * Slope);
        fresh = default;
        lastV = busV;
    }

    /// <summary>Rate at which the frequency is to fall, in Hz/s; negative makes it rise. Its integral begins at zero where it begins.</summary>
    internal T Fall(T error, T begins)
    {
        Integral = T.Choose(begins, default, Integral);
        var bend = (1 / ControlFigures.TickS) * (Slope - lastSlope);
        var rate = Integral + (gain * (error - (LeadS * (Slope + (figures.RotorLagS * bend)))));
        Integral += (gain * IntegralRate * ControlFigures.TickS) * LaneSet.Clamp(error, T.Of(-MostErrorDown * levelV), T.Of(MostErrorUp * levelV));
        return rate;
    }
}
