using Runup.Engineering.Braking;
using Runup.Engineering.Loads;
using Runup.Engineering.Tests.Drives;
using Runup.Engineering.Tests.Mechanics;
using Runup.Engineering.Tests.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Braking;

public sealed class BrakingDemandTests
{
    private static readonly ElectricalFrequency Full = ElectricalFrequency.FromHertz(50);

    private static BrakingDemand Of(DrivenMachine machine, double seconds, double driveLoss = 75) =>
        BrakingDemand.Of(machine, MotorOnDriveTests.Pump(25), Full, Duration.FromSeconds(seconds), ElectricalPower.FromWatts(driveLoss)).ShouldNotBeNull();

    [Fact]
    public void The_example_of_the_page()
    {
        // docs/calculations/braking.md.
        var demand = Of(Machines.Flywheel(2), 10);
        demand.KineticEnergy.Joules.ShouldBe(24_661, 1);
        demand.InertiaPeak.Watts.ShouldBe(4_932, 1);
        demand.Peak.Watts.ShouldBe(4_235, 1);
        demand.Energy.Joules.ShouldBe(20_021, 10);
        demand.Mean.Watts.ShouldBe(demand.Energy.Joules / 10, 1e-9);
    }

    [Fact]
    public void Without_losses_all_of_the_kinetic_energy_comes_back()
    {
        // A motor of 1 mΩ resistances and no core or friction loss.
        var lossless = Circuits.Make(400, 50, 4, 0.001, 1.05, 33, 1.55, 0.001);
        var motor = MotorOnDriveTests.Pump(25) with { Circuit = lossless };
        var demand = BrakingDemand.Of(Machines.Flywheel(2), motor, Full, Duration.FromSeconds(10), ElectricalPower.FromWatts(0)).ShouldNotBeNull();
        demand.Energy.Joules.ShouldBe(demand.KineticEnergy.Joules, 2.5e-3 * demand.KineticEnergy.Joules); // below twice the rated slip speed nothing is counted
        demand.Peak.Watts.ShouldBe(demand.InertiaPeak.Watts, 1e-3 * demand.InertiaPeak.Watts);
    }

    [Fact]
    public void Load_and_losses_take_their_share()
    {
        var bare = Of(Machines.Flywheel(2), 10);
        var loaded = Of(Machines.Flywheel(2) with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(10)) }, 10);
        loaded.Energy.Joules.ShouldBeLessThan(bare.Energy.Joules);
        bare.Energy.Joules.ShouldBeLessThan(bare.KineticEnergy.Joules);
        Of(Machines.Flywheel(2), 10, driveLoss: 300).Energy.Joules.ShouldBeLessThan(bare.Energy.Joules);
    }

    [Fact]
    public void A_slow_stop_of_a_pump_brings_nothing_back()
    {
        var demand = Of(Machines.Pump, 60);
        demand.Energy.Joules.ShouldBe(0);
        demand.Peak.Watts.ShouldBe(0);
        demand.InertiaPeak.Watts.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_stop_that_the_motor_cannot_make_is_said()
    {
        var demand = Of(Machines.Flywheel(50), 10);
        demand.WithinMotor.ShouldBeFalse();
        demand.Peak.Watts.ShouldBeLessThanOrEqualTo(demand.InertiaPeak.Watts);
    }

    [Fact]
    public void The_gear_takes_its_share_on_the_way_back()
    {
        var geared = Machines.Flywheel(18) with { GearRatio = 3, GearEfficiencyBack = Efficiency.FromRatio(0.9) };
        Of(geared, 10).LargestBrakingTorque.NewtonMetres.ShouldBe(0.9 * Of(Machines.Flywheel(2), 10).LargestBrakingTorque.NewtonMetres, 1e-6);
    }

    [Fact]
    public void The_resistor_lies_between_the_choppers_lowest_and_what_takes_the_peak()
    {
        var demand = Of(Machines.Flywheel(2), 10);
        var resistor = BrakingResistor.For(Ratings.SevenAndAHalf, demand);
        resistor.Lowest!.Value.Ohms.ShouldBe(40);
        resistor.Highest!.Value.Ohms.ShouldBe(760 * 760 / demand.Peak.Watts, 1e-9);
        resistor.HighestForInertiaAlone!.Value.Ohms.ShouldBeLessThan(resistor.Highest.Value.Ohms);
        BrakingResistor.MeanPower(Energy.FromJoules(18_000), 2).Watts.ShouldBe(10, 1e-9);
    }

    [Fact]
    public void Where_nothing_comes_back_any_resistor_would_do() =>
        BrakingResistor.For(Ratings.SevenAndAHalf, Of(Machines.Pump, 60)).Highest.ShouldBeNull();
}
