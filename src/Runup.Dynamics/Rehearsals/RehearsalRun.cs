using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>One run of a rehearsal's script: the drive, its trace and what has been seen so far.</summary>
internal sealed class RehearsalRun
{
    private const int TicksBetweenReports = 256;
    private const int TicksInMean = 200;

    private readonly DriveSimulation drive;
    private readonly Trace trace = new();
    private readonly List<TimedOrder> orders = [];
    private readonly EventWatch watch;
    private readonly IProgress<double>? progress;
    private readonly CancellationToken cancellation;
    private readonly int ticksPerSample;
    private readonly double likelyS;
    private readonly double upS;
    private readonly double downS;
    private long ticks;
    private double plannedS;
    private readonly SlidingMean means = new(TicksInMean);
    private double peakA;
    private double peakAtS;
    private double peakV;
    private double lowestV;
    private double? atSpeedA;
    private TripCause? tripped;

    internal RehearsalRun(Rehearsal rehearsal, IProgress<double>? progress, CancellationToken cancellation)
    {
        this.progress = progress;
        this.cancellation = cancellation;
        drive = new DriveSimulation(rehearsal.System, rehearsal.Settings);
        watch = new EventWatch(rehearsal.System.Motor);
        ticksPerSample = Math.Max(1, (int)Math.Round(rehearsal.SampleEvery.Seconds / DriveSimulation.TickSeconds));
        (upS, downS) = (rehearsal.Settings.Acceleration.Seconds, rehearsal.Settings.Deceleration.Seconds + Rehearsal.HeldAtZero.Seconds);
        likelyS = rehearsal.Script.Sum(LikelyS);
        peakV = lowestV = drive.Readings.DcBusV;
        trace.Add(drive.Readings);
    }

    private bool Over => drive.Breakdown is not null || drive.Readings.State == DriveState.Tripped;

    internal void Do(ScriptStep step)
    {
        switch (step)
        {
            case ScriptStep.Start start:
                Order(new DriveOrder(Run: true, start.FrequencyHz, StopKind.ByMethod));
                break;
            case ScriptStep.SetFrequency set:
                Order(drive.Order with { FrequencyHz = set.FrequencyHz });
                break;
            case ScriptStep.Stop stop:
                atSpeedA ??= watch.AtSpeed ? drive.Readings.OutputCurrentA : null;
                Order(drive.Order with { Run = false, Stop = stop.How });
                break;
            case ScriptStep.SupplyGap gap:
                drive.SupplyPresent = false;
                // What comes after a trip belongs to it: a drive that has lost all power may start by itself when it is back.
                Pass(step, gap.Length.Seconds, () => drive.Breakdown is not null);
                drive.SupplyPresent = true;
                break;
            case ScriptStep.Wait wait:
                Pass(step, wait.Length.Seconds, () => Over);
                break;
            case ScriptStep.UntilAtSpeed until:
                Pass(step, until.AtMost.Seconds, () => Over || watch.AtSpeed);
                break;
            case ScriptStep.UntilStandstill until:
                Pass(step, until.AtMost.Seconds, () => Over || watch.Standing);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(step), step, "A step of no known kind.");
        }

        plannedS += LikelyS(step);
    }

    internal void PassAfterTrip(double lengthS)
    {
        if (drive.Readings.State == DriveState.Tripped)
        {
            Pass(null, lengthS, () => drive.Breakdown is not null);
        }

        progress?.Report(1);
    }

    internal RehearsalResult Result()
    {
        return new RehearsalResult
        {
            Trace = trace,
            Events = watch.Events,
            Orders = orders,
            PeakCurrentA = peakA,
            PeakCurrentAtS = peakAtS,
            LargestMeanCurrentA = means.Largest,
            PeakDcBusV = peakV,
            TimeToSpeedS = Between(TraceEventKind.Start, TraceEventKind.AtSpeed, watch.Events),
            TimeToStopS = Between(TraceEventKind.Stop, TraceEventKind.Standstill, watch.Events.SkipWhile((_, i) => i < LastStop())),
            LowestDcBusV = lowestV,
            CurrentAtSpeedA = atSpeedA,
            Tripped = drive.Breakdown is null ? tripped : null,
            Breakdown = drive.Breakdown,
        };
    }

    /// <summary>About how long a step takes, for the time left: ramps as set, though limits may stretch them.</summary>
    private double LikelyS(ScriptStep step) => step switch
    {
        ScriptStep.SupplyGap gap => gap.Length.Seconds,
        ScriptStep.Wait wait => wait.Length.Seconds,
        ScriptStep.UntilAtSpeed until => Math.Min(until.AtMost.Seconds, upS),
        ScriptStep.UntilStandstill until => Math.Min(until.AtMost.Seconds, downS),
        _ => 0,
    };

    private static double? Between(TraceEventKind from, TraceEventKind to, IEnumerable<TraceEvent> events)
    {
        var rest = events.SkipWhile(e => e.What != from).ToList();
        var end = rest.Find(e => e.What == to);
        return rest.Count > 0 && end != default ? end.TimeS - rest[0].TimeS : null;
    }

    private int LastStop() => watch.Events.ToList().FindLastIndex(e => e.What == TraceEventKind.Stop);

    // At least one tick, so that an order given just before is seen.
    private void Pass(ScriptStep? step, double lengthS, Func<bool> ended)
    {
        var likely = step is null ? 0 : LikelyS(step);
        var last = Math.Max(1, (long)Math.Round(lengthS / DriveSimulation.TickSeconds));
        for (var i = 0L; i < last; i++)
        {
            Tick();
            if (ended())
            {
                return;
            }

            if (ticks % TicksBetweenReports == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                progress?.Report(Math.Min(1, (plannedS + Math.Min(likely, i * DriveSimulation.TickSeconds)) / likelyS));
            }
        }
    }

    private void Order(DriveOrder order)
    {
        drive.Order = order;
        orders.Add(new TimedOrder(ticks * DriveSimulation.TickSeconds, order));
    }

    private void Tick()
    {
        drive.Tick();
        ticks++;
        if (drive.Breakdown is not null)
        {
            return;
        }

        watch.Look(drive);
        means.Add(drive.Readings.OutputCurrentA);
        if (drive.LargestCurrentA > peakA)
        {
            (peakA, peakAtS) = (drive.LargestCurrentA, ticks * DriveSimulation.TickSeconds);
        }

        peakV = Math.Max(peakV, drive.LargestDcBusV);
        lowestV = Math.Min(lowestV, drive.Readings.DcBusV);
        tripped ??= drive.Readings.State == DriveState.Tripped ? drive.Readings.Trip : null;
        if (ticks % ticksPerSample == 0)
        {
            trace.Add(drive.Readings);
        }
    }
}
