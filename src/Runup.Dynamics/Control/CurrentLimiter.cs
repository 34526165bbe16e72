namespace Runup.Dynamics.Control;

/// <summary>Current limit: holds the ramp motoring and regenerating, and takes back voltage where the frequency can't help.</summary>
/// <remarks>
/// Frequency acts on the slip, so on current within the rotor's time constant; a stalled motor near standstill and a sudden load
/// are faster or deaf to it. Above 115 % of the limit the voltage is reduced directly, back within some 50 ms once the current allows.
/// Gains per rated slip and rated current, found by trial on motors from 0.75 to 75 kW.
/// </remarks>
internal sealed class CurrentLimiter
{
    private const double LoopRate = 40;
    private const double LeadS = 0.015;
    private const double IntegralRate = 8;
    private const double VoltageMargin = 1.15;
    private const double VoltageRate = 60;
    private const double LowestVoltage = 0.02;

    private readonly ControlFigures figures;
    private readonly RateLimiter motoring;
    private readonly RateLimiter regenerating;

    internal CurrentLimiter(ControlFigures figures)
    {
        this.figures = figures;
        var gain = LoopRate * figures.RatedSlipHz / figures.MotorA;
        motoring = new RateLimiter(gain, LeadS, IntegralRate);
        regenerating = new RateLimiter(gain, LeadS, IntegralRate);
        Reset();
    }

    /// <summary>True while it holds the ramp or takes back voltage.</summary>
    internal bool Active { get; private set; }

    /// <summary>Share of the curve's voltage that is left, 1 when the limit is quiet.</summary>
    internal double VoltageShare { get; private set; } = 1;

    /// <summary>Highest rate at which the frequency may rise now, in Hz/s.</summary>
    internal double HighestRise { get; private set; }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s.</summary>
    internal double HighestFall { get; private set; }

    internal void Reset()
    {
        motoring.Reset();
        regenerating.Reset();
        VoltageShare = 1;
        Active = false;
    }

    internal void Sample(in Measurement measured, double riseHzPerS, double fallHzPerS)
    {
        var backHzPerS = 60 * figures.RatedSlipHz;
        var back = measured.OutputW < 0;
        (HighestRise, HighestFall) = (riseHzPerS, fallHzPerS);
        var up = motoring.Rate(measured.CurrentA, figures.LimitA, riseHzPerS, backHzPerS);
        var down = regenerating.Rate(measured.CurrentA, figures.LimitA, fallHzPerS, backHzPerS);
        if (back)
        {
            HighestFall = down;
        }
        else
        {
            HighestRise = up;
        }

        var over = ((VoltageMargin * figures.LimitA) - measured.CurrentA) / figures.LimitA;
        VoltageShare = Math.Clamp(VoltageShare + (VoltageRate * (over < 0 ? over : 0.3 * over) * ControlFigures.TickS), LowestVoltage, 1);
        Active = (back ? regenerating.Active : motoring.Active) || VoltageShare < 1;
    }
}
