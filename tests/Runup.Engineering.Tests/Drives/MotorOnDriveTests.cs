using FsCheck;
using FsCheck.Xunit;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Engineering.Tests.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Drives;

public sealed class MotorOnDriveTests
{
    private static double Unit(NormalFloat value) => Math.Abs(value.Get) % 1;

    internal static MotorOnDrive Pump(double limit, double boostPercent = 3) => new(
        Circuits.Pump,
        new VoltsPerHertz
        {
            BaseFrequency = ElectricalFrequency.FromHertz(50),
            MaximumVoltage = LineVoltage.FromVolts(400),
            RatedVoltage = LineVoltage.FromVolts(400),
            Boost = Fraction.FromPercent(boostPercent),
        },
        LineCurrent.FromAmperes(limit));

    [Property(MaxTest = 200)]
    public void The_largest_torque_keeps_to_the_limit_and_is_what_the_circuit_gives_there(NormalFloat speed, NormalFloat limit, NormalFloat boost)
    {
        var motor = Pump(3 + (40 * Unit(limit)), 10 * Unit(boost));
        var shaft = ShaftSpeed.FromRpm(2000 * Unit(speed));
        var largest = motor.LargestTorque(shaft);
        largest.Current.Amperes.ShouldBeLessThanOrEqualTo(motor.CurrentLimit.Amperes * (1 + 1e-9));
        largest.Voltage.Volts.ShouldBeLessThanOrEqualTo(motor.Characteristic.At(largest.Frequency).Volts * (1 + 1e-12));
        var solution = CircuitSolution.AtSpeed(motor.Circuit, largest.Voltage, largest.Frequency, shaft);
        solution.ShaftTorque.NewtonMetres.ShouldBe(largest.Torque.NewtonMetres, 1e-9);
        solution.Current.Amperes.ShouldBe(largest.Current.Amperes, 1e-9);
    }

    [Property(MaxTest = 100)]
    public void No_frequency_and_voltage_within_the_limits_gives_more(NormalFloat speed, NormalFloat limit, NormalFloat boost, NormalFloat frequency, NormalFloat part)
    {
        var motor = Pump(3 + (40 * Unit(limit)), 10 * Unit(boost));
        var shaft = ShaftSpeed.FromRpm(2000 * Unit(speed));
        var largest = motor.LargestTorque(shaft).Torque.NewtonMetres;

        // A rival: any frequency above the shaft's, at whatever voltage below the characteristic the current limit and the no-load flux leave.
        var hertz = (shaft.Rpm / 30) + (15 * Unit(frequency)) + 1e-3;
        var rated = CircuitSolution.Synchronous(motor.Circuit, motor.Circuit.RatedVoltage, motor.Circuit.RatedFrequency);
        var voltage = LineVoltage.FromVolts(Unit(part) * motor.Characteristic.At(ElectricalFrequency.FromHertz(hertz)).Volts);
        var rival = CircuitSolution.AtSpeed(motor.Circuit, voltage, ElectricalFrequency.FromHertz(hertz), shaft);
        var allowed = rival.Current.Amperes <= motor.CurrentLimit.Amperes && rival.AirGapVoltage.Volts <= rated.AirGapVoltage.Volts * hertz / 50;
        (!allowed || rival.ShaftTorque.NewtonMetres <= largest + 1e-6).ShouldBeTrue();
    }

    [Property(MaxTest = 100)]
    public void Braking_feeds_back_no_more_than_is_taken(NormalFloat speed, NormalFloat limit, NormalFloat absorbed)
    {
        var motor = Pump(10 + (40 * Unit(limit)));
        var power = ElectricalPower.FromWatts(5000 * Unit(absorbed));
        var braking = motor.LargestBrakingTorque(ShaftSpeed.FromRpm(20 + (1800 * Unit(speed))), power);
        braking.Input.Watts.ShouldBeGreaterThanOrEqualTo(-power.Watts - 1e-6);
        braking.Current.Amperes.ShouldBeLessThanOrEqualTo(motor.CurrentLimit.Amperes * (1 + 1e-9));
        braking.Torque.NewtonMetres.ShouldBeLessThan(0);
    }

    [Fact]
    public void Without_absorption_the_braking_power_is_the_motors_own_losses()
    {
        var braking = Pump(25).LargestBrakingTorque(ShaftSpeed.FromRpm(1450), ElectricalPower.FromWatts(0));
        braking.Input.Watts.ShouldBe(0, 1e-6);

        // Some hundred watts of no-load losses at 152 rad/s: a few N·m.
        braking.Torque.NewtonMetres.ShouldBeInRange(-6, -1.5);
    }
}
