using Runup.Engineering.Braking;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Tests.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Mechanics;

public sealed class AnyMachineTests
{
    [Fact]
    public void Any_motor_with_any_machine_has_an_answer()
    {
        var random = new Random(7);
        var ran = 0;
        for (var round = 0; round < 150; round++)
        {
            var circuit = Circuits.Any(random.NextDouble(), random.NextDouble(), random.NextDouble(), random.NextDouble(), random.NextDouble());
            var motor = AnyDrive(random, circuit);
            var machine = AnyMachine(random, circuit.RatedVoltage.Volts * motor.CurrentLimit.Amperes / 157);
            var frequency = ElectricalFrequency.FromHertz(circuit.RatedFrequency.Hertz * (0.2 + (1.3 * random.NextDouble())));
            var loss = ElectricalPower.FromWatts(50);
            if (Acceleration.Of(machine, motor, frequency) is Acceleration.Reached up)
            {
                ran++;
                up.ShortestRamp.Seconds.ShouldBeGreaterThanOrEqualTo(up.Shortest.Seconds * up.Speed.RadiansPerSecond / frequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond * (1 - 1e-9));
            }

            _ = Deceleration.OnLosses(machine, motor, frequency, loss);
            _ = Deceleration.OnResistor(machine, motor, frequency, loss, DcVoltage.FromVolts(760), Resistance.FromOhms(50));
            if (BrakingDemand.Of(machine, motor, frequency, Duration.FromSeconds(5), loss) is { } demand)
            {
                double.IsFinite(demand.Energy.Joules + demand.Peak.Watts).ShouldBeTrue();
                demand.Mean.Watts.ShouldBeLessThanOrEqualTo(demand.Peak.Watts * (1 + 1e-9));
            }

            _ = TorqueBoost.For(circuit, motor.Characteristic, Torque.FromNewtonMetres(100 * random.NextDouble()));
        }

        ran.ShouldBeGreaterThan(50);
    }

    private static MotorOnDrive AnyDrive(Random random, Runup.Engineering.Motors.EquivalentCircuit circuit) => new(
        circuit,
        new VoltsPerHertz
        {
            BaseFrequency = circuit.RatedFrequency,
            MaximumVoltage = circuit.RatedVoltage,
            RatedVoltage = circuit.RatedVoltage,
            Boost = Fraction.FromPercent(8 * random.NextDouble()),
            Shape = random.Next(2) == 0 ? VoltageShape.Linear : VoltageShape.Quadratic,
        },
        LineCurrent.FromAmperes(circuit.RatedVoltage.Phase.Volts / (circuit.Magnetizing.Ohms * (0.05 + (0.5 * random.NextDouble())))));

    private static DrivenMachine AnyMachine(Random random, double scale_Nm)
    {
        var torque = Torque.FromNewtonMetres(scale_Nm * ((1.3 * random.NextDouble()) - 0.2));
        var speed = ShaftSpeed.FromRpm(1000);
        return new DrivenMachine
        {
            Load = random.Next(5) switch
            {
                0 => new LoadCurve.Constant(torque),
                1 => new LoadCurve.Quadratic(torque, speed),
                2 => new LoadCurve.Linear(torque, speed),
                3 => new LoadCurve.ConstantPower(torque, speed),
                _ => new LoadCurve.Table([(ShaftSpeed.FromRpm(0), torque), (speed, Torque.FromNewtonMetres(scale_Nm * 0.3))]),
            },
            MachineInertia = Inertia.FromKilogramSquareMetres(random.Next(8) == 0 ? 0 : random.NextDouble()),
            MotorInertia = Inertia.FromKilogramSquareMetres(random.Next(8) == 0 ? 0 : 0.1 * random.NextDouble()),
            GearRatio = 0.5 + (4 * random.NextDouble()),
            GearEfficiency = Efficiency.FromRatio(0.6 + (0.4 * random.NextDouble())),
            GearEfficiencyBack = Efficiency.FromRatio(0.4 + (0.6 * random.NextDouble())),
            Breakaway = random.Next(2) == 0 ? null : Torque.FromNewtonMetres(scale_Nm * random.NextDouble()),
        };
    }
}
