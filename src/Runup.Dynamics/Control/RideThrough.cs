using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Undervoltage ride-through: while the supply is gone the frequency falls just so fast that the load's energy keeps the bus up.</summary>
/// <remarks>
/// At once the frequency steps back by the slip of the load and a little more, so that the motor gives instead of taking; on the voltage curve the voltage turns back, in the same sample, by the angle at which it
/// drives the active current, X_σ·i_a/v, without which the motor would go on taking for the lag of its rotor. Then the regulator holds the bus. Its level lies at 90 % of the bus at which the drive became ready, below what a loaded rectifier gives and above the trip (common practice, no source). It lets go once
/// the bus has stood 2 % above for 20 ms: the supply is back, and the ramp takes the motor up again. How long it holds follows from load and inertia; below 2 Hz nothing is left.
/// </remarks>
internal sealed class RideThrough<T>
    where T : struct, ILanes<T>
{
    private const double LevelShare = 0.9;
    private const double BackShare = 1.02;
    private const double BackS = 0.02;
    private const double LowestHz = 2;

    // Of rated slip, beyond the load's own, at the first step.
    private const double Margin = 0.6;

    // Of the motor's base impedance, where no auto-tune told it (common practice, no source).
    private const double UsualLeakage = 0.18;

    // A bus that differs by less is the same one.
    private const double Apart = 0.005;

    private readonly ControlFigures figures;
    private readonly double ratedActiveA;
    private readonly double leakageOhmPerHz;
    private BusRegulator<T> regulator;
    private double levelV;
    private T backS;

    internal RideThrough(ControlFigures figures)
    {
        this.figures = figures;
        ratedActiveA = figures.MotorA * figures.Settings.MotorPowerFactor.Ratio;
        var settings = figures.Settings;
        leakageOhmPerHz = (settings.Tuned?.Leakage.Ohms ?? (UsualLeakage * settings.MotorRatedVoltage.Phase.Volts / figures.MotorA)) / settings.MotorRatedFrequency.Hertz;
        regulator = new BusRegulator<T>(figures, figures.UndervoltageTripV);
    }

    /// <summary>By how much the voltage turns within this sample beside the frequency, as a frequency, in Hz.</summary>
    internal T TurnHz { get; private set; }

    /// <summary>Set where it holds the bus.</summary>
    internal T Active { get; private set; }

    /// <summary>It is on, and knows the bus of a drive that is ready.</summary>
    internal bool Watches
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => levelV > 0;
    }

    internal void Reset(T where)
    {
        regulator.Reset(where);
        Active = T.And(Active, T.Not(where));
        TurnHz = T.Choose(where, default, TurnHz);
    }

    /// <summary>Notes the bus of a drive that is ready, at rest on its supply.</summary>
    internal void Ready(double busV)
    {
        if (figures.Settings.UndervoltageRideThrough && busV > figures.UndervoltageTripV && Math.Abs((LevelShare * busV) - levelV) > Apart * levelV)
        {
            levelV = Math.Max(LevelShare * busV, 1.05 * figures.UndervoltageTripV);
            regulator = new BusRegulator<T>(figures, levelV);
        }
    }

    /// <summary>The rates of rise and fall, in Hz/s; where it holds the bus, its own.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal (T Rise, T Fall) Rates(in Measurement<T> measured, T frequencyHz, T riseHzPerS, T fallHzPerS)
    {
        TurnHz = default;
        regulator.Differentiate(measured.BusV);
        var error = T.Of(levelV) - measured.BusV;
        var begins = T.And(T.Not(Active), T.Less(default, error));
        var engaged = T.Or(Active, begins);
        if (!T.Any(engaged))
        {
            return (riseHzPerS, fallHzPerS);
        }

        var most = T.Of(100 * figures.RatedSlipHz);
        var rate = LaneSet.Clamp(regulator.Fall(error, begins), -0.6 * most, most);
        var slip = figures.RatedSlipHz * (T.Of(Margin) + T.Max((1 / ratedActiveA) * measured.ActiveA, default));
        rate = T.Choose(begins, (1 / ControlFigures.TickS) * slip, rate);
        TurnHz = T.Choose(begins, Turn(measured, frequencyHz), default);
        backS = T.Choose(T.Less(T.Of(BackShare * levelV), measured.BusV), backS + T.Of(ControlFigures.TickS), default);
        Active = T.And(engaged, T.And(T.Less(backS, T.Of(BackS)), T.Less(T.Of(LowestHz), T.Abs(frequencyHz))));
        return (T.Choose(Active, -rate, riseHzPerS), T.Choose(Active, T.Max(rate, default), fallHzPerS));
    }

    // −X_σ·i_a/v in a millisecond; what vector control turns is its own affair.
    private T Turn(in Measurement<T> measured, T frequencyHz) => figures.Settings.Vector ? default
        : (-Math.Sqrt(3) * leakageOhmPerHz / (2 * Math.PI * ControlFigures.TickS)) * (frequencyHz * T.Max(measured.ActiveA, default) / T.Max(measured.OutputV, T.Of(1)));
}
