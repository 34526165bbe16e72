using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

public sealed class CircuitFitTests
{
    private const double Close = 1e-9;

    private static CircuitFit.Fitted Fit(Nameplate plate) => CircuitFit.Of(plate).ShouldBeOfType<CircuitFit.Fitted>();

    private static double Residual(CircuitFit.Fitted fit, PlateDatum datum) => fit.Residuals.Single(r => r.Datum == datum).Relative.Ratio;

    [Fact]
    public void A_consistent_plate_is_reproduced_in_output_current_power_factor_and_speed()
    {
        var fit = Fit(Plates.Pump);
        fit.Balance.ShouldBeOfType<PlateBalance.Consistent>();
        fit.GaveUp.ShouldBeEmpty();
        foreach (var datum in new[] { PlateDatum.Output, PlateDatum.Current, PlateDatum.PowerFactor, PlateDatum.Speed })
        {
            Residual(fit, datum).ShouldBe(0, Close);
        }

        Residual(fit, PlateDatum.Efficiency).ShouldBe(0.00191, 0.00001);
    }

    [Fact]
    public void Efficiency_gives_way_first_when_the_plate_disagrees()
    {
        var fit = Fit(Plates.Pump with { Efficiency = Efficiency.FromRatio(0.80) });
        fit.Balance.ShouldBeOfType<PlateBalance.Inconsistent>();
        fit.GaveUp.Single().Datum.ShouldBe(PlateDatum.Efficiency);
        Residual(fit, PlateDatum.Output).ShouldBe(0, Close);
        Residual(fit, PlateDatum.Current).ShouldBe(0, Close);
        Residual(fit, PlateDatum.PowerFactor).ShouldBe(0, Close);
        Residual(fit, PlateDatum.Speed).ShouldBe(0, Close);
    }

    [Fact]
    public void Power_factor_gives_way_when_no_efficiency_would_do()
    {
        // 0.74 would ask for an efficiency of 1.016.
        var fit = Fit(Plates.Pump with { PowerFactor = PowerFactor.FromRatio(0.74) });
        fit.GaveUp.Single().Datum.ShouldBe(PlateDatum.PowerFactor);
        Residual(fit, PlateDatum.Efficiency).ShouldBe(0, Close);
        Residual(fit, PlateDatum.Current).ShouldBe(0, Close);
    }

    [Fact]
    public void A_missing_power_factor_comes_from_the_product()
    {
        var fit = Fit(Plates.Pump with { PowerFactor = null });
        fit.Rated.PowerFactor.Ratio.ShouldBe(7500 / (Math.Sqrt(3) * 400 * 14.4 * 0.904), Close);
        fit.Assumptions.ShouldContain(a => a.What.StartsWith("power factor", StringComparison.Ordinal));
    }

    [Fact]
    public void Missing_efficiency_and_power_factor_come_from_the_class_and_the_product()
    {
        var fit = Fit(Plates.Pump with { PowerFactor = null, Efficiency = null });

        // IEC 60034-30-1, IE3, 50 Hz, 4 poles, 7.5 kW: 90.4 % (seen).
        fit.Rated.Efficiency.Ratio.ShouldBe(0.904, Close);
        fit.Assumptions.ShouldContain(a => a.What == "efficiency (class IE3)" && !a.FromMemory);
    }

    [Fact]
    public void Breakdown_torque_sets_the_leakage()
    {
        var fit = Fit(Plates.Pump with { BreakdownTorqueRatio = 2.9 });
        Residual(fit, PlateDatum.BreakdownTorque).ShouldBe(0, Close);
        Residual(fit, PlateDatum.Current).ShouldBe(0, Close);
    }

    [Fact]
    public void Locked_rotor_current_sets_the_leakage_when_there_is_no_breakdown_torque()
    {
        var fit = Fit(Plates.Pump with { LockedRotorCurrentRatio = 6.5 });
        Residual(fit, PlateDatum.LockedRotorCurrent).ShouldBe(0, Close);
    }

