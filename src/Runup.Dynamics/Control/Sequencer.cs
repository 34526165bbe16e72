using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>The drive's states: start, run, the ways to stop, trip, and power.</summary>
internal sealed class Sequencer(ControlFigures figures)
{
    // Held at 0 Hz at the end of a ramp, and without output before direct current, in s (common practice, no source).
    private const double HoldAtZeroS = 0.5;
    private const double DemagnetiseS = 0.3;
    private const double ChargeS = 0.5;

    private ControlFigures figures = figures;
    private bool startArmed = true;
    private double phaseS;
    private bool braking;

    internal DriveState State { get; private set; } = DriveState.Stopped;

    internal TripCause Trip { get; private set; }

    internal OutputMode Output { get; private set; }

    internal double TargetHz { get; private set; }

    internal double FallHzPerS { get; private set; }

    internal bool Powered { get; private set; } = true;

    internal void Configure(ControlFigures next) => figures = next;

    internal void TripBy(TripCause cause)
    {
        if (State is DriveState.Tripped or DriveState.Unpowered || cause == TripCause.None)
        {
            return;
        }

        Trip = cause;
        startArmed = false;
        State = DriveState.Tripped;
        Output = OutputMode.Off;
    }

    internal void ResetTrip()
    {
        if (State == DriveState.Tripped)
        {
            Trip = TripCause.None;
            State = DriveState.Stopped;
        }
    }

    internal void PowerOff()
    {
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
            default:
                break;
        }

        startArmed |= !order.Run && State == DriveState.Stopped;
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

        Go(order);
    }

    private void Run(in DriveOrder order, double rampHz)
    {
        if (State != DriveState.QuickStopping && order.Run)
        {
            Go(order);
            return;
        }

        if (State == DriveState.Running)
        {
            phaseS = 0;
            braking = false;
        }

        Stop(order.Run ? StopKind.QuickStop : order.Stop, rampHz);
    }

    private void Go(in DriveOrder order)
    {
        State = DriveState.Running;
        Output = OutputMode.Curve;
        FallHzPerS = figures.DecelerationHzPerS;
        if (Permitted(order.FrequencyHz))
        {
            var size = Math.Clamp(Math.Abs(order.FrequencyHz), figures.MinimumHz, figures.MaximumHz);
            TargetHz = order.FrequencyHz < 0 ? -size : size;
        }
        else
        {
            TargetHz = 0;
        }
    }

    private void Stop(StopKind kind, double rampHz)
    {
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
        FallHzPerS = State == DriveState.QuickStopping ? figures.QuickStopHzPerS : figures.DecelerationHzPerS;
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
