using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Keeps a measured value at its limit by holding back a ramp: the highest rate that the ramp may have now.</summary>
/// <remarks>
/// rate = s + K·(e − T·dx/dt), e = limit − x, ds/dt = K·w·e while it holds the ramp. The derivative answers before the limit is met, since the motor follows
/// the frequency with a lag; the integral lets the ramp go on at just the rate at which the value stays at its limit.
/// </remarks>
internal sealed class RateLimiter<T>(double gain, double leadS, double integralRate)
    where T : struct, ILanes<T>
{
    private T integral;
    private T last;
    private T slope;
    private T fresh = LaneSet.Every<T>();

    /// <summary>Set where the ramp is held back.</summary>
    internal T Active { get; private set; }

    /// <summary>Forgets the past; the ramp is free.</summary>
    internal void Reset(T where)
    {
        fresh = T.Or(fresh, where);
        integral = T.Choose(where, T.Of(double.PositiveInfinity), integral);
        slope = T.Choose(where, default, slope);
        Active = T.And(Active, T.Not(where));
    }

    /// <summary>Highest rate between −<paramref name="mostDown"/> and <paramref name="mostUp"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Rate(T value, double limit, T mostUp, T mostDown)
    {
        var rise = T.Choose(fresh, default, (1 / ControlFigures.TickS) * (value - last));
        fresh = default;
        last = value;
        slope += 0.4 * (rise - slope);
        integral = LaneSet.Clamp(integral, -mostDown, mostUp);
        var proportional = gain * (T.Of(limit) - value - (leadS * slope));
        var rate = integral + proportional;
        Active = T.Less(rate, mostUp);
        integral = T.Choose(Active, integral + ((gain * integralRate * ControlFigures.TickS) * (T.Of(limit) - value)), mostUp);
        return LaneSet.Clamp(rate, -mostDown, mostUp);
    }
}
