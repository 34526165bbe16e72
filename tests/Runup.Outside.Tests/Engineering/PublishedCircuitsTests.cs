using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>
/// Every circuit of <c>motors.csv</c> against an independent solution of the same circuit, <c>motors-check.csv</c>, to its printed digits.
/// </summary>
public sealed class PublishedCircuitsTests
{
    private static Cases Check => PublishedMotors.Check;

    public static TheoryData<string> Ids => [.. PublishedMotors.Motors.Rows.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void At_the_stated_slip(string id)
    {
        if (Check.Number(id, "I_at_n") is null)
        {
            Check.Number(id, "slip").ShouldBeNull();
            return;
        }

        var solution = PublishedMotors.AtSlip(id, StatedSlip(id));
        Holds(id, "I_at_n", solution.Current.Amperes);
        Holds(id, "pf_at_n", solution.PowerFactor.Ratio);
        Holds(id, "Te_at_n", solution.DevelopedTorque.NewtonMetres);
        Holds(id, "Tshaft_at_n", solution.ShaftTorque.NewtonMetres);
        Holds(id, "Pout_at_n_W", solution.Output.Watts);
        Holds(id, "eff_at_n", solution.Efficiency.Ratio);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void At_rated_power(string id)
    {
        if (Check.Number(id, "I_at_P") is null)
        {
            Check.Text(id, "kind").ShouldBe("op");
            return;
        }

        // 250 hp of 745.7 W, which the table rounds to 186.43 kW.
        var watts = id == "CATHEY-250HP" ? 250 * 745.7 : PublishedMotors.Motors.Number(id, "rated_output_kW")!.Value * 1000;
        var solution = AtPower(PublishedMotors.Circuit(id), ShaftPower.FromWatts(watts));
        Holds(id, "n_at_P", solution.Speed.Rpm);
        Holds(id, "I_at_P", solution.Current.Amperes);
        Holds(id, "pf_at_P", solution.PowerFactor.Ratio);
        Holds(id, "T_at_P", solution.ShaftTorque.NewtonMetres);
        Holds(id, "eff_at_P", solution.Efficiency.Ratio);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void At_no_load_locked_rotor_and_breakdown(string id)
    {
        var circuit = PublishedMotors.Circuit(id);
        Holds(id, "I_noload", CircuitSolution.Synchronous(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Current.Amperes);
        var locked = CircuitSolution.LockedRotor(circuit, circuit.RatedVoltage, circuit.RatedFrequency);
        Holds(id, "I_lockedrotor", locked.Current.Amperes);
        Holds(id, "T_lockedrotor", locked.ShaftTorque.NewtonMetres);
        var breakdown = Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency);
        Holds(id, "T_breakdown", breakdown.Torque.NewtonMetres);

        // The independent solution searched the flat top of the curve on a grid: its torque is good to every digit, its slip to a part in a thousand.
        breakdown.Slip.Ratio.ShouldBe(Check.Number(id, "s_breakdown")!.Value, (1.2e-3 * breakdown.Slip.Ratio) + Check.HalfDigit(id, "s_breakdown"));
    }

    /// <summary>The published rotational loss holds at the speed that is found, so that speed is put in until it stays.</summary>
    private static CircuitSolution AtPower(EquivalentCircuit circuit, ShaftPower output)
    {
        var solution = CircuitSolution.Synchronous(circuit, circuit.RatedVoltage, circuit.RatedFrequency);
        for (var round = 0; round < 6; round++)
        {
            solution = OperatingPoint.AtShaftPower(circuit with { RatedSpeed = solution.Speed }, circuit.RatedVoltage, circuit.RatedFrequency, output)
                .ShouldBeOfType<OperatingPoint.Runs>().Solution;
        }

        return solution;
    }

    private static double StatedSlip(string id)
    {
        var (hertz, poles) = (PublishedMotors.Motors.Number(id, "frequency_Hz")!.Value, PublishedMotors.Motors.Number(id, "poles")!.Value);
        var synchronous = 120 * hertz / poles;
        return 1 - (PublishedMotors.Motors.Number(id, "rated_speed_rpm")!.Value / synchronous);
    }

    private static void Holds(string id, string column, double value) =>
        value.ShouldBe(Check.Number(id, column)!.Value, Check.HalfDigit(id, column) * 1.001, $"{id} {column}");
}
