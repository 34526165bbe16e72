using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Plant;

/// <summary>The time-domain engine, once settled, against the phasor solution of the same circuit: two separate pieces of code.</summary>
public sealed class SteadyStateTests
{
    private const double Tolerance = 0.001;

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    [InlineData(49)]
    [InlineData(75)]
    [InlineData(-30)]
    public void On_the_supply_current_torque_and_power_are_those_of_the_circuit(double loadNm)
    {
        var start = new LineStart(Motor, Pump with { Load = Load(loadNm), Breakaway = null }, Motor.RatedVoltage, Motor.RatedFrequency);
        start.Advance(Seconds(8));

        var expected = CircuitSolution.AtSpeed(Motor, Motor.RatedVoltage, Motor.RatedFrequency, start.Speed);

        start.Current.Amperes.ShouldBe(expected.Current.Amperes, Tolerance * expected.Current.Amperes);
        start.Torque.NewtonMetres.ShouldBe(expected.DevelopedTorque.NewtonMetres, Tolerance * 49);
        double inputW = 1.5 * start.States.X6 * start.Currents.QsA;
        inputW.ShouldBe(expected.Input.Watts, Tolerance * 7500);
        expected.ShaftTorque.NewtonMetres.ShouldBe(loadNm, 0.02 * 49);
    }

    [Fact]
    public void At_rated_speed_friction_and_stray_loss_are_those_of_the_circuit()
    {
        var wanted = CircuitSolution.AtSpeed(Motor, Motor.RatedVoltage, Motor.RatedFrequency, ShaftSpeed.FromRpm(1460));
        var start = new LineStart(Motor, Pump with { Load = Load(wanted.ShaftTorque.NewtonMetres), Breakaway = null }, Motor.RatedVoltage, Motor.RatedFrequency);

        start.Advance(Seconds(8));

        start.Speed.Rpm.ShouldBe(1460, Tolerance * 40);
        start.Current.Amperes.ShouldBe(wanted.Current.Amperes, Tolerance * wanted.Current.Amperes);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(35)]
    [InlineData(10)]
    [InlineData(60)]
    public void On_the_drive_current_and_torque_are_those_of_the_circuit_at_its_output(double frequencyHz)
    {
        var settings = ByPlate with { MaximumFrequency = ElectricalFrequency.FromHertz(60) };
        var drive = new DriveSimulation(PumpSet, settings) { Order = Forward(frequencyHz) };

        var at = drive.Run(12);

        var expected = CircuitSolution.AtSpeed(
            Motor, LineVoltage.FromVolts(at.OutputVoltageV), ElectricalFrequency.FromHertz(at.OutputFrequencyHz), ShaftSpeed.FromRpm(at.SpeedRpm));
        at.OutputCurrentA.ShouldBe(expected.Current.Amperes, Tolerance * expected.Current.Amperes);
        at.TorqueNm.ShouldBe(expected.DevelopedTorque.NewtonMetres, Tolerance * Math.Max(expected.DevelopedTorque.NewtonMetres, 10));
    }

    // What the load asks for while the shaft turns forward; negative drives the shaft.
    private static LoadCurve Load(double torqueNm) => new LoadCurve.Constant(Torque.FromNewtonMetres(torqueNm));
}
