using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>The drive's control at its sample time of 1 ms: from what it measures and is told to what it switches.</summary>
/// <remarks>Configured by make-independent settings and the drive's ratings alone; it never sees speed, load or the motor's circuit.</remarks>
internal sealed class DriveControl
{
    private const double DirectCurrentRate = 25;

    private readonly DriveRating drive;
    private readonly Ramp ramp = new();
    private readonly MotorThermalModel motorThermal;
    private readonly DriveOverloadModel driveOverload;
    private readonly Sequencer sequencer;
    private readonly BrakeRelay brake = new();
    private ControlFigures figures;
    private VoltageCurve curve;
    private CurrentLimiter limiter;
    private OvervoltageControl overvoltage;
    private SlipCompensation slip;
    private OutputMode lastOutput;
    private double directV;

    internal DriveControl(ControlSettings settings, DriveRating drive)
    {
        this.drive = drive;
        figures = new ControlFigures(settings, drive);
        curve = new VoltageCurve(settings);
        limiter = new CurrentLimiter(figures);
        overvoltage = new OvervoltageControl(figures);
        slip = new SlipCompensation(figures);
        motorThermal = new MotorThermalModel(settings);
        driveOverload = new DriveOverloadModel(drive);
        sequencer = new Sequencer(figures);
    }

    internal DriveState State => sequencer.State;

    internal TripCause Trip => sequencer.Trip;

    internal double FrequencyHz { get; private set; }

    internal bool AtTarget => sequencer.State == DriveState.Running && ramp.FrequencyHz == sequencer.TargetHz;

    internal bool CurrentLimitActive => sequencer.Output == OutputMode.Curve && limiter.Active;

    internal bool OvervoltageControlActive => sequencer.Output == OutputMode.Curve && overvoltage.Active;

    internal double MotorThermalPercent => 100 * motorThermal.PartOfTrip;

    internal ControlSettings Settings => figures.Settings;

    internal void Configure(ControlSettings settings)
    {
        figures = new ControlFigures(settings, drive);
        curve = new VoltageCurve(settings);
        limiter = new CurrentLimiter(figures);
        overvoltage = new OvervoltageControl(figures);
        slip = new SlipCompensation(figures);
        motorThermal.Configure(settings);
        sequencer.Configure(figures);
    }

    internal void TripBy(TripCause cause) => sequencer.TripBy(cause);

    /// <summary>Resets a trip, unless the motor is still as hot as the trip level.</summary>
    internal void ResetTrip()
    {
        if (motorThermal.PartOfTrip < 1)
        {
            sequencer.ResetTrip();
        }
    }

    internal void PowerOff() => sequencer.PowerOff();

    internal void PowerOn() => sequencer.PowerOn();

    /// <summary>One sample.</summary>
    internal PlantCommand Sample(in Measurement measured, in DriveOrder order)
    {
        Watch(measured);
        sequencer.Sample(order, ramp.FrequencyHz, measured.BusV >= figures.UndervoltageTripV);
        if (sequencer.Output != lastOutput)
        {
            Enter(sequencer.Output);
        }

        brake.Sample(figures.Settings.Brake, sequencer.Output, sequencer.State, FrequencyHz, measured.CurrentA);
        var wanted = sequencer.Output switch
        {
            OutputMode.Curve => ByCurve(measured),
            OutputMode.DirectCurrent => new OutputVoltage(ByDirectCurrent(measured), 0),
            _ => default,
        };
        var (along, across) = Modulator.For(wanted, measured.BusV);
        var supply = !sequencer.Powered ? RectifierMode.Open
            : sequencer.State == DriveState.Unpowered ? RectifierMode.Charging
            : RectifierMode.Conducting;
        return new PlantCommand(
            sequencer.Output != OutputMode.Off, along, across, FrequencyHz, figures.Settings.BrakingChopper, brake.Open, supply);
    }

    private void Watch(in Measurement measured)
    {
        motorThermal.Sample(measured.CurrentA);
        driveOverload.Sample(measured.CurrentA);
        var cause = TripCause.None;
        if (measured.LargestBusV >= figures.OvervoltageTripV)
        {
            cause = TripCause.Overvoltage;
        }
        else if (sequencer.Output != OutputMode.Off)
        {
            cause = measured.LargestCurrentA >= figures.OvercurrentA ? TripCause.Overcurrent
                : measured.BusV < figures.UndervoltageTripV ? TripCause.Undervoltage
                : motorThermal.PartOfTrip >= 1 ? TripCause.MotorOverload
                : driveOverload.Exceeded ? TripCause.DriveOverload
                : TripCause.None;
        }

        sequencer.TripBy(cause);
    }

    private void Enter(OutputMode output)
    {
        if (lastOutput == OutputMode.Off || output != OutputMode.Curve)
        {
            ramp.Reset();
        }

        limiter.Reset();
        overvoltage.Reset();
        slip.Reset();
        directV = 0;
        FrequencyHz = 0;
        lastOutput = output;
    }

    private OutputVoltage ByCurve(in Measurement measured)
    {
        limiter.Sample(measured, figures.AccelerationHzPerS, sequencer.FallHzPerS);
        var fall = Math.Min(limiter.HighestFall, overvoltage.HighestFall(measured, sequencer.FallHzPerS));
        ramp.Sample(brake.Held(figures.Settings.Brake, sequencer.TargetHz), limiter.HighestRise, fall, figures.MaximumHz);
        slip.Sample(measured);
        var size = Math.Max(Math.Abs(ramp.FrequencyHz) + (ramp.FrequencyHz == 0 ? 0 : slip.AddedHz), 0);
        FrequencyHz = ramp.FrequencyHz < 0 ? -size : size;
        return limiter.Limit(curve.At(ramp.FrequencyHz), measured);
    }

    private double ByDirectCurrent(in Measurement measured)
    {
        var wantedA = figures.Settings.DcBrakingCurrent.Ratio * figures.MotorA;
        var openV = figures.Settings.MotorRatedVoltage.Volts;
        directV = Math.Clamp(directV + (DirectCurrentRate * 0.05 * openV * (wantedA - measured.CurrentA) / figures.MotorA * ControlFigures.TickS), 0, 0.3 * openV);
        return directV;
    }
}
