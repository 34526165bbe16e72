using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>The ramp generator: takes the frequency to its target at no more than the rates of the moment.</summary>
/// <remarks>
/// With an S-curve the rate itself rises and falls evenly, from 0 to the ramp's within the rounding time: j = r/t_s. Towards its target it is √(2·j·e) at most, so that
/// both end together. What limits hold back takes effect at once.
/// </remarks>
internal sealed class Ramp<T>
    where T : struct, ILanes<T>
{
    private T frequencyHz;
    private T rateHzPerS;

    /// <summary>The ramp's frequency, signed, in Hz.</summary>
    internal T FrequencyHz => frequencyHz;

    internal void Reset(T where) => Put(where, default);

    /// <summary>From there on, at no rate.</summary>
    internal void Put(T where, T hz)
    {
        frequencyHz = T.Choose(where, hz, frequencyHz);
        rateHzPerS = T.Choose(where, default, rateHzPerS);
    }

    /// <summary>One sample where it runs. Rise and fall count away from zero and towards it; a negative rate turns the ramp back.</summary>
    /// <param name="where">Where it runs.</param>
    /// <param name="targetHz">Where to.</param>
    /// <param name="riseHzPerS">Highest rate away from zero.</param>
    /// <param name="fallHzPerS">Highest rate towards zero.</param>
    /// <param name="highestHz">Highest frequency.</param>
    /// <param name="rounding">Rate of the rates up and down, in Hz/s²; null without an S-curve.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T where, T targetHz, T riseHzPerS, T fallHzPerS, double highestHz, (T Up, T Down)? rounding = null)
    {
        var own = LaneSet.Sign(frequencyHz);
        var direction = T.Choose(T.Less(T.Abs(own), T.Of(0.5)), LaneSet.Sign(targetHz), own);
        var size = T.Abs(frequencyHz);
        var wanted = T.Max(direction * targetHz, default);
        var rise = T.Min((1 / ControlFigures.TickS) * (wanted - size), riseHzPerS);
        if (rounding is { } jerk)
        {
            rise = T.Min(Rounded(wanted - size, rise, fallHzPerS, jerk), riseHzPerS);
        }

        var rate = T.Max(rise, -fallHzPerS);
        var next = direction * LaneSet.Clamp(size + (ControlFigures.TickS * rate), default, T.Max(T.Of(highestHz), size));
        frequencyHz = T.Choose(where, next, frequencyHz);
        rateHzPerS = T.Choose(where, rate, rateHzPerS);
    }

    private T Rounded(T leftHz, T plainHzPerS, T fallHzPerS, (T Up, T Down) jerk)
    {
        var down = T.Less(leftHz, default);
        var j = T.Choose(down, jerk.Down, jerk.Up);
        var half = (0.5 * ControlFigures.TickS) * j;
        var ending = T.Sqrt((half * half) + (2 * (j * T.Abs(leftHz)))) - half;
        var towards = T.Choose(down, T.Max(-ending, T.Max(plainHzPerS, -fallHzPerS)), T.Min(ending, plainHzPerS));
        return LaneSet.Clamp(towards, rateHzPerS - (2 * half), rateHzPerS + (2 * half));
    }
}
