namespace Runup.Dynamics.Control;

/// <summary>Keeps a measured value at its limit by holding back a ramp: the highest rate that the ramp may have now.</summary>
/// <remarks>
/// rate = s + K·(e − T·dx/dt), e = limit − x, ds/dt = K·w·e while it holds the ramp. The derivative answers before the limit is met, since the motor follows
/// the frequency with a lag; the integral lets the ramp go on at just the rate at which the value stays at its limit.
/// </remarks>
internal sealed class RateLimiter(double gain, double leadS, double integralRate)
{
    private double integral;
    private double last = double.NaN;
    private double slope;

    /// <summary>True while the ramp is held back.</summary>
    internal bool Active { get; private set; }

    /// <summary>Forgets the past; the ramp is free.</summary>
    internal void Reset()
    {
        integral = double.PositiveInfinity;
        last = double.NaN;
        slope = 0;
        Active = false;
    }

    /// <summary>Highest rate between −<paramref name="mostDown"/> and <paramref name="mostUp"/>.</summary>
    internal double Rate(double value, double limit, double mostUp, double mostDown)
    {
        var rise = double.IsNaN(last) ? 0 : (value - last) / ControlFigures.TickS;
        last = value;
        slope += 0.4 * (rise - slope);
        integral = Math.Clamp(integral, -mostDown, mostUp);
        var proportional = gain * (limit - value - (leadS * slope));
        var rate = integral + proportional;
        Active = rate < mostUp;
        integral = Active ? integral + (gain * integralRate * (limit - value) * ControlFigures.TickS) : mostUp;
        return Math.Clamp(rate, -mostDown, mostUp);
    }
}
