using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>The drive's states: start, run, the ways to stop, trip, and power.</summary>
internal sealed class Sequencer(ControlFigures figures, GroupClock clock)
{
    // Held at 0 Hz at the end of a ramp, and without output before direct current, in s (common practice, no source).
    internal const double HoldAtZeroS = 0.5;
    private const double DemagnetiseS = 0.3;
    private const double ChargeS = 0.5;

    // A run of this length makes the count of automatic resets begin anew, in s (common practice, no source).
    private const double ForgottenS = 60;

    private ControlFigures figures = figures;
    private bool startArmed = true;
    private double phaseS;
    private double trippedS;
    private long ranSince;

    // So long without output that no flux is left, until one is made.
    private double offS = double.PositiveInfinity;
    private int resets;
    private bool braking;

    internal DriveState State { get; private set; } = DriveState.Stopped;

    internal TripCause Trip { get; private set; }

    internal OutputMode Output { get; private set; }

    internal double TargetHz { get; private set; }

    internal double RiseHzPerS { get; private set; }

    internal double FallHzPerS { get; private set; }

    internal bool Powered { get; private set; } = true;

    /// <summary>A further sample with the same order says the same again while the ramp's frequency is above this, in Hz; infinite where it may not.</summary>
    internal double CalmAboveHz => Output != OutputMode.Curve || braking || figures.Settings.SkipBands.Count > 0 ? double.PositiveInfinity : State switch
    {
        DriveState.Running => -1,
        DriveState.Stopping or DriveState.QuickStopping => Math.Max(figures.Settings.DcBrakingFrequency.Hertz, 0),
        _ => double.PositiveInfinity,
    };

    internal void Configure(ControlFigures next)
    {
        figures = next;
        clock.Disturbed = true;
    }

    /// <summary>The search for a turning motor is over; from now on by the curve.</summary>
    internal void EndSearch()
    {
        if (Output == OutputMode.Search)
        {
            Output = OutputMode.Curve;
            clock.Disturbed = true;
        }
    }

    internal void TripBy(TripCause cause)
    {
        if (State is DriveState.Tripped or DriveState.Unpowered || cause == TripCause.None)
        {
            return;
        }

        ForgetResets();
        clock.Disturbed = true;
        Trip = cause;
        startArmed = false;
        trippedS = 0;
        State = DriveState.Tripped;
        Output = OutputMode.Off;
    }

    internal void ResetTrip()
    {
        if (State == DriveState.Tripped)
        {
            Trip = TripCause.None;
            State = DriveState.Stopped;
            clock.Disturbed = true;
        }
    }

    // Never after what a person must look at first (common practice, no source).
    private void WaitForReset()
    {
        var protection = figures.Settings.Protection;
        trippedS += ControlFigures.TickS;
        if (resets < protection.AutomaticResets && trippedS >= protection.AutomaticResetDelay.Seconds && Trip
            is TripCause.Overcurrent or TripCause.Overvoltage or TripCause.Undervoltage or TripCause.SupplyPhase or TripCause.DriveTemperature or TripCause.Stall or TripCause.Underload)
        {
            resets++;
            ResetTrip();
            startArmed = true;
        }
    }

    internal void PowerOff()
    {
        resets = 0;
        clock.Disturbed = true;
        Powered = false;
        Trip = TripCause.None;
        State = DriveState.Unpowered;
        Output = OutputMode.Off;
    }

    internal void PowerOn()
    {
        if (!Powered)
        {
            Powered = true;
            phaseS = 0;
            clock.Disturbed = true;
        }
    }

    /// <summary>One sample: follows the order as far as the state allows.</summary>
    internal void Sample(in DriveOrder order, double rampHz, double busV)
    {
        switch (State)
        {
            case DriveState.Unpowered:
                Charge(order);
                break;
            case DriveState.Stopped:
                Start(order, busV >= figures.UndervoltageTripV);
                break;
            case DriveState.Running:
            case DriveState.Stopping:
            case DriveState.QuickStopping:
                Run(order, rampHz);
                break;
            case DriveState.Tripped:
                WaitForReset();
                break;
            default:
                break;
        }

        startArmed |= !order.Run && State == DriveState.Stopped;
        offS = Output == OutputMode.Off ? offS + ControlFigures.TickS : 0;
    }

