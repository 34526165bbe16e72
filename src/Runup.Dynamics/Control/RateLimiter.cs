using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Keeps a measured value at its limit by holding back a ramp: the highest rate that the ramp may have now.</summary>
/// <remarks>
/// rate = s + K·(e − T·dx/dt), e = limit − x, ds/dt = K·w·e while it holds the ramp. The derivative answers before the limit is met, since the motor follows
/// the frequency with a lag; the integral lets the ramp go on at just the rate at which the value stays at its limit.
/// </remarks>
internal sealed class RateLimiter<T>
    where T : struct, ILanes<T>
{
    private T integral;

    /// <summary>Set where the ramp is held back.</summary>
    internal T Active { get; private set; }

    /// <summary>Forgets the past; the ramp is free.</summary>
    internal void Reset(T where)
    {
        integral = T.Choose(where, T.Of(double.PositiveInfinity), integral);
        Active = T.And(Active, T.Not(where));
    }

    /// <summary>Highest rate between −<paramref name="mostDown"/> and <paramref name="mostUp"/>.</summary>
    /// <param name="proportional">K·(e − T·dx/dt).</param>
    /// <param name="gained">K·w·e over one sample.</param>
    /// <param name="mostUp">The ramp's own rate.</param>
    /// <param name="mostDown">How fast the ramp may be turned back.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Rate(T proportional, T gained, T mostUp, T mostDown)
    {
        var held = LaneSet.Clamp(integral, -mostDown, mostUp);
        var rate = held + proportional;
        Active = T.Less(rate, mostUp);
        integral = T.Choose(Active, held + gained, mostUp);
        return LaneSet.Clamp(rate, -mostDown, mostUp);
    }
}
