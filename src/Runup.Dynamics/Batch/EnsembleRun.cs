using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Batch;

/// <summary>One run of an ensemble: groups of as many members as there are lanes, each group by itself on whichever processor is free.</summary>
internal sealed class EnsembleRun<T>
    where T : struct, ILanes<T>
{
    private const int TicksBetweenLooks = 512;

    private readonly EnsembleRehearsal rehearsal;
    private readonly ParallelOptions options;
    private readonly IProgress<double>? progress;
    private readonly EnsembleSamples samples;
    private readonly MemberResult[] members;
    private readonly int ticks;
    private readonly int ticksPerSample;
    private int ticksDone;

    internal EnsembleRun(EnsembleRehearsal rehearsal, ParallelOptions options, IProgress<double>? progress)
    {
        this.rehearsal = rehearsal;
        this.options = options;
        this.progress = progress;
        ticks = (int)Math.Round(rehearsal.Length.Seconds / DriveSimulation.TickSeconds);
        ticksPerSample = Math.Max(1, (int)Math.Round(rehearsal.SampleEvery.Seconds / DriveSimulation.TickSeconds));
        Groups = (rehearsal.Motors.Count + T.Count - 1) / T.Count;
        samples = new EnsembleSamples((ticks / ticksPerSample) + 1, Groups * T.Count, rehearsal.Motors.Count, ticksPerSample * DriveSimulation.TickSeconds);
        members = new MemberResult[rehearsal.Motors.Count];
    }

    private int Groups { get; }

    internal EnsembleResult Result()
    {
        Parallel.For(0, Groups, options, Run);
        return new EnsembleResult(members, samples.Bands(options));
    }

    private void Run(int number)
    {
        var first = number * T.Count;
        var motors = Enumerable.Range(first, Math.Min(T.Count, members.Length - first)).Select(i => rehearsal.Motors[i]).ToList();
        var group = new DriveGroup<T>(rehearsal.System, rehearsal.Settings, motors, [rehearsal.System.Machine]);
        var watch = new GroupWatch<T>(motors);
        samples.Note(group, first, 0);
        var (order, next) = (default(DriveOrder), 0);
        for (var tick = 1; tick <= ticks; tick++)
        {
            while (next < rehearsal.Orders.Count && rehearsal.Orders[next].AtS < (tick - 0.5) * DriveSimulation.TickSeconds)
            {
                order = rehearsal.Orders[next++].Order;
                watch.Ordered(order, tick * DriveSimulation.TickSeconds);
            }

            group.Tick(order);
            watch.Look(group, tick * DriveSimulation.TickSeconds);
            if (tick % ticksPerSample == 0)
            {
                samples.Note(group, first, tick / ticksPerSample);
            }

            if (tick % TicksBetweenLooks == 0)
            {
                options.CancellationToken.ThrowIfCancellationRequested();
                progress?.Report(Interlocked.Add(ref ticksDone, TicksBetweenLooks) / ((double)ticks * Groups));
            }
        }

        for (var lane = 0; lane < motors.Count; lane++)
        {
            members[first + lane] = watch.Result(group, lane);
        }
    }
}
