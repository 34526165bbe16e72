using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook examples that start from a circuit, to their printed digits; circuits and sources in <c>data/cases/motors.csv</c>.</summary>
public sealed class CircuitExamplesTests
{
    private static EquivalentCircuit Doubled(EquivalentCircuit circuit) =>
        circuit with { RotorResistance = Resistance.FromOhms(2 * circuit.RotorResistance.Ohms) };

    private static Breakdown BreakdownOf(EquivalentCircuit circuit) => Breakdown.Of(circuit, circuit.RatedVoltage, circuit.RatedFrequency);

    private static CircuitSolution Locked(EquivalentCircuit circuit) => CircuitSolution.LockedRotor(circuit, circuit.RatedVoltage, circuit.RatedFrequency);

    /// <summary>A circuit that is only a rotor: stator resistance and magnetizing current neglected, as the examples with ratios do.</summary>
    private static EquivalentCircuit RotorOnly(double reactanceOverResistance) => new()
    {
        RatedVoltage = LineVoltage.FromVolts(400),
        RatedFrequency = ElectricalFrequency.FromHertz(50),
        Poles = PoleCount.FromPoles(4),
        StatorResistance = Resistance.FromOhms(0),
        StatorLeakage = Reactance.FromOhms(0),
        Magnetizing = Reactance.FromOhms(1e12),
        RotorLeakage = Reactance.FromOhms(reactanceOverResistance),
        RotorResistance = Resistance.FromOhms(1),
    };

    [Fact]
    public void Fitzgerald_6_2()
    {
        // Ex. 6.2 p. 320, read: 1176 rpm, 18.8 A, pf 0.846, 5221.6 W, 42.40 N·m, 86 %.
        var solution = PublishedMotors.AtSlip("FITZ-6.2", 0.02);
        solution.Speed.Rpm.ShouldBe(1176, 0.5);
        solution.Current.Amperes.ShouldBe(18.8, 0.05);
        solution.PowerFactor.Ratio.ShouldBe(0.846, 0.0005);
        solution.Output.Watts.ShouldBe(5221.6, 0.05);
        solution.ShaftTorque.NewtonMetres.ShouldBe(42.40, 0.005);
        solution.Efficiency.Ratio.ShouldBe(0.86, 0.005);
    }

    [Fact]
    public void Fitzgerald_6_3()
    {
        // Ex. 6.3 p. 325, read: slip 0.03: I2 23.9 A, 65.4 N·m, 7979 W; largest 175 N·m at 970 rpm; start 77.6 N·m, I2 150 A. Re-solved: 174.6 N·m.
        var solution = PublishedMotors.AtSlip("FITZ-6.2", 0.03);
        solution.RotorCurrent.Amperes.ShouldBe(23.9, 0.05);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(65.4, 0.1);
        (solution.AirGapPower.Watts * 0.97).ShouldBe(7979, 10);
        var circuit = PublishedMotors.Circuit("FITZ-6.2");
        BreakdownOf(circuit).Torque.NewtonMetres.ShouldBe(174.6, 0.05);
        circuit.RatedFrequency.SynchronousSpeed(circuit.Poles).At(BreakdownOf(circuit).Slip).Rpm.ShouldBe(970, 0.5);
        Locked(circuit).DevelopedTorque.NewtonMetres.ShouldBe(77.6, 0.05);
        Locked(circuit).RotorCurrent.Amperes.ShouldBe(150, 0.5);
    }

    [Fact]
    public void Chapman_7_3()
    {
        // Ex. 7-3 (6-3), statement read, answer from memory: 18.88 A at -33.1°, pf 0.833, T_ind 62.8, T_load 56.9 N·m, 83.7 %. Re-solved: 18.89 A, .832, 62.81, 56.84.
        var solution = PublishedMotors.AtSlip("CHAPMAN-25HP", 0.022);
        solution.Current.Amperes.ShouldBe(18.89, 0.005);
        (solution.StatorPhasor.Phase * 180 / Math.PI).ShouldBe(-33.7, 0.05); // cos of the printed angle is .838; the re-solved pf .832 is -33.7°
        solution.PowerFactor.Ratio.ShouldBe(0.832, 0.0005);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(62.81, 0.005);
        solution.ShaftTorque.NewtonMetres.ShouldBe(56.84, 0.005);
        solution.Efficiency.Ratio.ShouldBe(0.837, 0.0005);
    }