    private void Charge(in DriveOrder order)
    {
        phaseS += ControlFigures.TickS;
        if (Powered && phaseS >= ChargeS)
        {
            State = DriveState.Stopped;
            startArmed = !order.Run || figures.Settings.RestartAfterPowerLoss;
        }
    }

    private void Start(in DriveOrder order, bool busIsHigh)
    {
        if (!order.Run || !startArmed || !Permitted(order.FrequencyHz))
        {
            return;
        }

        startArmed = false;
        if (!busIsHigh)
        {
            TripBy(TripCause.Undervoltage);
            return;
        }

        ranSince = clock.Samples;
        Go(order, rampHz: 0);
    }

    private void Run(in DriveOrder order, double rampHz)
    {
        ForgetResets();
        if (State != DriveState.QuickStopping && order.Run)
        {
            Go(order, rampHz);
            return;
        }

        if (Output is OutputMode.Search or OutputMode.Off && State == DriveState.Running)
        {
            Finish();
            return;
        }

        if (State == DriveState.Running)
        {
            phaseS = 0;
            braking = false;
        }

        Stop(order.Run ? order with { Stop = StopKind.QuickStop } : order, rampHz);
    }

    private void ForgetResets()
    {
        if (State == DriveState.Running && (clock.Samples - ranSince) * ControlFigures.TickS > ForgottenS)
        {
            resets = 0;
        }
    }

    private void Go(in DriveOrder order, double rampHz)
    {
        State = DriveState.Running;
        Output = Output switch
        {
            OutputMode.Search => OutputMode.Search,
            OutputMode.Off when figures.Settings.FlyingRestart => offS < figures.DemagnetiseS ? OutputMode.Off : OutputMode.Search,
            _ => OutputMode.Curve,
        };
        RiseHzPerS = order.SecondRamps ? figures.SecondAccelerationHzPerS : figures.AccelerationHzPerS;
        FallHzPerS = order.SecondRamps ? figures.SecondDecelerationHzPerS : figures.DecelerationHzPerS;
        if (Permitted(order.FrequencyHz))
        {
            var asked = Math.Clamp(Math.Abs(order.FrequencyHz), figures.MinimumHz, figures.MaximumHz);
            var size = SkipBand.Outside(figures.Settings.SkipBands, asked, Math.Abs(rampHz), figures.MinimumHz, figures.MaximumHz);
            TargetHz = order.FrequencyHz < 0 ? -size : size;
        }
        else
        {
            TargetHz = 0;
        }
    }

    private void Stop(in DriveOrder order, double rampHz)
    {
        var kind = order.Stop;
        var method = figures.Settings.StoppingMethod;
        if (kind == StopKind.Coast || (kind == StopKind.ByMethod && method == StoppingMethod.Coast && State != DriveState.QuickStopping))
        {
            Finish();
            return;
        }

        if (kind == StopKind.QuickStop)
        {
            State = DriveState.QuickStopping;
        }
        else if (State != DriveState.QuickStopping)
        {
            State = DriveState.Stopping;
        }

        TargetHz = 0;
        FallHzPerS = State == DriveState.QuickStopping ? figures.QuickStopHzPerS
            : order.SecondRamps ? figures.SecondDecelerationHzPerS
            : figures.DecelerationHzPerS;
        var byDirectCurrent = State == DriveState.Stopping && kind == StopKind.ByMethod && method == StoppingMethod.DcBraking;
        if (byDirectCurrent && Math.Abs(rampHz) <= figures.Settings.DcBrakingFrequency.Hertz)
        {
            braking = true;
        }

        if (braking)
        {
            Brake();
        }
        else if (rampHz == 0)
        {
            Hold();
        }
    }

    private void Hold()
    {
        phaseS += ControlFigures.TickS;
        if (phaseS >= HoldAtZeroS)
        {
            Finish();
        }
    }

    private void Brake()
    {
        phaseS += ControlFigures.TickS;
        Output = phaseS < DemagnetiseS ? OutputMode.Off : OutputMode.DirectCurrent;
        if (phaseS >= DemagnetiseS + figures.Settings.DcBrakingTime.Seconds)
        {
            Finish();
        }
    }

    private void Finish()
    {
        State = DriveState.Stopped;
        Output = OutputMode.Off;
    }

    private bool Permitted(double frequencyHz) => frequencyHz >= 0 || figures.Settings.ReversePermitted;
}
