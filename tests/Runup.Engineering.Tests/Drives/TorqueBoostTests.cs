using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Engineering.Tests.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Drives;

public sealed class TorqueBoostTests
{
    private static readonly VoltsPerHertz Characteristic = MotorOnDriveTests.Pump(25, 0).Characteristic;

    private static TorqueBoost.Required For(double newtonMetres) =>
        TorqueBoost.For(Circuits.Pump, Characteristic, Torque.FromNewtonMetres(newtonMetres)).ShouldBeOfType<TorqueBoost.Required>();

    [Theory]
    [InlineData(10)]
    [InlineData(49)]
    [InlineData(75)]
    public void With_the_boost_the_circuit_has_the_torque_at_standstill(double newtonMetres)
    {
        var answer = For(newtonMetres);
        var voltage = (Characteristic with { Boost = answer.Boost }).At(answer.Frequency);
        voltage.Volts.ShouldBe(answer.Voltage.Volts, 1e-9);
        var standstill = CircuitSolution.LockedRotor(Circuits.Pump, voltage, answer.Frequency);
        standstill.ShaftTorque.NewtonMetres.ShouldBe(newtonMetres, 1e-9);
        standstill.Current.Amperes.ShouldBe(answer.Current.Amperes, 1e-9);
    }

    [Fact]
    public void The_example_of_the_page()
    {
        // docs/calculations/torque-boost.md.
        var answer = For(49);
        answer.Boost.Percent.ShouldBe(4.10, 0.005);
        answer.Frequency.Hertz.ShouldBe(1.214, 0.001);
        answer.Current.Amperes.ShouldBe(13.82, 0.01);
    }

    [Fact]
    public void More_torque_asks_for_more_boost_and_current()
    {
        For(40).Boost.Ratio.ShouldBeGreaterThan(For(20).Boost.Ratio);
        For(40).Current.Amperes.ShouldBeGreaterThan(For(20).Current.Amperes);
    }

    [Fact]
    public void More_than_the_motor_has_at_rated_flux_is_said() =>
        TorqueBoost.For(Circuits.Pump, Characteristic, Torque.FromNewtonMetres(1000))
            .ShouldBeOfType<TorqueBoost.NotAttainable>().Largest.NewtonMetres.ShouldBeInRange(100, 400);
}
