namespace Runup.Dynamics.Control;

/// <summary>Current limit: holds the ramp motoring and regenerating, and takes back voltage where the frequency is too slow or can't help.</summary>
/// <remarks>
/// Frequency acts on the slip, so on the current after the rotor's lag; that is the limit proper. Above 108 % of the limit a clamp acts like a resistance
/// in series with the motor, within a few milliseconds; and if current stays above 115 %, as in a stalled motor with too much boost, the whole voltage
/// is lowered, back within some 50 ms once the current allows. Gains go by rated slip and rated current.
/// </remarks>
internal sealed class CurrentLimiter
{
    private const double LoopRate = 80;
    private const double IntegralRate = 10;
    private const double ClampFrom = 1.05;
    private const double LowerFrom = 1.15;
    private const double LowerRate = 20;
    private const double LowestVoltage = 0.02;

    private readonly ControlFigures figures;
    private readonly RateLimiter motoring;
    private readonly RateLimiter regenerating;
    private double share = 1;

    internal CurrentLimiter(ControlFigures figures)
    {
        this.figures = figures;
        var gain = LoopRate * figures.RatedSlipHz / figures.MotorA;
        motoring = new RateLimiter(gain, figures.RotorLagS, IntegralRate);
        regenerating = new RateLimiter(gain, figures.RotorLagS, IntegralRate);
        Reset();
    }

    /// <summary>True while it holds the ramp or takes back voltage.</summary>
    internal bool Active { get; private set; }

    /// <summary>Highest rate at which the frequency may rise now, in Hz/s.</summary>
    internal double HighestRise { get; private set; }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s.</summary>
    internal double HighestFall { get; private set; }

    internal void Reset()
    {
        motoring.Reset();
        regenerating.Reset();
        share = 1;
        Active = false;
    }

    /// <summary>One sample of the limit on the ramp.</summary>
    internal void Sample(in Measurement measured, double riseHzPerS, double fallHzPerS)
    {
        var mostBackHzPerS = 100 * figures.RatedSlipHz;
        var back = measured.OutputW < 0;
        var up = motoring.Rate(measured.CurrentA, figures.LimitA, riseHzPerS, mostBackHzPerS);
        var down = regenerating.Rate(measured.CurrentA, figures.LimitA, fallHzPerS, mostBackHzPerS);
        (HighestRise, HighestFall) = back ? (riseHzPerS, down) : (up, fallHzPerS);

        var room = LowerFrom - (measured.CurrentA / figures.LimitA);
        share = Math.Clamp(share + (LowerRate * room * ControlFigures.TickS), LowestVoltage, 1);
        Active = (back ? regenerating.Active : motoring.Active) || share < 1;
    }

    /// <summary>The voltage of the curve, less what clamp and lowering take back.</summary>
    internal OutputVoltage Limit(double curveV, in Measurement measured)
    {
        var excessA = measured.CurrentA - (ClampFrom * figures.LimitA);
        if (excessA <= 0)
        {
            return new OutputVoltage(share * curveV, 0);
        }

        var takenV = figures.CurrentClampOhm * excessA / measured.CurrentA;
        return new OutputVoltage((share * curveV) - (takenV * measured.AlongA), -takenV * measured.AcrossA);
    }
}
