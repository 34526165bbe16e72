using FsCheck;
using FsCheck.Xunit;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class OperatingPointTests
{
    private static double Unit(NormalFloat value) => Math.Abs(value.Get) % 1;

    [Property(MaxTest = 200)]
    public void The_point_found_has_the_torque_asked_for(NormalFloat a, NormalFloat b, NormalFloat c, NormalFloat d, NormalFloat e, NormalFloat part)
    {
        var circuit = Circuits.Any(Unit(a), Unit(b), Unit(c), Unit(d), Unit(e));
        var wanted = ((1.6 * Unit(part)) - 0.8) * Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Torque.NewtonMetres;
        var answer = OperatingPoint.AtShaftTorque(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Torque.FromNewtonMetres(wanted));
        switch (answer)
        {
            case OperatingPoint.Runs runs:
                runs.Solution.ShaftTorque.NewtonMetres.ShouldBe(wanted, 1e-10 * (Math.Abs(wanted) + runs.Solution.DevelopedTorque.NewtonMetres) + 1e-12);
                break;
            case OperatingPoint.BeyondBreakdown beyond:
                Math.Abs(beyond.Largest.ShaftTorque.NewtonMetres).ShouldBeLessThan(Math.Abs(wanted) * (1 + 1e-9));
                break;
        }
    }

    [Fact]
    public void A_load_beyond_the_largest_torque_is_said_with_that_torque()
    {
        var circuit = Circuits.Pump;
        var answer = OperatingPoint.AtShaftTorque(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Torque.FromNewtonMetres(500));
        var largest = answer.ShouldBeOfType<OperatingPoint.BeyondBreakdown>().Largest;
        largest.ShaftTorque.NewtonMetres.ShouldBeInRange(50, Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Torque.NewtonMetres);
    }

    [Fact]
    public void Uncoupled_the_motor_turns_only_its_own_friction()
    {
        var circuit = Circuits.Pump;
        var solution = OperatingPoint.Uncoupled(circuit, circuit.RatedVoltage, circuit.RatedFrequency).ShouldBeOfType<OperatingPoint.Runs>().Solution;
        solution.Output.Watts.ShouldBe(0, 1e-6);
        solution.Slip.Ratio.ShouldBeInRange(1e-6, 0.005);
        solution.Input.Watts.ShouldBe(solution.Losses.Total.Watts, 1e-6);
    }

    [Property(MaxTest = 100)]
    public void Breakdown_is_the_largest_torque_of_a_sweep(NormalFloat a, NormalFloat b, NormalFloat c, NormalFloat d, NormalFloat e)
    {
        var circuit = Circuits.Any(Unit(a), Unit(b), Unit(c), Unit(d), Unit(e));
        var breakdown = Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency);
        var sweep = Enumerable.Range(1, 2000).Max(i => CircuitSolution.At(
            circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(breakdown.Slip.Ratio * i / 1000.0)).DevelopedTorque.NewtonMetres);
        breakdown.Torque.NewtonMetres.ShouldBe(sweep, 1e-9 * sweep);
    }
}
