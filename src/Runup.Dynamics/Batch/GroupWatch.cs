using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Batch;

/// <summary>What a group of members was seen to do: peaks, and when each came to speed and to rest.</summary>
internal sealed class GroupWatch<T>
    where T : struct, ILanes<T>
{
    private readonly T perSynchronous;
    private readonly T stillRadPerS;
    private T startedS;
    private T stoppedS;
    private T atSpeedS = T.Of(double.NaN);
    private T standingS = T.Of(double.NaN);
    private T running;
    private T stopping;
    private T peakA;
    private T peakV;

    internal GroupWatch(IReadOnlyList<EquivalentCircuit> motors)
    {
        perSynchronous = LaneSet.From<T, EquivalentCircuit>(motors, m => m.Poles.Pairs / (2 * Math.PI));
        stillRadPerS = LaneSet.From<T, EquivalentCircuit>(motors, m => Standstill.Share * m.RatedFrequency.SynchronousSpeed(m.Poles).RadiansPerSecond);
    }

    internal void Ordered(in DriveOrder order, double timeS)
    {
        var every = LaneSet.Every<T>();
        if (order.Run)
        {
            startedS = T.Of(timeS);
            (running, stopping) = (every, default);
        }
        else
        {
            stoppedS = T.Of(timeS);
            (running, stopping) = (default, every);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Look(DriveGroup<T> group, double timeS)
    {
        ref readonly var at = ref group.Reading;
        peakA = T.Max(at.LargestCurrentA, peakA);
        peakV = T.Max(at.LargestBusV, peakV);
        if (T.Any(running))
        {
            var near = T.Not(T.Less(
                T.Abs(at.SpeedRadPerS) * perSynchronous, EventWatch.NearSynchronous * T.Abs(group.FrequencyHz)));
            var arrived = T.And(running, T.And(group.AtTarget, near));
            atSpeedS = T.Choose(arrived, T.Of(timeS) - startedS, atSpeedS);
            running = T.And(running, T.Not(arrived));
        }

        if (T.Any(stopping))
        {
            var still = T.And(T.Not(group.OutputOn), T.Not(T.Less(stillRadPerS, T.Abs(at.SpeedRadPerS))));
            var stands = T.And(stopping, still);
            standingS = T.Choose(stands, T.Of(timeS) - stoppedS, standingS);
            stopping = T.And(stopping, T.Not(stands));
        }
    }

    internal MemberResult Result(DriveGroup<T> group, int lane) => new(
        peakA[lane],
        peakV[lane],
        double.IsNaN(atSpeedS[lane]) ? null : atSpeedS[lane],
        double.IsNaN(standingS[lane]) ? null : standingS[lane],
        group.RanAway.IsSet(lane) || group.Of(lane).State != DriveState.Tripped ? null : group.Of(lane).Trip,
        group.RanAway.IsSet(lane));
}
