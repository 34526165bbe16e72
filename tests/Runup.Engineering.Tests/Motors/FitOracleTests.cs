using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Runup.Engineering.Motors;

namespace Runup.Engineering.Tests.Motors;

/// <summary>The closed forms of the fit against a general least-squares solver that knows only the circuit's steady state.</summary>
public sealed class FitOracleTests
{
    private static readonly Nameplate Plate = Plates.Pump with { BreakdownTorqueRatio = 2.9 };

    [Theory]
    [InlineData(0.7)]
    [InlineData(1.0)]
    [InlineData(1.4)]
    public void Levenberg_and_marquardt_find_the_same_circuit(double startAt)
    {
        var fit = CircuitFit.Of(Plate).ShouldBeOfType<CircuitFit.Fitted>();
        var solution = Unknowns(fit.Circuit);

        // Current, power factor, output, core loss and breakdown torque in units of the plate's; five equations for five unknowns.
        var wanted = Vector<double>.Build.DenseOfArray(Observed(fit.Circuit, fit.Rated.Losses.Core.Watts));
        var model = ObjectiveFunction.NonlinearModel(
            (factors, _) => Vector<double>.Build.DenseOfArray(Observed(With(fit.Circuit, solution, factors), fit.Rated.Losses.Core.Watts)),
            Vector<double>.Build.Dense(5, i => i),
            wanted);
        var start = Vector<double>.Build.Dense(5, i => i % 2 == 0 ? startAt : 1 / startAt);
        var found = new LevenbergMarquardtMinimizer(
            gradientTolerance: 1e-18, stepTolerance: 1e-18, functionTolerance: 1e-24, maximumIterations: 2000).FindMinimum(model, start);
        foreach (var factor in found.MinimizingPoint)
        {
            factor.ShouldBe(1, 1e-5);
        }
    }

    private static double[] Unknowns(EquivalentCircuit circuit) =>
    [
        circuit.StatorResistance.Ohms, circuit.Magnetizing.Ohms, circuit.RotorResistance.Ohms, circuit.RotorLeakage.Ohms, circuit.CoreLoss!.Value.Ohms,
    ];

    /// <summary>The stator leakage stays in its ratio to the rotor's.</summary>
    private static EquivalentCircuit With(EquivalentCircuit circuit, double[] solution, Vector<double> factors)
    {
        double Value(int place) => solution[place] * Math.Clamp(factors[place], 0.01, 100);
        return Circuits.Make(
            circuit.RatedVoltage.Volts, circuit.RatedFrequency.Hertz, circuit.Poles.Poles,
            Value(0), 0.67 * Value(3), Value(1), Value(3), Value(2), coreOhm: Value(4),
            frictionW: circuit.FrictionLoss.Watts, strayW: circuit.StrayLoss.Watts,
            ratedAmperes: circuit.RatedCurrent!.Value.Amperes, ratedRpm: circuit.RatedSpeed!.Value.Rpm);
    }

    private static double[] Observed(EquivalentCircuit circuit, double core_W)
    {
        var rated = CircuitSolution.AtSpeed(circuit, Plate.Voltage, Plate.Frequency, Plate.Speed);
        var breakdown = Breakdown.Of(circuit, Plate.Voltage, Plate.Frequency).Torque.NewtonMetres / Plate.RatedTorque.NewtonMetres;
        return
        [
            rated.Current.Amperes / Plate.Current.Amperes,
            rated.PowerFactor.Ratio / 0.83,
            rated.Output.Watts / Plate.Output.Watts,
            rated.Losses.Core.Watts / core_W,
            breakdown / 2.9,
        ];
    }
}
