using Runup.Dynamics.Batch;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Motors;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Batch;

public sealed class EnsembleRehearsalTests
{
    private static readonly ControlSettings QuickStop = ByPlate with { Acceleration = Seconds(1), Deceleration = Seconds(0.5), SlipCompensation = Fraction.FromRatio(0.5) };

    private static EnsembleRehearsal StartAndStop(IReadOnlyList<EquivalentCircuit> motors) => new()
    {
        System = PumpSet,
        Motors = motors,
        Settings = QuickStop,
        Orders = [new(0, Forward(50)), new(2, Stop())],
        Length = Seconds(5),
    };

    private static List<EquivalentCircuit> Motors(int count) =>
        [.. Enumerable.Range(0, count).Select(i => Motor with { RotorResistance = Resistance.FromOhms(0.46 * (0.8 + (0.4 * i / count))) })];

    [Fact]
    public void Every_member_does_what_it_does_alone()
    {
        var motors = Motors(11);
        var together = StartAndStop(motors).Run();

        foreach (var number in new[] { 0, 5, 7, 8, 10 })
        {
            var alone = StartAndStop([motors[number]]).Run().Members[0];
            var drive = new DriveSimulation(PumpSet with { Motor = motors[number] }, QuickStop) { Order = Forward(50) };
            var peakA = 0.0;
            for (var tick = 1; tick <= 5000; tick++)
            {
                drive.Order = tick <= 2000 ? Forward(50) : Stop();
                drive.Tick();
                peakA = Math.Max(peakA, drive.LargestCurrentA);
            }

            var member = together.Members[number];
            member.PeakCurrentA.ShouldBe(peakA, 1e-9 * peakA);
            member.PeakCurrentA.ShouldBe(alone.PeakCurrentA, 1e-9 * peakA);
            member.TimeToSpeedS.ShouldNotBeNull().ShouldBe(alone.TimeToSpeedS.ShouldNotBeNull(), 1e-9);
            member.TimeToStopS.ShouldNotBeNull().ShouldBe(alone.TimeToStopS.ShouldNotBeNull(), 1e-9);
            member.PeakDcBusV.ShouldBe(alone.PeakDcBusV, 1e-9 * alone.PeakDcBusV);
        }
    }

    [Fact]
    public void Four_lanes_eight_lanes_and_one_tell_the_same()
    {
        var rehearsal = StartAndStop(Motors(9));

        var eight = new EnsembleRun<Eight>(rehearsal, new ParallelOptions(), null).Result();
        var four = new EnsembleRun<Four>(rehearsal, new ParallelOptions(), null).Result();
        var one = new EnsembleRun<One>(rehearsal, new ParallelOptions(), null).Result();

        four.Members.ShouldBe(eight.Members);
        one.Members.ShouldBe(eight.Members);
        one.Trace.SpeedRpm.ShouldBe(eight.Trace.SpeedRpm);
    }

    [Fact]
    public void The_number_of_processors_does_not_change_a_digit()
    {
        var rehearsal = StartAndStop(Motors(40));

        var single = rehearsal.Run(atMostThreads: 1);
        var all = rehearsal.Run();

        all.Members.ShouldBe(single.Members);
        all.Trace.CurrentA.ShouldBe(single.Trace.CurrentA);
    }

    [Fact]
    public void A_member_that_trips_leaves_its_neighbours_running()
    {
        var motors = Motors(8);

        // A motor of a fiftieth of the impedance takes more current than the drive bears.
        motors[3] = Motor with
        {
            StatorResistance = Resistance.FromOhms(0.42 / 50),
            StatorLeakage = Reactance.FromOhms(0.95 / 50),
            Magnetizing = Reactance.FromOhms(34 / 50.0),
            RotorLeakage = Reactance.FromOhms(1.25 / 50),
            RotorResistance = Resistance.FromOhms(0.46 / 50),
        };

        var result = StartAndStop(motors).Run();

        result.Members[3].Tripped.ShouldNotBeNull();
        result.Members.Where((_, i) => i != 3).ShouldAllBe(m => m.Tripped == null && m.TimeToStopS != null);
        result.BandOf(m => m.PeakCurrentA).ShouldNotBeNull().P50.ShouldBeGreaterThan(5);
    }

    [Fact]
    public void A_tick_of_a_group_allocates_nothing()
    {
        // Once before the count, since a first call may make what stays for all later ones.
        Allocated();

        Allocated().ShouldBe(0);

        long Allocated()
        {
            var group = new DriveGroup<Eight>(PumpSet, QuickStop, Motors(8), [Pump]);
            var order = Forward(50);
            group.Tick(order);
            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var i = 0; i < 500; i++)
            {
                group.Tick(order);
            }

            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    public void A_set_that_cannot_be_simulated_is_refused_before_the_run() =>
        Should.Throw<ArgumentException>(() => StartAndStop([Motor with { RotorLeakage = default }]).Run()).Message.ShouldContain("rotor leakage");
}
