using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Damps the swing of a lightly loaded motor on the voltage curve: the frequency yields to quick changes of the active current.</summary>
/// <remarks>
/// f_d = −share · f_slip,N · (i_a − ī_a)/(I_N·cosφ_N), ī_a the active current's mean over some 0.1 s, at most the rated slip either way; common practice, no source.
/// Without it the rotor swings against the field at mid frequencies, hardly damped by itself: the bus, whose voltage follows the power and is measured
/// a sample ago, takes away the rest.
/// </remarks>
internal sealed class SwingDamping<T>(ControlFigures figures)
    where T : struct, ILanes<T>
{
    private const double MeanS = 0.1;

    // Of base frequency. Below, where the current meets resistance above all, it fades: a start is no swing.
    private const double WholeFrom = 0.2;

    // Of the rated slip: a swing that grows is met while it is small, and a ramp is not held up.
    private const double MostOfSlip = 0.05;

    private readonly double hzPerA = figures.Settings.SwingDamping.Ratio * figures.RatedSlipHz / (figures.MotorA * figures.Settings.MotorPowerFactor.Ratio);
    private readonly double perWholeHz = 1 / (WholeFrom * figures.Settings.BaseFrequency.Hertz);
    private readonly double mostHz = MostOfSlip * figures.RatedSlipHz;
    private T meanA;

    /// <summary>What is added to the frequency, in Hz, in the direction of motion.</summary>
    internal T AddedHz { get; private set; }

    internal bool Works => hzPerA > 0;

    internal void Reset(T where)
    {
        meanA = T.Choose(where, default, meanA);
        AddedHz = T.Choose(where, default, AddedHz);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T activeA, T rampHz)
    {
        if (!Works)
        {
            return;
        }

        meanA += (ControlFigures.TickS / MeanS) * (activeA - meanA);
        var part = T.Min(perWholeHz * T.Abs(rampHz), T.Of(1));
        AddedHz = LaneSet.Clamp((hzPerA * part) * (meanA - activeA), T.Of(-mostHz), T.Of(mostHz));
    }
}
