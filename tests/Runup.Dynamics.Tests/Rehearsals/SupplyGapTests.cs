using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Rehearsals;

public sealed class SupplyGapTests
{
    [Fact]
    public void A_gap_is_among_the_events_and_ends_as_the_settings_say()
    {
        var without = Run(ByPlate, 0.3);
        var with = Run(ByPlate with { UndervoltageRideThrough = true }, 0.1);

        without.Tripped.ShouldBe(TripCause.Undervoltage);
        Kinds(without).ShouldContain(TraceEventKind.SupplyLost);
        with.Tripped.ShouldBeNull();
        Kinds(with).ShouldBe(
            [TraceEventKind.Start, TraceEventKind.AtSpeed, TraceEventKind.SupplyLost, TraceEventKind.RideThrough, TraceEventKind.SupplyBack, TraceEventKind.Stop, TraceEventKind.Standstill],
            ignoreOrder: true);
    }

    [Fact]
    public void The_moment_of_the_highest_current_and_the_highest_over_a_fifth_of_a_second_are_told()
    {
        var result = Run(ByPlate, null);

        result.LargestMeanCurrentA.ShouldBeLessThanOrEqualTo(result.PeakCurrentA);
        result.LargestMeanCurrentA.ShouldBeGreaterThan(10);
        result.PeakCurrentAtS.ShouldBeInRange(0.001, 20);
    }

    private static IEnumerable<TraceEventKind> Kinds(RehearsalResult result) =>
        result.Events.Select(e => e.What).Where(k => k is not (TraceEventKind.CurrentLimit or TraceEventKind.OvervoltageControl)).Distinct();

    private static RehearsalResult Run(ControlSettings settings, double? gapS) => new Rehearsal
    {
        System = PumpSet with { Machine = Pump with { Load = new Engineering.Loads.LoadCurve.Quadratic(Torque.FromNewtonMetres(30), ShaftSpeed.FromRpm(1460)), MachineInertia = Inertia.FromKilogramSquareMetres(1) } },
        Settings = settings with { Acceleration = Seconds(8), Deceleration = Seconds(12) },
        Script = Rehearsal.StartAndStop(50, Seconds(2), Seconds(40), gapS is { } gap ? Seconds(gap) : null),
    }.Run().ShouldBeOfType<RehearsalOutcome.Ran>().Result;
}