    [Fact]
    public void Chapman_7_5()
    {
        // Ex. 7-5 (6-5), exact Thevenin values as published by a public repository: 230.80 N·m, s .2014, 1437.5 rpm, start 106.56; rotor doubled: .4028, 1074.9 rpm, 174.06.
        var circuit = PublishedMotors.Circuit("CHAPMAN-25HP");
        var synchronous = circuit.RatedFrequency.SynchronousSpeed(circuit.Poles);
        BreakdownOf(circuit).Torque.NewtonMetres.ShouldBe(230.80, 0.005);
        BreakdownOf(circuit).Slip.Ratio.ShouldBe(0.2014, 0.00005);
        synchronous.At(BreakdownOf(circuit).Slip).Rpm.ShouldBe(1437.5, 0.05);
        Locked(circuit).DevelopedTorque.NewtonMetres.ShouldBe(106.56, 0.005);
        BreakdownOf(Doubled(circuit)).Torque.NewtonMetres.ShouldBe(230.80, 0.005);
        BreakdownOf(Doubled(circuit)).Slip.Ratio.ShouldBe(0.4028, 0.00005);
        synchronous.At(BreakdownOf(Doubled(circuit)).Slip).Rpm.ShouldBe(1074.9, 0.05);
        Locked(Doubled(circuit)).DevelopedTorque.NewtonMetres.ShouldBe(174.06, 0.005);
    }

    [Fact]
    public void Hubert_5_2()
    {
        // Ex. 5.2 p. 180, read: s .0125, pf .864, 10 391 W, core 606.5, copper 136.6 and 120.2 W. Re-solved: 15.11 A, 75.5 N·m, 90.0 %.
        var solution = PublishedMotors.AtSpeed("HUBERT-5.2", 1185);
        solution.Slip.Ratio.ShouldBe(0.0125, 1e-9);
        solution.Current.Amperes.ShouldBe(15.11, 0.005);
        solution.PowerFactor.Ratio.ShouldBe(0.864, 0.0005);
        solution.ShaftTorque.NewtonMetres.ShouldBe(75.5, 0.05);
        solution.Efficiency.Ratio.ShouldBe(0.900, 0.0005 + 0.00005);

        // The book rounds currents on the way: its powers hold to one per cent.
        solution.Input.Watts.ShouldBe(10_391, 103.91);
        solution.Losses.Core.Watts.ShouldBe(606.5, 6.065);
        solution.Losses.StatorCopper.Watts.ShouldBe(136.6, 1.366);
        solution.Losses.RotorCopper.Watts.ShouldBe(120.2, 1.202);
    }

    [Fact]
    public void Nagrath_9_6()
    {
        // Ex. 9.6 p. 151, read; the book takes 231 V a phase: start 176.48 A, 143.73 N·m; 1450 rpm: 29.95 A, pf .939, 109.07 N·m net, 84.99 % (92.69 % without the
        // rotational loss); largest 324.6 N·m at s .2037.
        var circuit = PublishedMotors.Circuit("NAGRATH-9.6") with { RatedVoltage = PhaseVoltage.FromVolts(231).Line };
        Locked(circuit).Current.Amperes.ShouldBe(176.48, 0.005);
        Locked(circuit).DevelopedTorque.NewtonMetres.ShouldBe(143.73, 0.005);
        var solution = CircuitSolution.AtSpeed(circuit, circuit.RatedVoltage, circuit.RatedFrequency, ShaftSpeed.FromRpm(1450));
        solution.Current.Amperes.ShouldBe(29.95, 0.006);
        solution.PowerFactor.Ratio.ShouldBe(0.939, 0.0005);
        solution.ShaftTorque.NewtonMetres.ShouldBe(109.07, 0.005);
        solution.Efficiency.Ratio.ShouldBe(0.8499, 0.0003); // the book divides by an input of rounded current and power factor
        ((solution.Output.Watts + solution.Losses.Friction.Watts) / solution.Input.Watts).ShouldBe(0.9269, 0.0003);
        BreakdownOf(circuit).Torque.NewtonMetres.ShouldBe(324.6, 0.05);
        BreakdownOf(circuit).Slip.Ratio.ShouldBe(0.2037, 0.00005);
    }

