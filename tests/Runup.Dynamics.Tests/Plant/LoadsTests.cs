using FsCheck.Xunit;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Plant;

/// <summary>Every load in the time domain against the steady state: two separate pieces of code.</summary>
public sealed class LoadsTests
{
    public static TheoryData<string> Loads => ["constant", "linear", "quadratic", "constant power", "table", "hoisting", "hoisting, lowering", "geared", "overhauling through a gear"];

    [Theory]
    [MemberData(nameof(Loads))]
    public void A_settled_run_on_the_drive_has_the_speed_of_the_steady_state(string load)
    {
        var machine = Named(load);
        var settings = ByPlate with { BrakingChopper = true, OvervoltageControl = false };
        var drive = new DriveSimulation(PumpSet with { Machine = machine, BrakingResistor = Resistance.FromOhms(60) }, settings) { Order = Forward(40) };

        var at = drive.Run(12);

        // The chopper's switching makes the bus swing, which the output follows a sample later: means over 0.2 s.
        var readings = Enumerable.Range(0, 200).Select(_ => drive.Run(DriveSimulation.TickSeconds)).ToList();
        var (torqueNm, currentA) = (readings.Average(r => r.TorqueNm), readings.Average(r => r.OutputCurrentA));

        var curve = new Engineering.Drives.VoltsPerHertz
        {
            BaseFrequency = settings.BaseFrequency,
            MaximumVoltage = settings.MaximumOutputVoltage,
            RatedVoltage = settings.MotorRatedVoltage,
            Boost = settings.TorqueBoost,
        };
        var expected = SteadySpeed.At(machine, Motor, curve, ElectricalFrequency.FromHertz(40));
        at.State.ShouldBe(DriveState.Running, $"{load}: {at.Trip}");
        at.SpeedRpm.ShouldBe(expected!.Speed.Rpm, 0.5, load);
        torqueNm.ShouldBe(expected.DevelopedTorque.NewtonMetres, 0.3, load);
        currentA.ShouldBe(expected.Current.Amperes, 0.01 * expected.Current.Amperes, load);
    }

    [Property(MaxTest = 500)]
    public void The_acceleration_through_a_lossy_gear_is_that_of_the_steady_state_s_equation_of_motion(bool backward, bool weightOnly, byte torque, byte forward, byte back, byte inertia)
    {
        // TorqueFor is Engineering's; what it asks for that acceleration must be the torque that made it.
        var driving_Nm = torque - 128.0;
        var machine = (weightOnly ? Hoist : Pump with { GearRatio = 3 }) with
        {
            GearEfficiency = Efficiency.FromRatio(0.3 + (0.7 * forward / 255)),
            GearEfficiencyBack = Efficiency.FromRatio(back / 255.0),
            MachineInertia = Inertia.FromKilogramSquareMetres(inertia / 20.0),
        };
        var motion = backward ? -1 : 1;
        var shaft = new Shaft<One>([new ShaftLoad(machine, Motor with { FrictionLoss = default })]);
        shaft.Move(0, motion);

        double acceleration = shaft.AccelerationRadPerS2(driving_Nm, 100 * motion);

        machine.TorqueFor(ShaftSpeed.FromRadiansPerSecond(100 * motion), ShaftSpeed.FromRadiansPerSecond(acceleration)).NewtonMetres.ShouldBe(driving_Nm, 1e-4);
    }

    [Fact]
    public void A_hoist_without_a_brake_and_without_output_drops_its_load()
    {
        var at = new DriveSimulation(PumpSet with { Machine = Hoist }, ByPlate).Run(1);

        // Standing gear: the motor's shaft feels the weight times the gear's efficiency when driven.
        at.SpeedRpm.ShouldBeLessThan(-100);
    }

