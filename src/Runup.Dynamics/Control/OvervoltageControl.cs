using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Overvoltage control: stretches the deceleration, so that the bus stays at its control level.</summary>
/// <remarks>
/// From the moment at which the bus is about to reach its level <see cref="BusRegulator{T}"/> says the rate of deceleration: at first the frequency is held or
/// raised, then it falls just as fast as losses and load take up what the masses give. With a chopper at work nothing is predicted: the chopper comes first.
/// </remarks>
internal sealed class OvervoltageControl<T>
    where T : struct, ILanes<T>
{
    private const double WarningS = 0.04;

    // It lets go when the motor takes power again and the bus is well down.
    private const double ReleaseBelow = 0.15;
    private const double ReleaseS = 0.1;

    private readonly ControlFigures figures;
    private readonly BusRegulator<T> regulator;
    private readonly double levelV;
    private readonly double warningS;
    private T motoringS;

    internal OvervoltageControl(ControlFigures figures)
    {
        this.figures = figures;
        levelV = figures.OvervoltageControlV;
        regulator = new BusRegulator<T>(figures, levelV);
        warningS = figures.Settings.BrakingChopper ? 0 : WarningS;
    }

    /// <summary>Set where it stretches the deceleration.</summary>
    internal T Active { get; private set; }

    internal void Reset(T where)
    {
        regulator.Reset(where);
        Active = T.And(Active, T.Not(where));
    }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s; negative makes it rise.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T HighestFall(in Measurement<T> measured, T fallHzPerS)
    {
        regulator.Differentiate(measured.BusV);
        if (!figures.Settings.OvervoltageControl)
        {
            return fallHzPerS;
        }

        var error = T.Of(levelV) - measured.BusV;
        var begins = T.And(T.Not(Active), T.And(T.Less(measured.OutputW, default), T.Not(T.Less(warningS * regulator.Slope, error))));
        var engaged = T.Or(Active, begins);
        if (!T.Any(engaged))
        {
            return fallHzPerS;
        }

        motoringS = T.Choose(begins, default, motoringS);
        var rate = regulator.Fall(error, begins);
        var released = T.And(T.Not(T.Less(measured.OutputW, default)), T.Less(T.Of(ReleaseBelow * levelV), error));
        motoringS = T.Choose(released, motoringS + T.Of(ControlFigures.TickS), default);
        Active = T.And(engaged, T.And(T.Less(regulator.Integral, fallHzPerS), T.Less(motoringS, T.Of(ReleaseS))));
        return T.Choose(engaged, LaneSet.Clamp(rate, T.Of(-100 * figures.RatedSlipHz), fallHzPerS), fallHzPerS);
    }
}
