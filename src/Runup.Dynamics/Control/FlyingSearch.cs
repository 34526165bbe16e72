using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Flying restart: finds the frequency at which a motor already turns, and takes it over there.</summary>
/// <remarks>
/// A low voltage sweeps down from the highest frequency. While the field turns faster than the rotor the motor takes power; where it gives power back the field has
/// just passed it. There the voltage is raised to the curve's. Where nothing turns forward the other direction is searched if it is permitted; where nothing turns at
/// all the start goes on from zero. The sweep passes the width of the slip in about the rotor's lag (figures found by trial on motors from 0.75 to 75 kW).
/// </remarks>
internal sealed class FlyingSearch<T>
    where T : struct, ILanes<T>
{
    private const double Share = 0.15;
    private const double SettleS = 0.15;
    private const double RaiseS = 0.4;
    private const double LowestHz = 2;

    private readonly ControlFigures figures;
    private readonly double sweepHzPerS;
    private T side;
    private T firstSide;
    private T sinceS;
    private T caught;
    private T share;

    internal FlyingSearch(ControlFigures figures)
    {
        this.figures = figures;
        sweepHzPerS = Math.Clamp(0.5 * figures.RatedSlipHz / figures.RotorLagS, figures.MaximumHz / 10, figures.MaximumHz);
    }

    /// <summary>Where the search stands, in Hz; once it is over, where the motor turns, or zero.</summary>
    internal T FrequencyHz { get; private set; }

    /// <summary>Set where it is over.</summary>
    internal T Over { get; private set; }

    /// <summary>Begins anew on the side of the frequency asked for.</summary>
    internal void Begin(T where, T targetHz)
    {
        var to = T.Choose(T.Less(targetHz, default), T.Of(-1), T.Of(1));
        side = T.Choose(where, to, side);
        firstSide = T.Choose(where, to, firstSide);
        FrequencyHz = T.Choose(where, figures.MaximumHz * to, FrequencyHz);
        sinceS = T.Choose(where, default, sinceS);
        share = T.Choose(where, T.Of(Share), share);
        caught = T.And(caught, T.Not(where));
        Over = T.And(Over, T.Not(where));
    }

    /// <summary>One sample: the voltage to apply, line to line.</summary>
    internal T Sample(in Measurement<T> measured, VoltageCurve<T> curve)
    {
        sinceS += T.Of(ControlFigures.TickS);
        var settled = T.Not(T.Less(sinceS, T.Of(SettleS)));
        caught = T.Or(caught, T.And(settled, T.Less(measured.OutputW, default)));
        share = T.Choose(caught, T.Min(share + T.Of((1 - Share) * ControlFigures.TickS / RaiseS), T.Of(1)), share);
        var size = T.Abs(FrequencyHz);
        var sweeping = T.And(settled, T.Not(caught));
        size = T.Choose(sweeping, T.Max(size - T.Of(sweepHzPerS * ControlFigures.TickS), default), size);
        var ended = T.And(sweeping, T.Less(size, T.Of(LowestHz)));
        var firstTime = T.Less(default, side * firstSide);
        var turns = figures.Settings.ReversePermitted ? T.And(ended, firstTime) : default;
        side = T.Choose(turns, -side, side);
        size = T.Choose(turns, T.Of(figures.MaximumHz), size);
        sinceS = T.Choose(turns, default, sinceS);
        var nothing = T.And(ended, T.Not(turns));
        FrequencyHz = T.Choose(nothing, default, side * size);
        Over = T.Or(nothing, T.And(caught, T.Not(T.Less(share, T.Of(1)))));
        return share * curve.At(FrequencyHz);
    }
}