    [Fact]
    public void A_code_letter_stands_for_the_middle_of_its_band()
    {
        var fit = Fit(Plates.Pump with { CodeLetter = 'H' });
        Residual(fit, PlateDatum.CodeLetter).ShouldBe(0, Close);
        fit.Residuals.Single(r => r.Datum == PlateDatum.CodeLetter).Plate
            .ShouldBe((6.3 + 7.1) / 2 * (7500 / 745.69987) * 1000 / (Math.Sqrt(3) * 400) / 14.4, 1e-6);
    }

    [Fact]
    public void A_datum_that_one_cage_cannot_follow_is_given_up_and_said()
    {
        var fit = Fit(Plates.Pump with { BreakdownTorqueRatio = 2.2, LockedRotorCurrentRatio = 8 });
        fit.GaveUp.ShouldContain(g => g.Datum == PlateDatum.LockedRotorCurrent);
        Residual(fit, PlateDatum.BreakdownTorque).ShouldBe(0, Close);
    }

    [Theory]
    [InlineData("A", 1.0)]
    [InlineData("B", 0.67)]
    [InlineData("C", 0.43)]
    [InlineData("D", 1.0)]
    [InlineData("N", 0.67)]
    [InlineData(null, 0.67)]
    public void Leakage_is_split_by_design_letter(string? letter, double ratio)
    {
        // IEEE 112, from memory: A 1.0, B 0.67, C 0.43, D 1.0.
        var circuit = Fit(Plates.Pump with { DesignLetter = letter }).Circuit;
        (circuit.StatorLeakage.Ohms / circuit.RotorLeakage.Ohms).ShouldBe(ratio, Close);
    }

    [Fact]
    public void A_speed_at_or_above_synchronous_is_no_induction_motor() =>
        CircuitFit.Of(Plates.Pump with { Speed = ShaftSpeed.FromRpm(1500) }).ShouldBeOfType<CircuitFit.NotPossible>()
            .Obstacles.Single().Datum.ShouldBe(PlateDatum.Speed);

    [Fact]
    public void More_output_than_current_can_carry_is_not_possible() =>
        CircuitFit.Of(Plates.Pump with { Output = ShaftPower.FromWatts(10_000) }).ShouldBeOfType<CircuitFit.NotPossible>();

    [Fact]
    public void The_plate_of_any_circuit_is_reproduced()
    {
        var random = new Random(20);
        var fitted = 0;
        for (var round = 0; round < 1000; round++)
        {
            var circuit = Circuits.Any(random.NextDouble(), random.NextDouble(), random.NextDouble(), random.NextDouble(), random.NextDouble());
            var slip = Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Slip.Ratio * (0.08 + (0.25 * random.NextDouble()));
            var rated = CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(slip));
            if (CircuitFit.Of(PlateOf(rated)) is not CircuitFit.Fitted fit)
            {
                continue;
            }

            fitted++;
            Residual(fit, PlateDatum.Output).ShouldBe(0, Close);
            Residual(fit, PlateDatum.Current).ShouldBe(0, Close);
            Residual(fit, PlateDatum.Speed).ShouldBe(0, Close);
            Residual(fit, PlateDatum.PowerFactor).ShouldBe(0, Close);
            Residual(fit, PlateDatum.Efficiency).ShouldBe(0, Close);
        }

        // Five numbers at random include motors that hardly magnetize or hardly give power; the rest must be found.
        fitted.ShouldBeGreaterThan(900);
    }

    private static Nameplate PlateOf(CircuitSolution rated) => new()
    {
        Output = rated.Output,
        Voltage = rated.Voltage,
        Current = rated.Current,
        Frequency = rated.Frequency,
        Speed = rated.Speed,
        PrintedPoles = rated.Circuit.Poles,
        PowerFactor = rated.PowerFactor,
        Efficiency = rated.Efficiency,
    };
}
