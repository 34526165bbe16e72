using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>Watches that need time: a motor that does not follow, a lost load, a missing supply phase, a hot resistor, winding or heat sink.</summary>
/// <remarks>
/// Levels and delays that are no settings are common practice without source: stall, 10 s in the current limit below a tenth of base frequency; supply phase, a ripple of the bus above 12 % for 1 s;
/// resistor, a time constant of 60 s, trip at 110 % of its power; sensor in the winding 150 °C; heat sink 90 °C. Torque is told from power over frequency, as a drive does.
/// </remarks>
internal sealed class Supervision<T>
    where T : struct, ILanes<T>
{
    private const double StallS = 10;
    private const double StallShare = 0.1;
    private const double RippleShare = 0.12;
    private const double RippleS = 1;
    private const double ResistorS = 60;
    private const double ResistorTrip = 1.1;
    private const double WindingC = 150;
    private const double HeatSinkC = 90;
    private const double LeastHz = 5;

    private readonly ControlFigures figures;
    private readonly double perRatedW;
    private readonly double resistorRate;
    private T stalledS;
    private T emptyS;
    private T ripplingS;
    private T resistor;

    internal Supervision(ControlFigures figures)
    {
        this.figures = figures;
        var s = figures.Settings;
        perRatedW = s.MotorRatedFrequency.Hertz / (Math.Sqrt(3) * s.MotorRatedVoltage.Volts * figures.MotorA * s.MotorPowerFactor.Ratio);
        resistorRate = s.Protection is { ResistorResistance: { } ohms, ResistorPower: { } power } ? 1 / (ohms.Ohms * power.Watts) : 0;
    }

    /// <summary>Torque over rated torque, from power and frequency.</summary>
    private T TorqueShare(in Measurement<T> measured, T frequencyHz) => perRatedW * (measured.OutputW / T.Max(T.Abs(frequencyHz), T.Of(1)));

    /// <summary>One sample; set where something is to trip.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Sample(in Measurement<T> measured, T frequencyHz, T running, T limited, T atTarget)
    {
        var protection = figures.Settings.Protection;
        var slow = T.Less(T.Abs(frequencyHz), T.Of(StallShare * figures.Settings.BaseFrequency.Hertz));
        stalledS = Counted(stalledS, T.And(running, T.And(limited, slow)));
        var any = Reached(stalledS, StallS);
        if (protection.TripOnUnderload)
        {
            var fast = T.Less(T.Of(LeastHz), T.Abs(frequencyHz));
            emptyS = Counted(emptyS, T.And(T.And(atTarget, fast), T.Less(TorqueShare(measured, frequencyHz), T.Of(protection.UnderloadLevel.Ratio))));
            any = T.Or(any, Reached(emptyS, protection.UnderloadDelay.Seconds));
        }

        if (figures.WatchesSupplyPhase)
        {
            ripplingS = Counted(ripplingS, T.Less(RippleShare * measured.BusV, measured.RippleV));
            any = T.Or(any, Reached(ripplingS, RippleS));
        }

        if (resistorRate > 0)
        {
            var powers = T.Choose(measured.ChopperOn, resistorRate * (measured.BusV * measured.BusV), default);
            resistor += (ControlFigures.TickS / ResistorS) * ((measured.ChopperShare * powers) - resistor);
            any = T.Or(any, T.Less(T.Of(ResistorTrip), resistor));
        }

        if (protection.MotorSensor)
        {
            any = T.Or(any, HotWinding(measured));
        }

        return T.Or(any, T.Less(T.Of(HeatSinkC), measured.HeatSinkC));
    }

    /// <summary>What is to trip in one lane.</summary>
    internal TripCause Cause(in Measurement<T> measured, int lane)
    {
        var protection = figures.Settings.Protection;
        return HotWinding(measured).IsSet(lane) ? TripCause.MotorTemperature
            : measured.HeatSinkC[lane] > HeatSinkC ? TripCause.DriveTemperature
            : resistor[lane] > ResistorTrip ? TripCause.BrakingResistor
            : figures.WatchesSupplyPhase && ripplingS[lane] >= RippleS ? TripCause.SupplyPhase
            : stalledS[lane] >= StallS ? TripCause.Stall
            : protection.TripOnUnderload && emptyS[lane] >= protection.UnderloadDelay.Seconds ? TripCause.Underload
            : TripCause.None;
    }

    private T HotWinding(in Measurement<T> measured) => figures.Settings.Protection.MotorSensor ? T.Less(T.Of(WindingC), measured.WindingC) : default;

    private static T Counted(T seconds, T counts) => T.Choose(counts, seconds + T.Of(ControlFigures.TickS), default);

    private static T Reached(T seconds, double limit) => T.Not(T.Less(seconds, T.Of(limit)));
}
