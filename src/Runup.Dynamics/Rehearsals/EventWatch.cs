using Runup.Engineering.Motors;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>Turns readings into events, from tick to tick.</summary>
internal sealed class EventWatch(EquivalentCircuit motor)
{
    // A limit that lets go and holds again within this time is one event, in s.
    private const double QuietS = 0.5;
    internal const double NearSynchronous = 0.9;

    private readonly List<TraceEvent> events = [];
    private readonly double[] lastActiveS = [.. Enumerable.Repeat(double.NegativeInfinity, 4)];
    private bool supplied = true;
    private bool ordered;
    private bool tripped;
    private bool moving;
    private bool arrived;

    internal IReadOnlyList<TraceEvent> Events => events;

    /// <summary>The motor runs at the frequency asked for.</summary>
    internal bool AtSpeed { get; private set; }

    /// <summary>The shaft stands and the output is off.</summary>
    internal bool Standing { get; private set; } = true;

    internal void Look(DriveSimulation drive)
    {
        var at = drive.Readings;
        Orders(drive, at);
        Limit(0, at.CurrentLimitActive, TraceEventKind.CurrentLimit, at.TimeS);
        Limit(1, at.OvervoltageControlActive, TraceEventKind.OvervoltageControl, at.TimeS);
        Limit(2, at.ChopperOn, TraceEventKind.ChopperOn, at.TimeS);
        Limit(3, at.RideThroughActive, TraceEventKind.RideThrough, at.TimeS);
        Supply(drive.SupplyPresent, at.TimeS);
        Trips(at);
        Motion(at);
    }

    private void Orders(DriveSimulation drive, in DriveReadings at)
    {
        if (!ordered && at.State == DriveState.Running)
        {
            events.Add(new(at.TimeS, TraceEventKind.Start));
            ordered = true;
            arrived = false;
        }
        else if (ordered && at.State != DriveState.Running)
        {
            ordered = false;
            if (at.State != DriveState.Tripped)
            {
                events.Add(new(at.TimeS, TraceEventKind.Stop));
            }
        }

        var synchronousRpm = 60 * at.OutputFrequencyHz / motor.Poles.Pairs;
        AtSpeed = drive.AtTarget && at.OutputFrequencyHz != 0 && at.SpeedRpm / synchronousRpm >= NearSynchronous;
        if (AtSpeed && !arrived)
        {
            events.Add(new(at.TimeS, TraceEventKind.AtSpeed));
        }

        arrived = AtSpeed || (arrived && drive.AtTarget);
    }

    private void Supply(bool present, double timeS)
    {
        if (present != supplied)
        {
            events.Add(new(timeS, present ? TraceEventKind.SupplyBack : TraceEventKind.SupplyLost));
            supplied = present;
        }
    }

    private void Limit(int which, bool active, TraceEventKind kind, double timeS)
    {
        if (!active)
        {
            return;
        }

        if (timeS - lastActiveS[which] > QuietS)
        {
            events.Add(new(timeS, kind));
        }

        lastActiveS[which] = timeS;
    }

    private void Trips(in DriveReadings at)
    {
        if (at.State == DriveState.Tripped && !tripped)
        {
            if (at.Trip == TripCause.BusTimeout)
            {
                events.Add(new(at.TimeS, TraceEventKind.BusLost));
            }

            events.Add(new(at.TimeS, TraceEventKind.Trip));
        }

        tripped = at.State == DriveState.Tripped;
    }

    private void Motion(in DriveReadings at)
    {
        var still = Standstill.At(at.SpeedRpm, motor);
        moving |= !still;
        Standing = still && at.State is DriveState.Stopped or DriveState.Tripped or DriveState.Unpowered;
        if (moving && Standing)
        {
            events.Add(new(at.TimeS, TraceEventKind.Standstill));
            moving = false;
        }
    }
}
