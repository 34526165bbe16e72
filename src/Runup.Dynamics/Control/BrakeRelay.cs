using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>When the mechanical brake is opened and closed.</summary>
/// <remarks>
/// With a relay set for it: opened once output frequency and current have stood at their levels for the delay, so that the motor carries the load before the brake lets go; closed
/// below its closing frequency on the way to a stop, and whenever the output is off. Without: the machine's own control opens and closes it with the output.
/// </remarks>
internal sealed class BrakeRelay<T>
    where T : struct, ILanes<T>
{
    // The ramp stops exactly at the opening frequency; a part in a million forgives rounding.
    private const double Exactly = 1 - 1e-6;

    private T waitedS;

    /// <summary>Set where it is open.</summary>
    internal T Open { get; private set; }

    /// <summary>One sample.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(BrakeSettings? settings, T outputOn, T running, T frequencyHz, T currentA)
    {
        if (settings is null)
        {
            Open = outputOn;
            return;
        }

        var size = T.Abs(frequencyHz);
        var atLevels = T.And(
            T.Not(T.Less(size, T.Of(settings.OpenFrequency.Hertz * Exactly))),
            T.Not(T.Less(currentA, T.Of(settings.OpenCurrent.Amperes))));
        var carries = T.And(T.Not(Open), T.And(T.And(outputOn, running), atLevels));
        waitedS = T.Choose(carries, waitedS + T.Of(ControlFigures.TickS), default);
        var opens = T.And(carries, T.Not(T.Less(waitedS, T.Of(settings.OpenDelay.Seconds))));
        var closes = T.And(T.Not(running), T.Less(size, T.Of(settings.CloseFrequency.Hertz)));
        Open = T.And(outputOn, T.Choose(Open, T.Not(closes), opens));
    }

    /// <summary>The frequency to go to: no further than where the brake opens while it is closed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Held(BrakeSettings? settings, T targetHz) =>
        settings is null ? targetHz
            : T.Choose(Open, targetHz, LaneSet.Clamp(targetHz, T.Of(-settings.OpenFrequency.Hertz), T.Of(settings.OpenFrequency.Hertz)));
}
