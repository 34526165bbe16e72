using Runup.Engineering.Loads;
using Runup.Engineering.Tests.Mechanics;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Loads;

public sealed class DrivenMachineTests
{
    private static readonly DrivenMachine Hoist = Machines.Pump with
    {
        Load = new LoadCurve.Hoisting(Torque.FromNewtonMetres(100)),
        GearRatio = 10,
        GearEfficiency = Efficiency.FromRatio(0.8),
        GearEfficiencyBack = Efficiency.FromRatio(0.7),
        Breakaway = null,
    };

    [Theory]
    [InlineData(1000, 12.5)]
    [InlineData(0, 12.5)]
    [InlineData(-1000, 7)]
    public void A_gear_that_loses_asks_more_of_the_motor_lifting_than_it_gets_back_lowering(double rpm, double atMotor_Nm) =>
        Hoist.LoadTorque(ShaftSpeed.FromRpm(rpm)).NewtonMetres.ShouldBe(atMotor_Nm, 1e-9);

    [Fact]
    public void Lowering_is_lifting_the_other_way_round() =>
        Hoist.Reversed.LoadTorque(ShaftSpeed.FromRpm(1000)).NewtonMetres.ShouldBe(-7, 1e-9);

    [Theory]
    [InlineData(null, 7, 12.5)]
    [InlineData(130.0, 4.9, 16.25)]
    [InlineData(50.0, 7, 12.5)]
    public void At_rest_a_hoist_is_held_between_weight_and_friction_each_through_the_gear(double? breakaway, double lowest, double highest)
    {
        // 130 N·m to set it in motion upwards are 30 N·m of friction beside 100 N·m of weight: downwards 70 N·m pull.
        var machine = Hoist with { Breakaway = breakaway is { } torque ? Torque.FromNewtonMetres(torque) : null };

        machine.HeldBetween.Lowest.NewtonMetres.ShouldBe(lowest, 1e-9);
        machine.HeldBetween.Highest.NewtonMetres.ShouldBe(highest, 1e-9);
    }

    [Fact]
    public void Friction_holds_alike_in_both_directions()
    {
        var (lowest, highest) = Machines.Pump.HeldBetween;

        (lowest.NewtonMetres, highest.NewtonMetres).ShouldBe((-8, 8));
    }

    [Fact]
    public void A_gear_that_locks_itself_gives_nothing_back()
    {
        var worm = Hoist with { GearEfficiencyBack = Efficiency.FromRatio(0) };

        worm.LoadTorque(ShaftSpeed.FromRpm(-1000)).NewtonMetres.ShouldBe(0);
        worm.HeldBetween.Lowest.NewtonMetres.ShouldBe(0);
    }

    [Fact]
    public void Two_motors_with_a_machine_each_are_one_of_twice_the_inertia_load_and_breakaway()
    {
        var two = Machines.Pump.Times(2);

        two.TotalInertia.KilogramSquareMetres.ShouldBe(2 * Machines.Pump.TotalInertia.KilogramSquareMetres, 1e-12);
        two.LoadTorque(ShaftSpeed.FromRpm(1000)).NewtonMetres.ShouldBe(2 * Machines.Pump.LoadTorque(ShaftSpeed.FromRpm(1000)).NewtonMetres, 1e-12);
        two.BreakawayAtMotor.NewtonMetres.ShouldBe(16, 1e-12);
    }
}
