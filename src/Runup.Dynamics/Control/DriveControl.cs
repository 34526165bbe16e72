using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>The drive's control at its sample time of 1 ms: from what it measures and is told to what it switches.</summary>
/// <remarks>
/// Configured by make-independent settings and the drive's ratings alone; it never sees load or the motor's circuit, nor the speed but by an encoder.
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
    private SwingDamping<T> swing;
    private RideThrough<T> rideThrough;
    private FlyingSearch<T> search;
    private Supervision<T> supervision;
    private VectorControl<T>? vector;
    private OverspeedWatch<T> overspeed;
    private T directV;
    private T lastAlong;
    private T lastAcross;

    internal DriveControl(ControlSettings settings, DriveRating drive)
    {
        this.drive = drive;
        figures = new ControlFigures(settings, drive);
        curve = new VoltageCurve<T>(settings);
        limiter = new CurrentLimiter<T>(figures);
        overvoltage = new OvervoltageControl<T>(figures);
        slip = new SlipCompensation<T>(figures);
        swing = new SwingDamping<T>(figures);
        rideThrough = new RideThrough<T>(figures);
        search = new FlyingSearch<T>(figures);
        supervision = new Supervision<T>(figures);
        vector = settings.Vector ? new VectorControl<T>(figures) : null;
        overspeed = new OverspeedWatch<T>(figures);
        motorThermal = new MotorThermalModel<T>(settings);
        driveOverload = new DriveOverloadModel<T>(drive);
        sequencers = new SequencerLanes<T>(figures);
    }

    internal T FrequencyHz { get; private set; }

    internal T CurrentLimitActive
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.And(sequencers.ByCurve, vector is null ? limiter.Active : vector.Limited);
    }

    internal T RideThroughActive => T.And(sequencers.ByCurve, rideThrough.Active);

    internal T OvervoltageControlActive => T.And(sequencers.ByCurve, overvoltage.Active);

    internal T MotorThermalPercent => 100 * motorThermal.PartOfTrip;

    internal ControlSettings Settings => figures.Settings;

    /// <summary>The supply is there; while it is not the control lives on the bus.</summary>
    internal bool SupplyPresent { get; set; } = true;

    /// <summary>The sequencer of one drive: its state and trip.</summary>
    internal Sequencer Of(int lane) => sequencers[lane];

    /// <summary>Set where the ramp has arrived at the frequency asked for.</summary>
    internal T AtTarget
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.And(sequencers.Running, T.And(
            T.Not(T.Less(ramp.FrequencyHz, sequencers.TargetHz)), T.Not(T.Less(sequencers.TargetHz, ramp.FrequencyHz))));
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
        swing = new SwingDamping<T>(figures);
        rideThrough = new RideThrough<T>(figures);
        search = new FlyingSearch<T>(figures);
        supervision = new Supervision<T>(figures);
        vector = settings.Vector ? new VectorControl<T>(figures) : null;
        overspeed = new OverspeedWatch<T>(figures);
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
        vector?.Count(measured);
        Watch(measured);
        if (T.All(T.Not(sequencers.On)) && SupplyPresent)
        {
            rideThrough.Ready(measured.BusV[0]);
        }

        sequencers.SupplyPresent = SupplyPresent;
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

        if (T.Any(sequencers.Searching))
        {
            wanted = wanted with { AlongV = T.Choose(sequencers.Searching, BySearch(measured), wanted.AlongV) };
        }

        if (T.Any(sequencers.ByDirectCurrent))
        {
            wanted = wanted with { AlongV = T.Choose(sequencers.ByDirectCurrent, ByDirectCurrent(measured), wanted.AlongV) };
        }

        var (along, across) = Modulator.For(wanted, measured.BusV);
        vector?.Applied(along, across, measured.BusV);
        (lastAlong, lastAcross) = (along, across);
        return new PlantCommand<T>(
            sequencers.On, along, across, OutputHz(), figures.Settings.BrakingChopper, brake.Open, sequencers.Supply);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Watch(in Measurement<T> measured)
    {
        motorThermal.Sample(measured.CurrentA);
        driveOverload.Sample(measured.CurrentA);
        var overvoltageNow = T.Not(T.Less(measured.LargestBusV, T.Of(figures.OvervoltageTripV)));
        var whileOn = T.Or(
            T.Or(T.Not(T.Less(measured.LargestCurrentA, T.Of(figures.OvercurrentA))), T.Less(measured.BusV, T.Of(figures.UndervoltageTripV))),
            T.Or(motorThermal.Exceeded, driveOverload.Exceeded));
        var supervised = supervision.Sample(measured, FrequencyHz, sequencers.Running, T.And(CurrentLimitActive, brake.Open), AtTarget);
        WatchSpeed(measured);
        whileOn = T.Or(whileOn, supervised);
        whileOn = overspeed.Counts ? T.Or(whileOn, overspeed.Exceeded) : whileOn;
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
                : motorThermal.Exceeded.IsSet(lane) ? TripCause.MotorOverload
                : driveOverload.Exceeded.IsSet(lane) ? TripCause.DriveOverload
                : overspeed.Exceeded.IsSet(lane) ? TripCause.Overspeed
                : supervision.Cause(measured, lane));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void WatchSpeed(in Measurement<T> measured)
    {
        if (vector is null)
        {
            overspeed.ByTerminals(measured, FrequencyHz, lastAlong, lastAcross, sequencers.ByCurve);
        }
        else
        {
            overspeed.BySpeed(vector.SpeedHz, sequencers.ByCurve);
        }
    }

    private void Enter()
    {
        var entered = sequencers.Changed;
        ramp.Reset(sequencers.RampRestarts);
        limiter.Reset(entered);
        overvoltage.Reset(entered);
        slip.Reset(entered);
        swing.Reset(entered);
        rideThrough.Reset(entered);
        vector?.Reset(entered);
        vector?.Take(T.And(entered, sequencers.ByCurve), ramp.FrequencyHz);
        search.Begin(T.And(entered, sequencers.Searching), sequencers.TargetHz);
        directV = T.Choose(entered, default, directV);
        FrequencyHz = T.Choose(entered, default, FrequencyHz);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private OutputVoltage<T> ByCurve(in Measurement<T> measured)
    {
        var (rise, fall) = (sequencers.RiseHzPerS, sequencers.FallHzPerS);
        if (vector is { } byVector)
        {
            var direction = LaneSet.Sign(ramp.FrequencyHz);
            var back = direction * byVector.HeldBack;
            rise = T.Choose(T.Or(T.Less(default, back), T.Not(byVector.FluxStands)), default, rise);
            fall = T.Choose(T.Less(back, default), default, fall);
        }
        else
        {
            limiter.Sample(measured, rise, fall);
            (rise, fall) = (limiter.HighestRise, limiter.HighestFall);
        }

        fall = T.Min(fall, overvoltage.HighestFall(measured, sequencers.FallHzPerS));
        if (rideThrough.Watches)
        {
            (rise, fall) = rideThrough.Rates(measured, ramp.FrequencyHz, rise, fall);
        }

        ramp.Sample(sequencers.ByCurve, brake.Held(figures.Settings.Brake, sequencers.TargetHz), rise, fall, figures.MaximumHz, Rounding());
        return vector is null ? ByVoltsPerHertz(measured) : ByVector(vector, measured);
    }

    // A quick stop is not rounded, nor is what holds the bus.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (T Up, T Down)? Rounding()
    {
        if (figures.Settings.SCurve.Seconds <= 0)
        {
            return null;
        }

        var sharp = T.Or(sequencers.QuickStopping, rideThrough.Active);
        var per = T.Choose(sharp, T.Of(1 / ControlFigures.TickS), T.Of(1 / figures.Settings.SCurve.Seconds));
        return (sequencers.RiseHzPerS * per, sequencers.FallHzPerS * per);
    }

    private OutputVoltage<T> ByVector(VectorControl<T> control, in Measurement<T> measured)
    {
        var voltage = control.Sample(measured, ramp.FrequencyHz);
        FrequencyHz = T.Choose(sequencers.ByCurve, control.FrequencyHz, FrequencyHz);
        return voltage;
    }

    private T BySearch(in Measurement<T> measured)
    {
        var voltage = search.Sample(measured, curve);
        FrequencyHz = T.Choose(sequencers.Searching, search.FrequencyHz, FrequencyHz);
        var over = T.And(sequencers.Searching, search.Over);
        if (T.Any(over))
        {
            ramp.Put(over, search.FrequencyHz);
            for (var lane = 0; lane < T.Count; lane++)
            {
                if (over.IsSet(lane))
                {
                    Of(lane).EndSearch();
                }
            }
        }

        return voltage;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private OutputVoltage<T> ByVoltsPerHertz(in Measurement<T> measured)
    {
        slip.Sample(measured);
        swing.Sample(measured.AlongA, ramp.FrequencyHz);
        var direction = LaneSet.Sign(ramp.FrequencyHz);
        var size = T.Max(T.Abs(ramp.FrequencyHz) + (T.Abs(direction) * slip.AddedHz), default);
        FrequencyHz = T.Choose(sequencers.ByCurve, direction * size, FrequencyHz);
        return limiter.Limit(curve.At(ramp.FrequencyHz), measured);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T OutputHz()
    {
        var hertz = swing.Works ? FrequencyHz + Swing() : FrequencyHz;
        return rideThrough.Watches ? hertz + rideThrough.TurnHz : hertz;
    }

    // Beside the frequency that is shown and that levels are held against. What holds the bus needs the frequency for itself.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Swing() => T.Choose(T.And(sequencers.ByCurve, T.Not(T.Or(overvoltage.Active, rideThrough.Active))), LaneSet.Sign(FrequencyHz) * swing.AddedHz, default);

    private T ByDirectCurrent(in Measurement<T> measured)
    {
        var wantedA = figures.Settings.DcBrakingCurrent.Ratio * figures.MotorA;
        var openV = figures.Settings.MotorRatedVoltage.Volts;
        var rise = (DirectCurrentRate * 0.05 * openV / figures.MotorA * ControlFigures.TickS) * (T.Of(wantedA) - measured.CurrentA);
        directV = LaneSet.Clamp(directV + rise, default, T.Of(0.3 * openV));
        return directV;
    }
}
