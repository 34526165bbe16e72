using Runup.Engineering.Motors;

namespace Runup.Engineering.Tests.Motors;

public sealed class MotorPredictionTests
{
    [Fact]
    public void The_example_of_the_page()
    {
        // docs/calculations/plate-to-circuit.md.
        var plate = Plates.Pump with { BreakdownTorqueRatio = 2.9, DesignLetter = "N" };
        var fit = CircuitFit.Of(plate).ShouldBeOfType<CircuitFit.Fitted>();
        var prediction = MotorPrediction.From(fit, plate);
        prediction.RatedTorque.NewtonMetres.ShouldBe(49.05, 0.005);
        prediction.RatedCurrent.Amperes.ShouldBe(14.4, 1e-9);
        prediction.RatedPowerFactor.Ratio.ShouldBe(0.83, 1e-9);
        prediction.RatedEfficiency.Ratio.ShouldBe(0.9057, 0.00005);
        prediction.RatedSlip.Ratio.ShouldBe(0.02667, 0.000005);
        prediction.BreakdownTorqueRatio.Value.ShouldBe(2.9, 1e-9);
        prediction.NoLoadCurrent.Amperes.ShouldBe(6.474, 0.001);
        prediction.LockedRotorCurrentRatio.Value.ShouldBe(5.398, 0.001);
        prediction.LockedRotorTorqueRatio.Value.ShouldBe(1.005, 0.001);
        prediction.Poles.Poles.ShouldBe(4);
    }
}
