using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class BarFitTests
{
    private static CircuitFit.Fitted Fit(Nameplate plate) => CircuitFit.Of(plate).ShouldBeOfType<CircuitFit.Fitted>();

    private static double Residual(CircuitFit.Fitted fit, PlateDatum datum) => Math.Abs(fit.Residuals.Single(r => r.Datum == datum).Relative.Ratio);

    /// <summary>The plate and starting figures of a motor with two cages, from its own circuit.</summary>
    private static (Nameplate Plate, EquivalentCircuit Circuit) TwoCages(double r2, double x2)
    {
        var circuit = Circuits.Make(400, 50, 4, 0.5, 1.3, 36, 2.6, 0.58, coreOhm: 900, frictionW: 60) with
        {
            SecondCage = new RotorCage(Resistance.FromOhms(r2), Reactance.FromOhms(x2)),
        };
        var rated = CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(0.025));
        var locked = CircuitSolution.LockedRotor(circuit, circuit.RatedVoltage, circuit.RatedFrequency);
        var torque = rated.ShaftTorque.NewtonMetres;
        return (
            new Nameplate
            {
                Output = rated.Output,
                Voltage = rated.Voltage,
                Current = rated.Current,
                Frequency = rated.Frequency,
                Speed = rated.Speed,
                PrintedPoles = circuit.Poles,
                PowerFactor = rated.PowerFactor,
                Efficiency = rated.Efficiency,
                LockedRotorCurrentRatio = locked.Current.Amperes / rated.Current.Amperes,
                LockedRotorTorqueRatio = locked.DevelopedTorque.NewtonMetres / torque,
                BreakdownTorqueRatio = Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Torque.NewtonMetres / torque,
            },
            circuit);
    }

    [Theory]
    [InlineData(2.6, 1.4)]
    [InlineData(1.6, 0.8)]
    [InlineData(4.0, 0.5)]
    public void A_motor_with_two_cages_is_found_again_from_its_starting_figures(double r2, double x2)
    {
        var (plate, _) = TwoCages(r2, x2);
        var fit = Fit(plate);
        fit.Circuit.SecondCage.ShouldNotBeNull();
        fit.GaveUp.ShouldBeEmpty();
        Residual(fit, PlateDatum.LockedRotorCurrent).ShouldBeLessThan(0.02);
        Residual(fit, PlateDatum.LockedRotorTorque).ShouldBeLessThan(0.02);
        Residual(fit, PlateDatum.BreakdownTorque).ShouldBeLessThan(0.02);
        Residual(fit, PlateDatum.Current).ShouldBeLessThan(1e-9);
        Residual(fit, PlateDatum.Output).ShouldBeLessThan(1e-9);
        Residual(fit, PlateDatum.PowerFactor).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void One_figure_that_one_cage_has_asks_for_no_second()
    {
        Fit(Plates.Pump with { BreakdownTorqueRatio = 2.9 }).Circuit.SecondCage.ShouldBeNull();
        Fit(Plates.Pump with { LockedRotorCurrentRatio = 6.5 }).Circuit.SecondCage.ShouldBeNull();
        Fit(Plates.Pump).Circuit.SecondCage.ShouldBeNull();
    }

    [Fact]
    public void A_starting_torque_that_one_cage_lacks_asks_for_deep_bars()
    {
        var fit = Fit(Plates.Pump with { LockedRotorTorqueRatio = 2.3 });
        fit.Circuit.SecondCage.ShouldNotBeNull();
        Residual(fit, PlateDatum.LockedRotorTorque).ShouldBeLessThan(0.02);
    }

    [Fact]
    public void Of_figures_that_no_rotor_has_together_one_is_given_up_and_said()
    {
        var fit = Fit(Plates.Pump with { BreakdownTorqueRatio = 2.2, LockedRotorCurrentRatio = 8, LockedRotorTorqueRatio = 1.2 });
        fit.GaveUp.ShouldHaveSingleItem().Datum.ShouldBeOneOf(PlateDatum.LockedRotorCurrent, PlateDatum.LockedRotorTorque, PlateDatum.BreakdownTorque);
        fit.GaveUp[0].Why.ShouldContain("deep bars");
    }

    [Fact]
    public void The_one_cage_that_stands_for_two_has_the_same_rated_point()
    {
        var (_, two) = TwoCages(2.6, 1.4);
        var rated = CircuitSolution.At(two, two.RatedVoltage, two.RatedFrequency, Slip.FromRatio(0.025));
        var one = (two with { RatedSpeed = rated.Speed }).WithOneCage();
        one.SecondCage.ShouldBeNull();
        var again = CircuitSolution.At(one, one.RatedVoltage, one.RatedFrequency, Slip.FromRatio(0.025));
        again.Current.Amperes.ShouldBe(rated.Current.Amperes, 1e-9);
        again.AirGapPower.Watts.ShouldBe(rated.AirGapPower.Watts, 1e-6);
    }

    [Fact]
    public void Energy_balance_closes_with_two_cages()
    {
        var (_, two) = TwoCages(2.6, 1.4);
        foreach (var slip in new[] { -0.1, 0.01, 0.2, 1, 1.5 })
        {
            var state = CircuitSolution.At(two, two.RatedVoltage, two.RatedFrequency, Slip.FromRatio(slip));
            (state.Output.Watts + state.Losses.Total.Watts).ShouldBe(state.Input.Watts, 1e-9 * Math.Abs(state.Input.Watts));
        }
    }
}
