using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Current limit: holds the ramp motoring and regenerating, and takes back voltage where the frequency is too slow or can't help.</summary>
/// <remarks>
/// Frequency acts on the slip, so on the current after the rotor's lag; that is the limit proper. Above 108 % of the limit a clamp acts like a resistance
/// in series with the motor, within a few milliseconds; and if current stays above 115 %, as in a stalled motor with too much boost, the whole voltage
/// is lowered, back within some 50 ms once the current allows. Gains go by rated slip and rated current.
/// </remarks>
internal sealed class CurrentLimiter<T>
    where T : struct, ILanes<T>
{
    private const double LoopRate = 80;
    private const double IntegralRate = 10;
    private const double ClampFrom = 1.05;
    private const double LowerFrom = 1.15;
    private const double LowerRate = 20;
    private const double LowestVoltage = 0.02;

    private const double Smoothing = 0.4;

    private readonly ControlFigures figures;
    private readonly RateLimiter<T> motoring = new();
    private readonly RateLimiter<T> regenerating = new();
    private readonly double gain;
    private readonly double perLimitA;
    private T share = T.Of(1);
    private T lastA;
    private T slope;
    private T fresh;

    internal CurrentLimiter(ControlFigures figures)
    {
        this.figures = figures;
        gain = LoopRate * figures.RatedSlipHz / figures.MotorA;
        perLimitA = 1 / figures.LimitA;
        Reset(LaneSet.Every<T>());
    }

    /// <summary>Set where it holds the ramp or takes back voltage.</summary>
    internal T Active { get; private set; }

    /// <summary>Highest rate at which the frequency may rise now, in Hz/s.</summary>
    internal T HighestRise { get; private set; }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s.</summary>
    internal T HighestFall { get; private set; }

    internal void Reset(T where)
    {
        motoring.Reset(where);
        regenerating.Reset(where);
        fresh = T.Or(fresh, where);
        slope = T.Choose(where, default, slope);
        share = T.Choose(where, T.Of(1), share);
        Active = T.And(Active, T.Not(where));
    }

    /// <summary>One sample of the limit on the ramp.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(in Measurement<T> measured, T riseHzPerS, T fallHzPerS)
    {
        var mostBackHzPerS = T.Of(100 * figures.RatedSlipHz);
        var back = T.Less(measured.OutputW, default);
        var rise = T.Choose(fresh, default, measured.CurrentA - lastA);
        fresh = default;
        lastA = measured.CurrentA;
        slope = T.MultiplyAdd(T.Of(Smoothing / ControlFigures.TickS), rise, (1 - Smoothing) * slope);
        var error = T.Of(figures.LimitA) - measured.CurrentA;
        var proportional = T.MultiplySubtractFrom(T.Of(gain * figures.RotorLagS), slope, gain * error);
        var gained = (gain * IntegralRate * ControlFigures.TickS) * error;
        var up = motoring.Rate(proportional, gained, riseHzPerS, mostBackHzPerS);
        var down = regenerating.Rate(proportional, gained, fallHzPerS, mostBackHzPerS);
        HighestRise = T.Choose(back, riseHzPerS, up);
        HighestFall = T.Choose(back, down, fallHzPerS);

        var room = T.Of(LowerFrom) - (perLimitA * measured.CurrentA);
        share = LaneSet.Clamp(share + ((LowerRate * ControlFigures.TickS) * room), T.Of(LowestVoltage), T.Of(1));
        Active = T.Or(T.Choose(back, regenerating.Active, motoring.Active), T.Less(share, T.Of(1)));
    }

    /// <summary>The voltage of the curve, less what clamp and lowering take back.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal OutputVoltage<T> Limit(T curveV, in Measurement<T> measured)
    {
        var excessA = measured.CurrentA - T.Of(ClampFrom * figures.LimitA);
        if (!T.Any(T.Less(default, excessA)))
        {
            return new OutputVoltage<T>(share * curveV, default);
        }

        var takenOhm = figures.CurrentClampOhm * (T.Max(excessA, default) / T.Max(measured.CurrentA, T.Of(ClampFrom * figures.LimitA)));
        return new OutputVoltage<T>((share * curveV) - (takenOhm * measured.AlongA), -(takenOhm * measured.AcrossA));
    }
}