    [Fact]
    public void McPherson_4_3()
    {
        // Ex. 4.3-4.4 p. 72, read: 25.95 A, pf .924; start 146.1 A. Re-solved: largest 105.2 N·m (the book's approximation 104.3 or 105.3).
        var circuit = PublishedMotors.Circuit("MCPHERSON-4.3");
        var solution = PublishedMotors.AtSlip("MCPHERSON-4.3", 0.03);
        solution.Current.Amperes.ShouldBe(25.95, 0.005);
        solution.PowerFactor.Ratio.ShouldBe(0.924, 0.0005);
        Locked(circuit).Current.Amperes.ShouldBe(146.1, 0.05);
        BreakdownOf(circuit).Torque.NewtonMetres.ShouldBe(105.2, 0.05);
    }

    [Fact]
    public void Sen_5_4()
    {
        // Ex. 5.4, from memory. Re-solved: 42.8 A, 163.1 N·m, largest 429.4 N·m. Printed: pf .94, efficiency 87.5 % (re-solved 87.2 in motors-check.csv).
        var solution = PublishedMotors.AtSpeed("SEN-5.4", 1740);
        solution.Current.Amperes.ShouldBe(42.8, 0.05);
        solution.PowerFactor.Ratio.ShouldBe(0.94, 0.005);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(163.1, 0.05);
        BreakdownOf(PublishedMotors.Circuit("SEN-5.4")).Torque.NewtonMetres.ShouldBe(429.4, 0.05);
    }

    [Fact]
    public void Sen_5_6()
    {
        // Ex. 5.6 p. 244, read: starting current six times, full-load slip .05: largest torque 318 % at s .31 (1242 rpm of 1800). Re-solved: s .3101, 318.1 %.
        // Six times: (1/s² + x²) = 36 (1 + x²) in units of the rotor resistance.
        var circuit = RotorOnly(Math.Sqrt((400 - 36) / 35.0));
        var rated = CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(0.05));
        (Locked(circuit).Current.Amperes / rated.Current.Amperes).ShouldBe(6, 1e-9);
        (Locked(circuit).DevelopedTorque.NewtonMetres / rated.DevelopedTorque.NewtonMetres).ShouldBe(36 * 0.05, 1e-9);
        BreakdownOf(circuit).Slip.Ratio.ShouldBe(0.3101, 0.00005);
        (BreakdownOf(circuit).Torque.NewtonMetres / rated.DevelopedTorque.NewtonMetres).ShouldBe(3.181, 0.0005);
        (1800 * (1 - BreakdownOf(circuit).Slip.Ratio)).ShouldBe(1242, 0.5);
    }

    [Fact]
    public void Nagrath_9_10()
    {
        // Ex. 9.10 p. 163, read: starting current five times, full-load slip .04: s .20, largest 2.6, start 1.0 of full load.
        var circuit = RotorOnly(Math.Sqrt((625 - 25) / 24.0));
        var rated = CircuitSolution.At(circuit, circuit.RatedVoltage, circuit.RatedFrequency, Slip.FromRatio(0.04));
        BreakdownOf(circuit).Slip.Ratio.ShouldBe(0.20, 0.0005);
        (BreakdownOf(circuit).Torque.NewtonMetres / rated.DevelopedTorque.NewtonMetres).ShouldBe(2.6, 0.0005);
        (Locked(circuit).DevelopedTorque.NewtonMetres / rated.DevelopedTorque.NewtonMetres).ShouldBe(1.0, 0.0005);
    }

    [Fact]
    public void Wadhwa_4_4()
    {
        // Utilization, ch. 4 Ex. 4 p. 195, read: start 125 %, largest 275 % of full load: s .24, full-load slip .045.
        // Start over largest = 2/(x + 1/x) with x the ratio of reactance to resistance.
        var ratio = 2.75 / 1.25;
        var circuit = RotorOnly(ratio + Math.Sqrt((ratio * ratio) - 1));
        var breakdown = BreakdownOf(circuit);
        breakdown.Slip.Ratio.ShouldBe(0.24, 0.005);
        var full = OperatingPoint.AtShaftTorque(
            circuit, circuit.RatedVoltage, circuit.RatedFrequency, Torque.FromNewtonMetres(breakdown.Torque.NewtonMetres / 2.75));
        full.ShouldBeOfType<OperatingPoint.Runs>().Solution.Slip.Ratio.ShouldBe(0.045, 0.0005);
    }

    [Fact]
    public void Guru_9_2()
    {
        // Ex. 9.2-9.3 p. 521, read: 87.97 %. Re-solved: 87.9 %.
        PublishedMotors.AtSlip("GURU-9.2", 0.025).Efficiency.Ratio.ShouldBe(0.879, 0.0005);
    }
}
