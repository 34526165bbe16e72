using FsCheck;
using FsCheck.Xunit;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class CircuitSolutionTests
{
    private static readonly LineVoltage RatedVoltage = LineVoltage.FromVolts(400);
    private static readonly ElectricalFrequency RatedFrequency = ElectricalFrequency.FromHertz(50);

    private static double Unit(NormalFloat value) => Math.Abs(value.Get) % 1;

    [Property(MaxTest = 500)]
    public void Input_is_output_plus_losses_at_any_slip(NormalFloat a, NormalFloat b, NormalFloat c, NormalFloat d, NormalFloat e, NormalFloat slip, NormalFloat hertz)
    {
        var circuit = Circuits.Any(Unit(a), Unit(b), Unit(c), Unit(d), Unit(e));
        var solution = CircuitSolution.At(
            circuit, circuit.RatedVoltage, ElectricalFrequency.FromHertz(1 + (99 * Unit(hertz))), Slip.FromRatio((4 * Unit(slip)) - 2));
        var largest = new[] { Math.Abs(solution.Input.Watts), Math.Abs(solution.Output.Watts), solution.Losses.Total.Watts }.Max();
        (solution.Input.Watts - solution.Output.Watts - solution.Losses.Total.Watts).ShouldBe(0, 1e-9 * largest);
    }

    [Property(MaxTest = 200)]
    public void Currents_follow_kirchhoff_and_ohm(NormalFloat a, NormalFloat b, NormalFloat c, NormalFloat d, NormalFloat e, NormalFloat s)
    {
        // The same circuit with complex numbers, branch by branch, as a second derivation.
        var circuit = Circuits.Any(Unit(a), Unit(b), Unit(c), Unit(d), Unit(e));
        var slip = 0.001 + Unit(s);
        var solution = CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(slip));
        var rotor = new System.Numerics.Complex(circuit.RotorResistance.Ohms / slip, circuit.RotorLeakage.Ohms);
        var magnetizing = System.Numerics.Complex.ImaginaryOne * circuit.Magnetizing.Ohms;
        var inner = 1 / ((1 / rotor) + (1 / magnetizing) + (circuit.CoreLoss is { } core ? 1 / core.Ohms : 0));
        var current = circuit.RatedVoltage.Phase.Volts / (new System.Numerics.Complex(circuit.StatorResistance.Ohms, circuit.StatorLeakage.Ohms) + inner);
        System.Numerics.Complex.Abs(solution.StatorPhasor - current).ShouldBe(0, 1e-12 * current.Magnitude);
        solution.AirGapVoltage.Volts.ShouldBe((current * inner).Magnitude, 1e-12 * circuit.RatedVoltage.Volts);
        solution.RotorCurrent.Amperes.ShouldBe((current * inner / rotor).Magnitude, 1e-12 * current.Magnitude);
    }

    [Fact]
    public void Losses_that_go_with_speed_make_no_torque_at_standstill()
    {
        var solution = CircuitSolution.LockedRotor(Circuits.Pump, RatedVoltage, RatedFrequency);
        solution.ShaftTorque.ShouldBe(solution.DevelopedTorque);
        solution.Losses.Friction.Watts.ShouldBe(0);
        solution.Losses.Stray.Watts.ShouldBe(0);
        solution.Output.Watts.ShouldBe(0);
    }

    [Fact]
    public void Friction_and_stray_are_the_stated_ones_at_the_rated_point()
    {
        var circuit = Circuits.Pump;
        var solution = CircuitSolution.AtSpeed(circuit, RatedVoltage, RatedFrequency, circuit.RatedSpeed!.Value);
        solution.Losses.Friction.Watts.ShouldBe(60, 1e-9);
        solution.Losses.Stray.Watts.ShouldBe(90 * Math.Pow(solution.Current.Amperes / 14.4, 2), 1e-9);
    }

    [Fact]
    public void At_synchronous_speed_no_rotor_current_flows()
    {
        var solution = CircuitSolution.Synchronous(Circuits.Pump, RatedVoltage, RatedFrequency);
        solution.RotorCurrent.Amperes.ShouldBe(0);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(0);
        solution.ShaftTorque.NewtonMetres.ShouldBeLessThan(0);
    }

    [Fact]
    public void A_shaft_that_outruns_the_field_feeds_back()
    {
        var solution = CircuitSolution.AtSpeed(Circuits.Pump, RatedVoltage, RatedFrequency, ShaftSpeed.FromRpm(1540));
        solution.Input.Watts.ShouldBeLessThan(0);
        solution.Efficiency.Ratio.ShouldBe(solution.Input.Watts / solution.Output.Watts, 1e-12);
    }

    [Fact]
    public void Reactances_go_with_frequency_so_that_constant_flux_gives_the_same_torque_at_the_same_slip_speed()
    {
        // Without stator resistance, constant V/f is constant flux; the friction term has to be left out too.
        var circuit = Circuits.Make(400, 50, 4, 0, 1.05, 33, 1.55, 0.47);
        var full = CircuitSolution.At(circuit, RatedVoltage, RatedFrequency, Slip.FromRatio(0.03));
        var half = CircuitSolution.At(circuit, LineVoltage.FromVolts(200), ElectricalFrequency.FromHertz(25), Slip.FromRatio(0.06));
        half.DevelopedTorque.NewtonMetres.ShouldBe(full.DevelopedTorque.NewtonMetres, 1e-9);
        half.Current.Amperes.ShouldBe(full.Current.Amperes, 1e-9);
    }

    [Fact]
    public void Zero_frequency_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => CircuitSolution.At(Circuits.Pump, RatedVoltage, ElectricalFrequency.FromHertz(0), Slip.FromRatio(0.1)));

    [Fact]
    public void A_stray_loss_without_its_current_is_refused() =>
        Should.Throw<ArgumentException>(() => CircuitSolution.At(
            Circuits.Pump with { RatedCurrent = null }, RatedVoltage, RatedFrequency, Slip.FromRatio(0.1)));
}
