using FsCheck;
using FsCheck.Xunit;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Tests.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Mechanics;

public sealed class AccelerationTests
{
    private static readonly ElectricalFrequency Full = ElectricalFrequency.FromHertz(50);

    private static double Unit(NormalFloat value) => Math.Abs(value.Get) % 1;

    private static Acceleration.Reached Reached(DrivenMachine machine, double limit) =>
        Acceleration.Of(machine, MotorOnDriveTests.Pump(limit), Full).ShouldBeOfType<Acceleration.Reached>();

    [Fact]
    public void The_example_of_the_page()
    {
        // docs/calculations/acceleration.md.
        var answer = Reached(Machines.Pump, 18.7);
        answer.Shortest.Seconds.ShouldBe(0.529, 0.001);
        answer.ShortestRamp.Seconds.ShouldBe(1.153, 0.001);
        answer.Speed.Rpm.ShouldBe(1465.4, 0.05);
    }

    [Fact]
    public void Inertia_alone_lies_between_the_closed_forms_of_the_least_and_the_most_torque()
    {
        var machine = Machines.Flywheel(2);
        var motor = MotorOnDriveTests.Pump(20);
        var answer = Reached(machine, 20);
        var torques = Enumerable.Range(1, 100).Select(i => motor.LargestTorque(ShaftSpeed.FromRpm(answer.Speed.Rpm * i / 100)).Torque.NewtonMetres).ToList();
        var momentum = machine.TotalInertia.KilogramSquareMetres * answer.Speed.RadiansPerSecond;
        answer.Shortest.Seconds.ShouldBeInRange(momentum / torques.Max(), momentum / torques.Min());
        answer.Shortest.Seconds.ShouldBe(momentum / torques.Average(), 0.01 * answer.Shortest.Seconds);
    }

    [Fact]
    public void A_gear_divides_torque_and_the_square_of_inertia()
    {
        // The same flywheel seen through a lossless gear of 3 as one of a ninth of the inertia.
        var geared = Machines.Flywheel(9) with { GearRatio = 3 };
        Reached(geared, 20).Shortest.Seconds.ShouldBe(Reached(Machines.Flywheel(1), 20).Shortest.Seconds, 1e-9);
    }

    [Fact]
    public void A_gear_that_loses_lengthens_the_run_up()
    {
        var lossy = Machines.Flywheel(9) with { GearRatio = 3, GearEfficiency = Efficiency.FromRatio(0.9) };
        Reached(lossy, 20).Shortest.Seconds.ShouldBeGreaterThan(1.08 * Reached(Machines.Flywheel(1), 20).Shortest.Seconds);
    }

    [Property(MaxTest = 60)]
    public void More_current_never_lengthens_the_run_up(NormalFloat inertia, NormalFloat load, NormalFloat limit, NormalFloat more)
    {
        var machine = Machines.Constant(45 * Unit(load)) with { MachineInertia = Inertia.FromKilogramSquareMetres(0.01 + (3 * Unit(inertia))) };
        var amperes = 5 + (40 * Unit(limit));
        var little = Acceleration.Of(machine, MotorOnDriveTests.Pump(amperes), Full);
        var much = Acceleration.Of(machine, MotorOnDriveTests.Pump(amperes * (1 + (0.5 * Unit(more)))), Full);
        switch (little, much)
        {
            case (Acceleration.Reached less, Acceleration.Reached greater):
                greater.Shortest.Seconds.ShouldBeLessThanOrEqualTo(less.Shortest.Seconds * (1 + 1e-9));
                greater.ShortestRamp.Seconds.ShouldBeLessThanOrEqualTo(less.ShortestRamp.Seconds * (1 + 1e-9));
                break;
            case (Acceleration.Reached, Acceleration.Stalls):
                Assert.Fail("More current stalled a machine that less current brought up.");
                break;
        }
    }

    [Fact]
    public void A_load_that_will_not_break_away_stalls_at_standstill()
    {
        var machine = Machines.Pump with { Breakaway = Torque.FromNewtonMetres(150) };
        var stall = Acceleration.Of(machine, MotorOnDriveTests.Pump(20), Full).ShouldBeOfType<Acceleration.Stalls>();
        stall.At.Rpm.ShouldBe(0);
        stall.Needed.NewtonMetres.ShouldBe(150, 1e-9);
        stall.Available.NewtonMetres.ShouldBeLessThan(150);
    }

    [Fact]
    public void A_load_that_outgrows_the_current_limit_stalls_on_the_way()
    {
        var stall = Acceleration.Of(Machines.Pump, MotorOnDriveTests.Pump(9), Full).ShouldBeOfType<Acceleration.Stalls>();
        stall.At.Rpm.ShouldBeInRange(900, 1450);
    }

    [Fact]
    public void Far_above_base_frequency_the_motor_does_not_reach_the_speed() =>
        Acceleration.Of(Machines.Constant(45), MotorOnDriveTests.Pump(100), ElectricalFrequency.FromHertz(200)).ShouldBeOfType<Acceleration.Stalls>();
}
