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

    [Fact]
    public void A_gap_is_as_long_as_was_asked_for_whether_or_not_the_drive_trips_in_it()
    {
        var result = Run(ByPlate, 0.7);

        result.Tripped.ShouldBe(TripCause.Undervoltage);
        (At(result, TraceEventKind.SupplyBack) - At(result, TraceEventKind.SupplyLost)).ShouldBe(0.7, 0.002);
        result.LowestDcBusV.ShouldBeLessThan(Drive.UndervoltageTrip.Volts);
    }

    [Fact]
    public void A_drive_that_may_restart_after_power_loss_starts_by_itself_once_it_was_dead()
    {
        var restarting = Run(ByPlate with { RestartAfterPowerLoss = true }, 30);

        restarting.Tripped.ShouldBe(TripCause.Undervoltage);
        restarting.Events.Last(e => e.What == TraceEventKind.Start).TimeS.ShouldBeGreaterThan(At(restarting, TraceEventKind.SupplyBack));
        Run(ByPlate, 30).Events.Count(e => e.What == TraceEventKind.Start).ShouldBe(1);
    }

    /// <summary>The charge of a bus ends at the peak of the line voltage: 400 V·√2.</summary>
    [Fact]
    public void A_stiff_supply_that_comes_back_charges_a_small_bus_to_its_peak_and_not_beyond()
    {
        var stiff = PumpSet with
        {
            Drive = PumpSet.Drive with { BusCapacitance = Capacitance.FromFarads(75e-6), DcChoke = default },
            SupplyReactance = Reactance.FromOhms(0.01),
        };
        var drive = new DriveSimulation(stiff, ByPlate);
        drive.Run(0.1);
        drive.SupplyPresent = false;
        while (drive.Readings.DcBusV > 450)
        {
            drive.Tick();
        }

        drive.SupplyPresent = true;
        var highestV = 0.0;
        for (var i = 0; i < 100; i++)
        {
            drive.Tick();
            highestV = Math.Max(highestV, drive.LargestDcBusV);
        }

        highestV.ShouldBeInRange(540, Math.Sqrt(2) * 400 * 1.001);
    }

    private static double At(RehearsalResult result, TraceEventKind what) => result.Events.First(e => e.What == what).TimeS;

    private static IEnumerable<TraceEventKind> Kinds(RehearsalResult result) =>
        result.Events.Select(e => e.What).Where(k => k is not (TraceEventKind.CurrentLimit or TraceEventKind.OvervoltageControl)).Distinct();

    private static RehearsalResult Run(ControlSettings settings, double? gapS) => new Rehearsal
    {
        System = PumpSet with { Machine = Pump with { Load = new Engineering.Loads.LoadCurve.Quadratic(Torque.FromNewtonMetres(30), ShaftSpeed.FromRpm(1460)), MachineInertia = Inertia.FromKilogramSquareMetres(1) } },
        Settings = settings with { Acceleration = Seconds(8), Deceleration = Seconds(12) },
        Script = Rehearsal.StartAndStop(50, Seconds(2), Seconds(40), gapS is { } gap ? Seconds(gap) : null),
    }.Run().ShouldBeOfType<RehearsalOutcome.Ran>().Result;
}
