using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Overvoltage control: stretches the deceleration, so that the bus stays at its control level.</summary>
/// <remarks>
/// <para>
/// The power that flows back answers the slip with the lag of the rotor's leakage, and the bus integrates it:
/// v″ ≈ (P_N/f_slip)/(C·v) · df/dt. From the moment at which the bus is about to reach its level the rate of deceleration is
/// s + K·(e − T₁·(v′ + T₂·v″)), e = level − v, ds/dt = K·w·e from s = 0, T₂ the rotor's lag: at first the frequency is held or raised, then it falls
/// just as fast as losses and load take up what the masses give. K is the square of the loop's rate over the gain above.
/// </para>
/// <para>With a chopper at work nothing is predicted: the chopper comes first. Figures found by trial on motors from 0.75 to 75 kW.</para>
/// </remarks>
internal sealed class OvervoltageControl<T>
    where T : struct, ILanes<T>
{
    private const double LoopRate = 40;
    private const double LeadS = 0.06;
    private const double IntegralRate = 6;
    private const double WarningS = 0.04;

    // The integral must not wind up while the bus is still far from its level; shares of the level.
    private const double MostErrorUp = 0.04;
    private const double MostErrorDown = 0.1;

    // It lets go when the motor takes power again and the bus is well down.
    private const double ReleaseBelow = 0.15;
    private const double ReleaseS = 0.1;
    private const double Smoothing = 0.5;

    private readonly ControlFigures figures;
    private readonly double levelV;
    private readonly double gain;
    private readonly double warningS;
    private T lastV;
    private T fresh = LaneSet.Every<T>();
    private T slope;
    private T bend;
    private T integral;
    private T motoringS;

    internal OvervoltageControl(ControlFigures figures)
    {
        this.figures = figures;
        levelV = figures.OvervoltageControlV;
        warningS = figures.Settings.BrakingChopper ? 0 : WarningS;
        gain = LoopRate * LoopRate * figures.BusF * levelV * figures.RatedSlipHz / figures.Settings.MotorRatedPower.Watts;
    }

    /// <summary>Set where it stretches the deceleration.</summary>
    internal T Active { get; private set; }

    internal void Reset(T where)
    {
        fresh = T.Or(fresh, where);
        slope = T.Choose(where, default, slope);
        Active = T.And(Active, LaneSet.Not(where));
    }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s; negative makes it rise.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T HighestFall(in Measurement<T> measured, T fallHzPerS)
    {
        Differentiate(measured.BusV);
        if (!figures.Settings.OvervoltageControl)
        {
            return fallHzPerS;
        }

        var error = T.Of(levelV) - measured.BusV;
        var begins = T.And(LaneSet.Not(Active), T.And(T.Less(measured.OutputW, default), LaneSet.Not(T.Less(warningS * slope, error))));
        var engaged = T.Or(Active, begins);
        if (!T.Any(engaged))
        {
            return fallHzPerS;
        }

        integral = T.Choose(begins, default, integral);
        motoringS = T.Choose(begins, default, motoringS);
        var rate = integral + (gain * (error - (LeadS * (slope + (figures.RotorLagS * bend)))));
        integral += (gain * IntegralRate * ControlFigures.TickS) * LaneSet.Clamp(error, T.Of(-MostErrorDown * levelV), T.Of(MostErrorUp * levelV));
        var released = T.And(LaneSet.Not(T.Less(measured.OutputW, default)), T.Less(T.Of(ReleaseBelow * levelV), error));
        motoringS = T.Choose(released, motoringS + T.Of(ControlFigures.TickS), default);
        Active = T.And(engaged, T.And(T.Less(integral, fallHzPerS), T.Less(motoringS, T.Of(ReleaseS))));
        return T.Choose(engaged, LaneSet.Clamp(rate, T.Of(-100 * figures.RatedSlipHz), fallHzPerS), fallHzPerS);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Differentiate(T busV)
    {
        var last = slope;
        var rise = T.Choose(fresh, default, (1 / ControlFigures.TickS) * (busV - lastV));
        slope += Smoothing * (rise - slope);
        bend = (1 / ControlFigures.TickS) * (slope - last);
        fresh = default;
        lastV = busV;
    }
}