    [Fact]
    public void A_brake_holds_the_load_until_the_output_is_on_and_again_when_the_drive_trips()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Hoist, Brake = Torque.FromNewtonMetres(100) }, ByPlate);
        drive.Run(1).SpeedRpm.ShouldBe(0);

        drive.Order = Forward(20);
        drive.Run(6).SpeedRpm.ShouldBeGreaterThan(500);
        drive.Trip(Runup.Settings.TripCause.External);

        drive.Run(2).SpeedRpm.ShouldBe(0);
    }

    [Fact]
    public void With_a_relay_for_the_brake_the_motor_carries_before_the_brake_opens_and_the_load_does_not_sag()
    {
        var settings = ByPlate with
        {
            TorqueBoost = Fraction.FromPercent(3),
            Brake = new(ElectricalFrequency.FromHertz(1.5), LineCurrent.FromAmperes(8), Duration.FromSeconds(0.3), ElectricalFrequency.FromHertz(1.2)),
        };
        var drive = new DriveSimulation(PumpSet with { Machine = Hoist, Brake = Torque.FromNewtonMetres(100) }, settings) { Order = Forward(20) };
        var (opensAt, lowestRpm) = (0.0, 0.0);
        for (var tick = 1; tick <= 3000; tick++)
        {
            drive.Tick();
            lowestRpm = Math.Min(lowestRpm, drive.Readings.SpeedRpm);
            opensAt = opensAt == 0 && drive.Readings.SpeedRpm != 0 ? drive.Readings.TimeS : opensAt;
        }

        // At 10 Hz a second 1.5 Hz are reached after 0.15 s, and the delay runs from there.
        opensAt.ShouldBeInRange(0.44, 0.6);
        lowestRpm.ShouldBeGreaterThan(-5);
        drive.Readings.SpeedRpm.ShouldBeGreaterThan(500);

        drive.Order = Stop();
        drive.Run(8).SpeedRpm.ShouldBe(0);
    }

    [Fact]
    public void Stiction_holds_the_shaft_until_the_torque_reaches_it()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(40) } }, ByPlate) { Order = Forward(50) };
        var torqueBefore_Nm = 0.0;
        while (drive.Readings.SpeedRpm == 0)
        {
            torqueBefore_Nm = Math.Max(torqueBefore_Nm, drive.Readings.TorqueNm);
            drive.Tick();
        }

        // And the motor's own bearings: half of 60 W at 1460 rpm.
        torqueBefore_Nm.ShouldBeInRange(38, 40 + (30 / (1460 * Math.PI / 30)) + 0.01);
    }

    /// <summary>200 kg on a drum of 0.3 m behind a gear of 12: 24.5 N·m at the motor's shaft before the gear's losses.</summary>
    internal static DrivenMachine Hoist => Pump with
    {
        Load = LoadCurve.Hoisting.Of(Mass.FromKilograms(200), Length.FromMetres(0.3)),
        MachineInertia = Inertia.FromKilogramSquareMetres(200 * 0.15 * 0.15),
        GearRatio = 12,
        GearEfficiency = Efficiency.FromRatio(0.9),
        GearEfficiencyBack = Efficiency.FromRatio(0.85),
        Breakaway = null,
    };

    private static DrivenMachine Named(string load) => load switch
    {
        "constant" => Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(30)) },
        "linear" => Pump with { Load = new LoadCurve.Linear(Torque.FromNewtonMetres(42), ShaftSpeed.FromRpm(1460)) },
        "quadratic" => Pump,
        "constant power" => Pump with { Load = new LoadCurve.ConstantPower(Torque.FromNewtonMetres(40), ShaftSpeed.FromRpm(700)) },
        "table" => Pump with { Load = new LoadCurve.Table([(ShaftSpeed.FromRpm(0), Torque.FromNewtonMetres(20)), (ShaftSpeed.FromRpm(900), Torque.FromNewtonMetres(10)), (ShaftSpeed.FromRpm(1500), Torque.FromNewtonMetres(40))]) },
        "hoisting" => Hoist,
        "hoisting, lowering" => Hoist.Reversed,
        "geared" => Pump with { GearRatio = 2, GearEfficiency = Efficiency.FromRatio(0.9), GearEfficiencyBack = Efficiency.FromRatio(0.8), Load = new LoadCurve.Constant(Torque.FromNewtonMetres(60)) },
        "overhauling through a gear" => Pump with { GearRatio = 3, GearEfficiency = Efficiency.FromRatio(0.9), GearEfficiencyBack = Efficiency.FromRatio(0.7), Load = new LoadCurve.Table([(ShaftSpeed.FromRpm(0), Torque.FromNewtonMetres(10)), (ShaftSpeed.FromRpm(200), Torque.FromNewtonMetres(-60))]) },
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "No such load."),
    };
}
