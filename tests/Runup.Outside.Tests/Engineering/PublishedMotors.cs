using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>The motors of <c>data/cases/motors.csv</c>, whose sources stand in its second column, as the product's circuits.</summary>
internal static class PublishedMotors
{
    // Rotational loss as printed in the notes of motors.csv or in the example itself; where only a no-load test is printed, its input less 3 I² Rs.
    // The independent solution keeps this loss, and the stray loss of MSL-18k5, at one value whatever the speed and current.
    private static readonly Dictionary<string, double> RotationalLoss = new(StringComparer.Ordinal)
    {
        ["MSL-18k5"] = 180 + 102.22,
        ["CHAPMAN-25HP"] = 1100,
        ["CHAPMAN-15HP"] = 250 + 180,
        ["CHAPMAN-75KW"] = 1000 + 150 + 1100,
        ["FITZ-6.2"] = 403,
        ["FITZ-6.5"] = 354,
        ["HUBERT-5.2"] = 166,
        ["NAGRATH-9.5"] = 2500 - (3 * 5.0 * 5.0 * 3.75),
        ["NAGRATH-9.6"] = 1500,
        ["MCPHERSON-4.3"] = 250.5,
        ["MCPHERSON-4.7"] = 200 - (3 * 3.87 * 3.87 * 0.5308),
        ["SEN-5.4"] = 1700,
        ["GURU-9.2"] = 150,
        ["DESHPANDE-11.11"] = 750,
    };

    internal static Cases Motors { get; } = Cases.Read("motors");

    internal static Cases Check { get; } = Cases.Read("motors-check");

    internal static EquivalentCircuit Circuit(string id)
    {
        double? Cell(string column) => Motors.Number(id, column);
        return new EquivalentCircuit
        {
            RatedVoltage = LineVoltage.FromVolts(Cell("voltage_V_line")!.Value),
            RatedFrequency = ElectricalFrequency.FromHertz(Cell("frequency_Hz")!.Value),
            Poles = PoleCount.FromPoles((int)Cell("poles")!.Value),
            StatorResistance = Resistance.FromOhms(Cell("Rs_ohm")!.Value),
            StatorLeakage = Reactance.FromOhms(Cell("Xls_ohm")!.Value),
            Magnetizing = Reactance.FromOhms(Cell("Xm_ohm")!.Value),
            RotorLeakage = Reactance.FromOhms(Cell("Xlr_ohm")!.Value),
            RotorResistance = Resistance.FromOhms(Cell("Rr_ohm")!.Value),
            CoreLoss = Cell("Rc_ohm") is { } core ? Resistance.FromOhms(core) : null,
            FrictionLoss = ElectricalPower.FromWatts(RotationalLoss.GetValueOrDefault(id)),
            RatedSpeed = Cell("rated_speed_rpm") is { } rpm ? ShaftSpeed.FromRpm(rpm) : null,
        };
    }

    internal static CircuitSolution AtSpeed(string id, double rpm)
    {
        var circuit = Circuit(id);
        return CircuitSolution.AtSpeed(circuit, circuit.RatedVoltage, circuit.RatedFrequency, ShaftSpeed.FromRpm(rpm));
    }

    internal static CircuitSolution AtSlip(string id, double slip)
    {
        var circuit = Circuit(id);
        return CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(slip));
    }
}
