using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;

namespace Runup.Dynamics.Control;

/// <summary>The sequencers of a group of drives, and what they say as lanes.</summary>
internal sealed class SequencerLanes<T>
    where T : struct, ILanes<T>
{
    private readonly GroupClock clock = new();
    private readonly Sequencer[] sequencers;
    private readonly OutputMode[] lastOutput;
    private readonly DriveState[] lastState;
    private DriveOrder lastOrder;
    private T calmAboveHz = T.Of(double.PositiveInfinity);

    internal SequencerLanes(ControlFigures figures)
    {
        sequencers = [.. Enumerable.Range(0, T.Count).Select(_ => new Sequencer(figures, clock))];
        lastOutput = new OutputMode[T.Count];
        lastState = new DriveState[T.Count];
    }

    /// <summary>Set where the output is on.</summary>
    internal T On { get; private set; }

    /// <summary>Set where the voltage goes by the curve.</summary>
    internal T ByCurve { get; private set; }

    /// <summary>Set where direct current brakes.</summary>
    internal T ByDirectCurrent { get; private set; }

    /// <summary>Set where a low voltage looks for a turning motor.</summary>
    internal T Searching { get; private set; }

    /// <summary>Set on the quick-stop ramp.</summary>
    internal T QuickStopping { get; private set; }

    /// <summary>Set where the drive runs, and is not on the way to a stop.</summary>
    internal T Running { get; private set; }

    /// <summary>Set where the output has just changed what it does.</summary>
    internal T Changed { get; private set; }

    /// <summary>Set where it has so changed that the ramp begins at zero.</summary>
    internal T RampRestarts { get; private set; }

    internal bool AnyChanged { get; private set; }

    internal T TargetHz { get; private set; }

    internal T RiseHzPerS { get; private set; }

    internal T FallHzPerS { get; private set; }

    /// <summary>The supply is there.</summary>
    internal bool SupplyPresent { get; set; } = true;

    /// <summary>How the rectifiers are connected; power goes and comes for all drives of a group at once.</summary>
    internal RectifierMode Supply => !sequencers[0].Powered || !SupplyPresent ? RectifierMode.Open
        : sequencers[0].State == DriveState.Unpowered ? RectifierMode.Charging
        : RectifierMode.Conducting;

    internal Sequencer this[int lane] => sequencers[lane];

    internal void Configure(ControlFigures figures) => Array.ForEach(sequencers, s => s.Configure(figures));

    /// <summary>One sample. Where no order is new, nothing came from outside and no ramp is near its end, all sequencers say what they said.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(in DriveOrder order, T rampHz, T busV)
    {
        clock.Pass();
        AnyChanged = false;
        if (clock.Disturbed || order != lastOrder || !T.All(T.Less(calmAboveHz, T.Abs(rampHz))))
        {
            SampleEach(order, rampHz, busV);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void SampleEach(in DriveOrder order, T rampHz, T busV)
    {
        Span<double> targets = stackalloc double[T.Count], rises = stackalloc double[T.Count], falls = stackalloc double[T.Count], ramps = stackalloc double[T.Count], buses = stackalloc double[T.Count], calm = stackalloc double[T.Count];
        rampHz.Store(ramps);
        busV.Store(buses);
        var anyNew = false;
        clock.Disturbed = false;
        lastOrder = order;
        for (var lane = 0; lane < sequencers.Length; lane++)
        {
            var sequencer = sequencers[lane];
            sequencer.Sample(order, ramps[lane], buses[lane]);
            targets[lane] = sequencer.TargetHz;
            rises[lane] = sequencer.RiseHzPerS;
            falls[lane] = sequencer.FallHzPerS;
            calm[lane] = sequencer.CalmAboveHz;
            anyNew |= sequencer.Output != lastOutput[lane] || sequencer.State != lastState[lane];
        }

        TargetHz = T.Load(targets);
        RiseHzPerS = T.Load(rises);
        FallHzPerS = T.Load(falls);
        calmAboveHz = T.Load(calm);
        if (anyNew)
        {
            Note();
        }
    }

    private void Note()
    {
        uint on = 0, curve = 0, direct = 0, search = 0, quick = 0, running = 0, changed = 0, restarts = 0;
        for (var lane = 0; lane < sequencers.Length; lane++)
        {
            var bit = 1u << lane;
            var (output, last) = (sequencers[lane].Output, lastOutput[lane]);
            on |= output != OutputMode.Off ? bit : 0;
            curve |= output == OutputMode.Curve ? bit : 0;
            direct |= output == OutputMode.DirectCurrent ? bit : 0;
            running |= sequencers[lane].State == DriveState.Running ? bit : 0;
            changed |= output != last ? bit : 0;
            search |= output == OutputMode.Search ? bit : 0;
            quick |= sequencers[lane].State == DriveState.QuickStopping ? bit : 0;
            restarts |= output != last && (last == OutputMode.Off || output != OutputMode.Curve) ? bit : 0;
            lastOutput[lane] = output;
            lastState[lane] = sequencers[lane].State;
        }

        AnyChanged = changed != 0;
        (On, ByCurve, ByDirectCurrent) = (LaneSet.Mask<T>(on), LaneSet.Mask<T>(curve), LaneSet.Mask<T>(direct));
        (Searching, QuickStopping) = (LaneSet.Mask<T>(search), LaneSet.Mask<T>(quick));
        (Running, Changed, RampRestarts) = (LaneSet.Mask<T>(running), LaneSet.Mask<T>(changed), LaneSet.Mask<T>(restarts));
    }
}
