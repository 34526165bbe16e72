using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Dynamics.Control;

/// <summary>The numbers that the control's loops work with, from settings and the drive's ratings.</summary>
internal sealed class ControlFigures
{
    /// <summary>Sample time of the control, in s.</summary>
    internal const double TickS = 1e-3;

    // Where the plate's speed is not set: 3 % of rated frequency (common practice, no source).
    private const double UnstatedSlip = 0.03;

    // Leakage of stator and rotor together, per unit (common practice, no source).
    private const double UsualLeakage = 0.18;

    // Of the motor's base impedance; with that leakage it takes some 3 ms to act and stays stable at the sample time.
    private const double ClampShare = 0.25;

    private readonly Lazy<TunedMotor> tuned;

    internal ControlFigures(ControlSettings settings, DriveRating drive)
    {
        Settings = settings;
        MaximumHz = settings.MaximumFrequency.Hertz;
        MinimumHz = Math.Min(settings.MinimumFrequency.Hertz, MaximumHz);
        AccelerationHzPerS = MaximumHz / settings.Acceleration.Seconds;
        DecelerationHzPerS = MaximumHz / settings.Deceleration.Seconds;
        SecondAccelerationHzPerS = MaximumHz / (settings.SecondAcceleration ?? settings.Acceleration).Seconds;
        SecondDecelerationHzPerS = MaximumHz / (settings.SecondDeceleration ?? settings.Deceleration).Seconds;
        QuickStopHzPerS = MaximumHz / settings.QuickStop.Seconds;
        LimitA = Math.Min(settings.CurrentLimit.Amperes, drive.PeakCurrent.Amperes);
        MotorA = settings.MotorRatedCurrent.Amperes;
        RatedSlipHz = SlipHz(settings);
        RotorLagS = Math.Clamp(UsualLeakage / (2 * Math.PI * RatedSlipHz), 0.005, 0.06);
        CurrentClampOhm = ClampShare * settings.MotorRatedVoltage.Volts / MotorA;
        OvercurrentA = drive.OvercurrentTrip.Amperes;
        OvervoltageTripV = drive.OvervoltageTrip.Volts;
        OvervoltageControlV = drive.OvervoltageControl.Volts;
        UndervoltageTripV = drive.UndervoltageTrip.Volts;
        WatchesSupplyPhase = drive.SupplyPhases == 3 && settings.Protection.TripOnSupplyPhase;
        BusF = drive.BusCapacitance.Farads;
        tuned = new(() => settings.Tuned ?? TunedMotor.FromRating(settings));
    }

    internal ControlSettings Settings { get; }

    /// <summary>The motor's circuit as far as the drive knows it.</summary>
    internal TunedMotor Motor => tuned.Value;

    /// <summary>How long the flux of a motor takes to die, three time constants of the open rotor, in s.</summary>
    internal double DemagnetiseS => Math.Clamp(
        3 * (Motor.Leakage.Ohms + Motor.Magnetizing.Ohms) / (Settings.MotorRatedFrequency.RadiansPerSecond * Motor.RotorResistance.Ohms), 0.3, 5);

    internal double MaximumHz { get; }

    internal double MinimumHz { get; }

    internal double AccelerationHzPerS { get; }

    internal double DecelerationHzPerS { get; }

    internal double SecondAccelerationHzPerS { get; }

    internal double SecondDecelerationHzPerS { get; }

    internal double QuickStopHzPerS { get; }

    internal double LimitA { get; }

    internal double MotorA { get; }

    /// <summary>Slip at the rated point as a frequency, in Hz.</summary>
    internal double RatedSlipHz { get; }

    /// <summary>Lag of the rotor current behind the slip: leakage over rotor resistance, by the plate's slip and a usual leakage, in s.</summary>
    internal double RotorLagS { get; }

    /// <summary>Voltage, line to line, that the current clamp takes back for each ampere too much, in Ω.</summary>
    internal double CurrentClampOhm { get; }

    internal double OvercurrentA { get; }

    internal double OvervoltageTripV { get; }

    internal double OvervoltageControlV { get; }

    internal double UndervoltageTripV { get; }

    internal double BusF { get; }

    /// <summary>A missing supply phase trips; a drive for one phase has none to lose.</summary>
    internal bool WatchesSupplyPhase { get; }

    private static double SlipHz(ControlSettings settings)
    {
        var ratedHz = settings.MotorRatedFrequency.Hertz;
        if (settings.MotorRatedSpeed is not { RadiansPerSecond: > 0 } speed || speed.RadiansPerSecond >= settings.MotorRatedFrequency.RadiansPerSecond)
        {
            return UnstatedSlip * ratedHz;
        }

        var poles = PoleCount.FromFullLoad(settings.MotorRatedFrequency, speed);
        var slip = settings.MotorRatedFrequency.SynchronousSpeed(poles).SlipOf(speed).Ratio;
        return Math.Clamp(slip, 0.002, 0.2) * ratedHz;
    }
}
