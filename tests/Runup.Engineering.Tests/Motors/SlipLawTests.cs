using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class SlipLawTests
{
    private static readonly SlipLaw Law = SlipLaw.Of(Plates.Pump);

    [Fact]
    public void At_the_plate_it_is_the_plate() =>
        Law.SpeedAt(LineVoltage.FromVolts(400), ElectricalFrequency.FromHertz(50), Fraction.FromRatio(1)).Rpm.ShouldBe(1460, 1e-9);

    [Fact]
    public void It_agrees_with_the_circuit_at_small_slip()
    {
        var circuit = CircuitFit.Of(Plates.Pump).ShouldBeOfType<CircuitFit.Fitted>().Circuit;
        var torque = Torque.FromNewtonMetres(0.5 * Plates.Pump.RatedTorque.NewtonMetres);
        var point = OperatingPoint.AtShaftTorque(circuit, circuit.RatedVoltage, circuit.RatedFrequency, torque).ShouldBeOfType<OperatingPoint.Runs>();
        Law.SpeedAt(circuit.RatedVoltage, circuit.RatedFrequency, Fraction.FromRatio(0.5)).Rpm.ShouldBe(point.Solution.Speed.Rpm, 3);
    }

    [Fact]
    public void Frequency_and_torque_turn_it_round()
    {
        var frequency = Law.FrequencyAtRatedFlux(ShaftSpeed.FromRpm(700), Fraction.FromRatio(0.6));
        Law.SpeedAtRatedFlux(frequency, Fraction.FromRatio(0.6)).Rpm.ShouldBe(700, 1e-9);
        Law.TorqueAtRatedFlux(frequency, ShaftSpeed.FromRpm(700)).Ratio.ShouldBe(0.6, 1e-9);
    }
}
