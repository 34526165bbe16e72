using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Trips where the motor turns too fast, by what the drive knows of its speed: an encoder's, the flux observer's, or what voltage and current at the terminals tell.</summary>
/// <remarks>
/// <para>Above 1.2 times the maximum frequency for 0.2 s, while the output is on (common practice, no source): a load that drives the motor beyond its breakdown torque, or beyond the current limit.</para>
/// <para>
/// From the terminals, while the rotor gives power to the field: e = v − (Rs + jω·Lσ)·i, slip s = Rr·Re(i/e), all leakage on the stator's side; speed f·(1 − s). Of the steady state, at any slip, beyond
/// the breakdown torque too. The circuit is the auto-tune's; without one Rr follows from the rated slip, Rs is 4 % and the leakage 18 % of the motor's base impedance (common practice, no source).
/// </para>
/// </remarks>
internal sealed class OverspeedWatch<T>
    where T : struct, ILanes<T>
{
    private const double Share = 1.2;
    private const double DelayS = 0.2;

    // So far beyond the field a motor carries more than this part of its current, or of the current limit.
    private const double LeastShare = 0.8;
    private const double UsualStator = 0.04;
    private const double UsualLeakage = 0.18;

    private readonly double leastA;
    private readonly double levelHz;
    private readonly double statorOhm;
    private readonly double rotorOhm;
    private readonly double leakageOhmPerHz;
    private T aboveS;

    internal OverspeedWatch(ControlFigures figures)
    {
        var settings = figures.Settings;
        leastA = LeastShare * Math.Min(figures.MotorA, figures.LimitA);
        levelHz = Share * figures.MaximumHz;
        var unit = settings.MotorRatedVoltage.Phase.Volts / figures.MotorA;
        var ratedHz = settings.MotorRatedFrequency.Hertz;
        statorOhm = settings.Tuned?.StatorResistance.Ohms ?? (UsualStator * unit);
        rotorOhm = settings.Tuned?.RotorResistance.Ohms ?? (figures.RatedSlipHz / ratedHz * unit / settings.MotorPowerFactor.Ratio);
        leakageOhmPerHz = (settings.Tuned?.Leakage.Ohms ?? (UsualLeakage * unit)) / ratedHz;
    }

    /// <summary>Some motor turns too fast, if not yet for long.</summary>
    internal bool Counts { get; private set; }

    /// <summary>Set where it is to trip.</summary>
    internal T Exceeded => T.Not(T.Less(aboveS, T.Of(DelayS)));

    /// <summary>One sample of a speed that is known, as a frequency.</summary>
    internal void BySpeed(T hertz, T on) => Count(T.And(on, T.Less(T.Of(levelHz), T.Abs(hertz))));

    /// <summary>One sample under a voltage of the last millisecond, peaks of the phase over the bus voltage.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void ByTerminals(in Measurement<T> measured, T frequencyHz, T along, T across, T on)
    {
        var heavy = T.And(on, T.Less(T.Of(leastA), measured.CurrentA));
        if (T.Any(heavy))
        {
            CountHeavy(measured, frequencyHz, along, across, heavy);
        }
        else if (Counts)
        {
            Count(default);
        }
    }

    // Apart, as what seldom happens.
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void CountHeavy(in Measurement<T> measured, T frequencyHz, T along, T across, T heavy)
    {
        var driven = T.And(heavy, T.Less(measured.OutputW, (3 * statorOhm) * (measured.CurrentA * measured.CurrentA)));
        if (T.Any(driven))
        {
            Count(T.And(driven, Beyond(measured, frequencyHz, along, across)));
        }
        else if (Counts)
        {
            Count(default);
        }
    }

    // f·(1 − s) above the level, without a division; x = q − j·d.
    private T Beyond(in Measurement<T> measured, T frequencyHz, T along, T across)
    {
        T q = Math.Sqrt(2) * measured.AlongA, d = Math.Sqrt(2) * measured.AcrossA;
        var leakageOhm = leakageOhmPerHz * frequencyHz;
        var eq = (along * measured.BusV) - (statorOhm * q) - (leakageOhm * d);
        var ed = (across * measured.BusV) - (statorOhm * d) + (leakageOhm * q);
        var size = T.Abs(frequencyHz);
        return T.Less((T.Of(levelHz) - size) * ((eq * eq) + (ed * ed)), -(rotorOhm * size * ((q * eq) + (d * ed))));
    }

    private void Count(T beyond)
    {
        aboveS = T.Choose(beyond, aboveS + T.Of(ControlFigures.TickS), default);
        Counts = T.Any(beyond);
    }
}
