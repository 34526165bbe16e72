using System.Globalization;
using Runup.Engineering.Braking;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Engineering.Starting;
using Runup.Engineering.Supply;
using Runup.Engineering.Tests.Drives;
using Runup.Engineering.Tests.Mechanics;
using Runup.Engineering.Tests.Motors;
using Runup.Engineering.Thermal;
using Runup.Quantities;

namespace Runup.Engineering.Tests;

/// <summary>Each example in <c>docs/calculations</c> stands there as the product computes it.</summary>
public sealed class CalculationPagesTests
{
    private static readonly ElectricalFrequency Full = ElectricalFrequency.FromHertz(50);
    private static readonly ElectricalPower DriveLoss = ElectricalPower.FromWatts(75);

    public static TheoryData<string> Pages => ["steady-state", "plate-to-circuit", "motor-ensemble", "acceleration", "braking", "torque-boost", "derated-current", "duty-and-slip", "start-and-heating"];

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_example_is_what_the_product_computes(string page)
    {
        var text = Page(page);
        foreach (var line in Example(page))
        {
            text.ShouldContain(line);
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_says_validity_source_and_example(string page)
    {
        var text = Page(page);
        text.ShouldContain("alidity");
        text.ShouldContain("ource.**");
        text.ShouldContain("**Example.**");
        text.ShouldContain("ssumption");
        text.Split('\n').Length.ShouldBeLessThan(70);
    }

    private static string Page(string name)
    {
        using var reader = new StreamReader(typeof(CalculationPagesTests).Assembly.GetManifestResourceStream($"pages/{name}.md")!);
        return reader.ReadToEnd();
    }

    private static IEnumerable<string> Example(string page) => page switch
    {
        "steady-state" => SteadyState(),
        "plate-to-circuit" => PlateToCircuit(),
        "motor-ensemble" => [],
        "acceleration" => AccelerationAndDeceleration(),
        "braking" => Braking(),
        "torque-boost" => Boost(),
        "derated-current" => Derated(),
        "start-and-heating" => StartAndHeating(),
        _ => DutyAndSlip(),
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<string> SteadyState()
    {
        var circuit = Circuits.Pump;
        var states = new (string At, CircuitSolution State)[]
        {
            ("1460 rpm", CircuitSolution.AtSpeed(circuit, circuit.RatedVoltage, Full, ShaftSpeed.FromRpm(1460))),
            ("uncoupled", ((OperatingPoint.Runs)OperatingPoint.Uncoupled(circuit, circuit.RatedVoltage, Full)).Solution),
            ("locked rotor", CircuitSolution.LockedRotor(circuit, circuit.RatedVoltage, Full)),
        };
        foreach (var (at, state) in states)
        {
            yield return Line($"| {at} | {state.Current.Amperes:F2} A | {state.PowerFactor.Ratio:F3} | {Math.Max(0, state.ShaftTorque.NewtonMetres):F2} N·m | {state.Efficiency.Ratio * 100:F2} % |");
        }

        var breakdown = Breakdown.Of(circuit, circuit.RatedVoltage, Full);
        yield return Line($"Breakdown: {breakdown.Torque.NewtonMetres:F2} N·m at a slip of {breakdown.Slip.Ratio:F4}.");
    }

    private static IEnumerable<string> PlateToCircuit()
    {
        var plate = Plates.Pump with { BreakdownTorqueRatio = 2.9, DesignLetter = "N" };
        var fit = (CircuitFit.Fitted)CircuitFit.Of(plate);
        var prediction = MotorPrediction.From(fit, plate);
        var c = fit.Circuit;
        yield return Line($"| Rs, Xls, Xm | {c.StatorResistance.Ohms:F4}, {c.StatorLeakage.Ohms:F4}, {c.Magnetizing.Ohms:F3} Ω |");
        yield return Line($"| Rr, Xlr, Rfe | {c.RotorResistance.Ohms:F4}, {c.RotorLeakage.Ohms:F4}, {c.CoreLoss!.Value.Ohms:F1} Ω |");
        yield return Line($"| friction, stray | {c.FrictionLoss.Watts:F1}, {c.StrayLoss.Watts:F1} W |");
        yield return Line($"| efficiency that output, voltage, current and cos φ imply | {prediction.RatedEfficiency.Ratio * 100:F2} % |");
        yield return Line($"| no-load current | {prediction.NoLoadCurrent.Amperes:F2} A |");
        yield return Line($"| locked-rotor current and torque over rated | {prediction.LockedRotorCurrentRatio.Value:F2}, {prediction.LockedRotorTorqueRatio.Value:F2} |");
    }

    [Fact]
    public void The_bands_of_the_example_are_about_what_the_product_computes()
    {
        // A member is accepted or refused by a comparison, whose last places differ between computers: within a twentieth.
        var bands = MotorBands.Of(MotorEnsemble.Of(Plates.Pump)!);
        var rows = Page("motor-ensemble").Split('\n').Select(line => line.Split('|', StringSplitOptions.TrimEntries)).ToList();
        void Told(string what, Band<double> band)
        {
            var row = rows.Single(cells => cells.Length == 6 && cells[1] == what);
            double Cell(int place) => double.Parse(row[place], CultureInfo.InvariantCulture);
            Cell(2).ShouldBe(band.P05, 0.05 * band.P05);
            Cell(3).ShouldBe(band.P50, 0.05 * band.P50);
            Cell(4).ShouldBe(band.P95, 0.05 * band.P95);
        }

        Told("no-load current, A", bands.NoLoadCurrent.As(current => current.Amperes));
        Told("locked-rotor current over rated", bands.LockedRotorCurrentRatio.As(ratio => ratio.Value));
        Told("breakdown torque over rated", bands.BreakdownTorqueRatio.As(ratio => ratio.Value));
    }

    private static IEnumerable<string> AccelerationAndDeceleration()
    {
        var up = (Acceleration.Reached)Acceleration.Of(Machines.Pump, MotorOnDriveTests.Pump(18.7), Full);
        yield return Line($"| pump up to {up.Speed.Rpm:F1} rpm | {up.Shortest.Seconds:F3} s | {up.ShortestRamp.Seconds:F3} s |");
        var wheel = Machines.Flywheel(2);
        var losses = (Deceleration.Stops)Deceleration.OnLosses(wheel, MotorOnDriveTests.Pump(25), Full, DriveLoss);
        yield return Line($"| flywheel down, losses alone | {losses.Shortest.Seconds:F1} s | {losses.ShortestRamp.Seconds:F1} s |");
        var resistor = (Deceleration.Stops)Deceleration.OnResistor(
            wheel, MotorOnDriveTests.Pump(25), Full, DriveLoss, DcVoltage.FromVolts(760), Resistance.FromOhms(70));
        yield return Line($"| flywheel down, 70 Ω | {resistor.Shortest.Seconds:F2} s | {resistor.ShortestRamp.Seconds:F2} s |");
    }

    private static IEnumerable<string> Braking()
    {
        var demand = BrakingDemand.Of(Machines.Flywheel(2), MotorOnDriveTests.Pump(25), Full, Duration.FromSeconds(10), DriveLoss)!;
        var resistor = BrakingResistor.For(Ratings.SevenAndAHalf, demand);
        yield return Line($"| J ω₀²/2 and J α ω₀ | {demand.KineticEnergy.Joules / 1000:F2} kJ, {demand.InertiaPeak.Watts / 1000:F2} kW |");
        yield return Line($"| energy, peak, mean at the bus | {demand.Energy.Joules / 1000:F2} kJ, {demand.Peak.Watts / 1000:F2} kW, {demand.Mean.Watts / 1000:F2} kW |");
        yield return Line($"| resistor | {resistor.Lowest!.Value.Ohms:F0} to {resistor.Highest!.Value.Ohms:F0} Ω; for inertia alone at most {resistor.HighestForInertiaAlone!.Value.Ohms:F0} Ω |");
        var bus = BusCapacitor.EnergyBetween(Capacitance.FromFarads(540e-6), BusCapacitor.NoLoadVoltage(LineVoltage.FromVolts(400)), DcVoltage.FromVolts(780));
        yield return Line($"| what 540 µF take from there to 780 V | {bus.Joules:F0} J |");
    }

    private static IEnumerable<string> Boost()
    {
        var required = (TorqueBoost.Required)TorqueBoost.For(Circuits.Pump, MotorOnDriveTests.Pump(25, 0).Characteristic, Torque.FromNewtonMetres(49));
        yield return Line($"| {required.Boost.Percent:F2} % | {required.Frequency.Hertz:F2} Hz | {required.Voltage.Volts:F1} V | {required.Current.Amperes:F2} A |");
    }

    private static IEnumerable<string> Derated()
    {
        var permitted = (DeratedCurrent.Permitted)DeratedCurrent.Of(
            Ratings.SevenAndAHalf, Ratings.SevenAndAHalf.Overloads[0], SwitchingFrequency.FromHertz(6000), Temperature.FromCelsius(45), Length.FromMetres(2000));
        yield return Line(
            $"| {permitted.Switching.Ratio:F3} | {permitted.Ambient.Ratio:F3} | {permitted.Altitude.Ratio:F3} | {permitted.Current.Amperes:F2} A | {permitted.MarginOver(LineCurrent.FromAmperes(14.4)).Percent:F1} % |");
    }

    private static IEnumerable<string> DutyAndSlip()
    {
        static DutySegment Of(double seconds, double torque) => new(Duration.FromSeconds(seconds), Torque.FromNewtonMetres(torque));
        var rms = DutyCycle.RmsTorque([Of(10, 60), Of(50, 30), Of(60, 0) with { IsRest = true }], Fraction.FromRatio(1 / 3.0));
        yield return Line($"| RMS torque | {rms.NewtonMetres:F2} N·m |");
        var law = SlipLaw.Of(Plates.Pump);
        yield return Line($"| speed at 30 Hz, half torque | {law.SpeedAtRatedFlux(ElectricalFrequency.FromHertz(30), Fraction.FromRatio(0.5)).Rpm:F0} rpm |");
    }

    private static IEnumerable<string> StartAndHeating()
    {
        var circuit = Circuits.Pump;
        var start = UnloadedStart.Of(circuit, Inertia.FromKilogramSquareMetres(0.155));
        var (standing, running) = (Slip.FromRatio(1), Slip.FromRatio(0.05));
        yield return Line($"| unloaded start to slip 0.05 | {start.Time(standing, running).Seconds:F3} s, {start.Heat(standing, running, circuit.StatorResistance, circuit.RotorResistance).Joules / 1000:F2} kJ |");
        var drum = LinearMotion.OfDrum(Length.FromMetres(0.3));
        var mass = Mass.FromKilograms(500);
        yield return Line($"| at the drum | {drum.Reflected(mass).KilogramSquareMetres:F2} kg·m², {drum.Lifting(mass, default, Efficiency.FromRatio(1)).NewtonMetres:F1} N·m |");
        var motor = new OverloadByHeating(Duration.FromSeconds(2400), Duration.FromSeconds(4800), Fraction.FromRatio(0.5));
        var (on, off) = (Duration.FromSeconds(600), Duration.FromSeconds(1200));
        yield return Line($"| load once, again and again | {motor.ShortTime(on).Value:F2}, {motor.Intermittent(on, off).Value:F2} times |");
        var unbalance = VoltageUnbalance.Of(LineVoltage.FromVolts(400), LineVoltage.FromVolts(395), LineVoltage.FromVolts(388));
        yield return Line($"| unbalance, rise, output | {unbalance.Percent:F2} %, {VoltageUnbalance.RiseRatio(unbalance).Value:F3}, {VoltageUnbalance.PermittedOutput(unbalance)!.Value.Ratio:F3} |");
    }
}
