using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>The drive's control at its sample time of 1 ms: from what it measures and is told to what it switches.</summary>
/// <remarks>
/// Configured by make-independent settings and the drive's ratings alone; it never sees speed, load or the motor's circuit.
/// One drive in each lane, with the same settings and orders; the states of each are its own.
/// </remarks>
internal sealed class DriveControl<T>
    where T : struct, ILanes<T>
{
    private const double DirectCurrentRate = 25;

    private readonly DriveRating drive;
    private readonly Ramp<T> ramp = new();
    private readonly MotorThermalModel<T> motorThermal;
    private readonly DriveOverloadModel<T> driveOverload;
    private readonly SequencerLanes<T> sequencers;
    private readonly BrakeRelay<T> brake = new();
    private ControlFigures figures;
    private VoltageCurve<T> curve;
    private CurrentLimiter<T> limiter;
    private OvervoltageControl<T> overvoltage;
    private SlipCompensation<T> slip;
    private T directV;

    internal DriveControl(ControlSettings settings, DriveRating drive)
    {
        this.drive = drive;
        figures = new ControlFigures(settings, drive);
        curve = new VoltageCurve<T>(settings);
        limiter = new CurrentLimiter<T>(figures);
        overvoltage = new OvervoltageControl<T>(figures);
        slip = new SlipCompensation<T>(figures);
        motorThermal = new MotorThermalModel<T>(settings);
        driveOverload = new DriveOverloadModel<T>(drive);
        sequencers = new SequencerLanes<T>(figures);
    }

    internal T FrequencyHz { get; private set; }

    internal T CurrentLimitActive => T.And(sequencers.ByCurve, limiter.Active);

    internal T OvervoltageControlActive => T.And(sequencers.ByCurve, overvoltage.Active);

    internal T MotorThermalPercent => 100 * motorThermal.PartOfTrip;

    internal ControlSettings Settings => figures.Settings;

    /// <summary>The sequencer of one drive: its state and trip.</summary>
    internal Sequencer Of(int lane) => sequencers[lane];

    /// <summary>Set where the ramp has arrived at the frequency asked for.</summary>
    internal T AtTarget
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.And(sequencers.Running, T.And(
            LaneSet.Not(T.Less(ramp.FrequencyHz, sequencers.TargetHz)), LaneSet.Not(T.Less(sequencers.TargetHz, ramp.FrequencyHz))));
    }

    /// <summary>Set where the output is on.</summary>
    internal T OutputOn => sequencers.On;

    internal void Configure(ControlSettings settings)
    {
        figures = new ControlFigures(settings, drive);
        curve = new VoltageCurve<T>(settings);
        limiter = new CurrentLimiter<T>(figures);
        overvoltage = new OvervoltageControl<T>(figures);
        slip = new SlipCompensation<T>(figures);
        motorThermal.Configure(settings);
        sequencers.Configure(figures);
    }

    /// <summary>Resets a trip, unless the motor is still as hot as the trip level.</summary>
    internal void ResetTrip(int lane)
    {
        if (motorThermal.PartOfTrip[lane] < 1)
        {
            Of(lane).ResetTrip();
        }
    }

    /// <summary>One sample.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal PlantCommand<T> Sample(in Measurement<T> measured, in DriveOrder order)
    {
        Watch(measured);
        sequencers.Sample(order, ramp.FrequencyHz, measured.BusV);
        if (sequencers.AnyChanged)
        {
            Enter();
        }

        brake.Sample(figures.Settings.Brake, sequencers.On, sequencers.Running, FrequencyHz, measured.CurrentA);
        OutputVoltage<T> wanted = default;
        if (T.Any(sequencers.ByCurve))
        {
            var byCurve = ByCurve(measured);
            wanted = new OutputVoltage<T>(
                T.Choose(sequencers.ByCurve, byCurve.AlongV, default), T.Choose(sequencers.ByCurve, byCurve.AcrossV, default));
        }

        if (T.Any(sequencers.ByDirectCurrent))
        {
            wanted = wanted with { AlongV = T.Choose(sequencers.ByDirectCurrent, ByDirectCurrent(measured), wanted.AlongV) };
        }

        var (along, across) = Modulator.For(wanted, measured.BusV);
        return new PlantCommand<T>(
            sequencers.On, along, across, FrequencyHz, figures.Settings.BrakingChopper, brake.Open, sequencers.Supply);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Watch(in Measurement<T> measured)
    {
        motorThermal.Sample(measured.CurrentA);
        driveOverload.Sample(measured.CurrentA);
        var overvoltageNow = LaneSet.Not(T.Less(measured.LargestBusV, T.Of(figures.OvervoltageTripV)));
        var whileOn = T.Or(
            T.Or(LaneSet.Not(T.Less(measured.LargestCurrentA, T.Of(figures.OvercurrentA))), T.Less(measured.BusV, T.Of(figures.UndervoltageTripV))),
            T.Or(LaneSet.Not(T.Less(motorThermal.PartOfTrip, T.Of(1))), driveOverload.Exceeded));
        if (!T.Any(T.Or(overvoltageNow, T.And(sequencers.On, whileOn))))
        {
            return;
        }

        for (var lane = 0; lane < T.Count; lane++)
        {
            Of(lane).TripBy(overvoltageNow.IsSet(lane) ? TripCause.Overvoltage
                : Of(lane).Output == OutputMode.Off ? TripCause.None
                : measured.LargestCurrentA[lane] >= figures.OvercurrentA ? TripCause.Overcurrent
                : measured.BusV[lane] < figures.UndervoltageTripV ? TripCause.Undervoltage
                : motorThermal.PartOfTrip[lane] >= 1 ? TripCause.MotorOverload
                : driveOverload.Exceeded.IsSet(lane) ? TripCause.DriveOverload
                : TripCause.None);
        }
    }

    private void Enter()
    {
        var entered = sequencers.Changed;
        ramp.Reset(sequencers.RampRestarts);
        limiter.Reset(entered);
        overvoltage.Reset(entered);
        slip.Reset(entered);
        directV = T.Choose(entered, default, directV);
        FrequencyHz = T.Choose(entered, default, FrequencyHz);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private OutputVoltage<T> ByCurve(in Measurement<T> measured)
    {
        limiter.Sample(measured, T.Of(figures.AccelerationHzPerS), sequencers.FallHzPerS);
        var fall = T.Min(limiter.HighestFall, overvoltage.HighestFall(measured, sequencers.FallHzPerS));
        ramp.Sample(sequencers.ByCurve, brake.Held(figures.Settings.Brake, sequencers.TargetHz), limiter.HighestRise, fall, figures.MaximumHz);
        slip.Sample(measured);
        var direction = LaneSet.Sign(ramp.FrequencyHz);
        var size = T.Max(T.Abs(ramp.FrequencyHz) + (T.Abs(direction) * slip.AddedHz), default);
        FrequencyHz = T.Choose(sequencers.ByCurve, direction * size, FrequencyHz);
        return limiter.Limit(curve.At(ramp.FrequencyHz), measured);
    }

    private T ByDirectCurrent(in Measurement<T> measured)
    {
        var wantedA = figures.Settings.DcBrakingCurrent.Ratio * figures.MotorA;
        var openV = figures.Settings.MotorRatedVoltage.Volts;
        var rise = (DirectCurrentRate * 0.05 * openV / figures.MotorA * ControlFigures.TickS) * (T.Of(wantedA) - measured.CurrentA);
        directV = LaneSet.Clamp(directV + rise, default, T.Of(0.3 * openV));
        return directV;
    }
}
