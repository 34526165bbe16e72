using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Tests.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Mechanics;

public sealed class DecelerationTests
{
    private static readonly ElectricalFrequency Full = ElectricalFrequency.FromHertz(50);
    private static readonly ElectricalPower DriveLoss = ElectricalPower.FromWatts(75);
    private static readonly DcVoltage Chopper = DcVoltage.FromVolts(760);

    private static double OnLosses(DrivenMachine machine, double limit = 25) =>
        Deceleration.OnLosses(machine, MotorOnDriveTests.Pump(limit), Full, DriveLoss).ShouldBeOfType<Deceleration.Stops>().Shortest.Seconds;

    private static double OnResistor(DrivenMachine machine, double ohms, double limit = 25) =>
        Deceleration.OnResistor(machine, MotorOnDriveTests.Pump(limit), Full, DriveLoss, Chopper, Resistance.FromOhms(ohms))
            .ShouldBeOfType<Deceleration.Stops>().Shortest.Seconds;

    [Fact]
    public void The_example_of_the_page()
    {
        // docs/calculations/acceleration.md.
        OnLosses(Machines.Flywheel(2)).ShouldBe(78.82, 0.05);
        OnResistor(Machines.Flywheel(2), 70).ShouldBe(3.58, 0.01);
    }

    [Fact]
    public void A_flywheel_on_losses_alone_takes_about_its_energy_over_the_losses()
    {
        // Core 233 W, copper 100 W and friction 63 W at full speed without load, 75 W of the drive: 471 W; copper and drive (175 W) remain at the lowest speed.
        var energy = 0.5 * 2 * 157 * 157;
        OnLosses(Machines.Flywheel(2)).ShouldBeInRange(energy / 471, energy / 175);
    }

    [Fact]
    public void The_load_helps() => OnLosses(Machines.Pump).ShouldBeLessThan(OnLosses(Machines.Pump with { Load = Machines.Flywheel(1).Load }));

    [Fact]
    public void A_resistor_shortens_the_stop_and_a_smaller_one_more()
    {
        var machine = Machines.Flywheel(2);
        OnResistor(machine, 200).ShouldBeLessThan(OnLosses(machine));
        OnResistor(machine, 70).ShouldBeLessThan(OnResistor(machine, 200));
        OnResistor(machine, 1e9).ShouldBe(OnLosses(machine), 1e-3);
    }

    [Fact]
    public void With_a_very_small_resistor_the_current_limit_decides()
    {
        var machine = Machines.Flywheel(2);
        OnResistor(machine, 1).ShouldBe(OnResistor(machine, 2), 1e-6);
        OnResistor(machine, 1, limit: 15).ShouldBeGreaterThan(OnResistor(machine, 1, limit: 25));
    }

    [Fact]
    public void An_overhauling_load_gets_away_without_resistor_and_is_held_with_one()
    {
        var hoist = Machines.Constant(-20) with { GearEfficiencyBack = Efficiency.FromRatio(0.9) };
        Deceleration.OnLosses(hoist, MotorOnDriveTests.Pump(25), Full, DriveLoss).ShouldBeOfType<Deceleration.GetsAway>();
        OnResistor(hoist, 60).ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_machine_that_is_too_heavy_for_the_motor_never_ran() =>
        Deceleration.OnLosses(Machines.Constant(400), MotorOnDriveTests.Pump(25), Full, DriveLoss).ShouldBeOfType<Deceleration.NeverRan>();
}
