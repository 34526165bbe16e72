using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

public sealed class CurrentLimitTests
{
    private static readonly DriveSystem Heavy = PumpSet with
    {
        Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1.5), Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(10), ShaftSpeed.FromRpm(1460)) },
    };

    private static readonly ControlSettings Fast = ByPlate with { Acceleration = Seconds(1), Deceleration = Seconds(1) };

    [Fact]
    public void Holds_the_current_at_its_value_and_stretches_the_ramp()
    {
        var drive = new DriveSimulation(Heavy, Fast) { Order = Forward(50) };
        drive.Run(1);

        List<DriveReadings> limited = [];
        while (!drive.AtTarget && drive.Readings.TimeS < 10)
        {
            drive.Tick();
            limited.Add(drive.Readings);
        }

        drive.Readings.TimeS.ShouldBeInRange(2.5, 4.5);
        var held = limited.Where(r => r.CurrentLimitActive && r.TimeS > 1.5 && r.OutputFrequencyHz < 49).ToList();
        held.Count.ShouldBeGreaterThan(1000);
        held.Average(r => r.OutputCurrentA).ShouldBe(21.6, 0.02 * 21.6);
        held.Max(r => r.OutputCurrentA).ShouldBeLessThan(1.1 * 21.6);
    }

    [Fact]
    public void A_start_that_needs_less_never_meets_it()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Acceleration = Seconds(8) }) { Order = Forward(50) };
        var seen = false;

        for (var i = 0; i < 9000; i++)
        {
            drive.Tick();
            seen |= drive.Readings.CurrentLimitActive;
        }

        seen.ShouldBeFalse();
    }

    [Fact]
    public void A_blocked_rotor_draws_the_limit_and_no_more()
    {
        var blocked = PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(5000) } };
        var drive = new DriveSimulation(blocked, ByPlate) { Order = Forward(50) };

        var at = drive.Run(5);

        at.SpeedRpm.ShouldBe(0);
        at.CurrentLimitActive.ShouldBeTrue();
        at.OutputCurrentA.ShouldBe(21.6, 0.02 * 21.6);
        at.OutputFrequencyHz.ShouldBeLessThan(5);
    }

    [Fact]
    public void More_load_than_the_limit_allows_brings_the_frequency_down_and_not_a_trip()
    {
        // A quadratic load of 90 N·m at 1460 rpm needs some 25 A there; the limit is 16 A.
        var load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(90), ShaftSpeed.FromRpm(1460));
        var drive = new DriveSimulation(PumpSet with { Machine = Pump with { Load = load } }, ByPlate with { CurrentLimit = LineCurrent.FromAmperes(16) })
        {
            Order = Forward(50),
        };

        var at = drive.Run(15);

        at.State.ShouldBe(DriveState.Running);
        at.OutputFrequencyHz.ShouldBeInRange(30, 48);
        at.OutputCurrentA.ShouldBe(16, 0.02 * 16);
    }

    [Fact]
    public void Too_much_boost_is_taken_back()
    {
        // 12 % of 400 V on 0.42 Ω would be 66 A.
        var drive = new DriveSimulation(
            PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(5000) } },
            ByPlate with { TorqueBoost = Fraction.FromPercent(12), Acceleration = Seconds(20) })
        {
            Order = Forward(50),
        };

        var at = drive.Run(3);

        at.State.ShouldBe(DriveState.Running);
        at.OutputCurrentA.ShouldBeLessThan(1.2 * 21.6);
    }
}
