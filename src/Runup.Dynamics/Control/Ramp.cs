using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>The ramp generator: takes the frequency to its target at no more than the rates of the moment.</summary>
internal sealed class Ramp<T>
    where T : struct, ILanes<T>
{
    private T frequencyHz;

    /// <summary>The ramp's frequency, signed, in Hz.</summary>
    internal T FrequencyHz => frequencyHz;

    internal void Reset(T where) => frequencyHz = T.Choose(where, default, frequencyHz);

    /// <summary>One sample where it runs. Rise and fall count away from zero and towards it; a negative rate turns the ramp back.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T where, T targetHz, T riseHzPerS, T fallHzPerS, double highestHz)
    {
        var own = LaneSet.Sign(frequencyHz);
        var direction = T.Choose(T.Less(T.Abs(own), T.Of(0.5)), LaneSet.Sign(targetHz), own);
        var size = T.Abs(frequencyHz);
        var wanted = T.Max(direction * targetHz, default);
        var rise = T.Min((1 / ControlFigures.TickS) * (wanted - size), riseHzPerS);
        var rate = T.Max(rise, -fallHzPerS);
        var next = direction * LaneSet.Clamp(size + (ControlFigures.TickS * rate), default, T.Max(T.Of(highestHz), size));
        frequencyHz = T.Choose(where, next, frequencyHz);
    }
}
