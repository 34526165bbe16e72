using Runup.Engineering.Motors;
using Runup.Engineering.Standards;
using Runup.Engineering.Starting;
using Runup.Engineering.Supply;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook examples of starting on the line and of bad voltages. Read in public transcriptions of the books' examples with their executed output.</summary>
public sealed class StartingExamplesTests
{
    [Fact]
    public void An_autotransformer_at_65_per_cent()
    {
        // Hubert, Ex. 5.18 p. 231: 125 hp 460 V 6-pole 1141 rpm, locked-rotor torque 125 %, 6.7 kVA/hp: 719 lb·ft, 1051 A; at 65 %: 304 lb·ft, 683 A in the motor, 444 A in the line.
        var output = ShaftPower.FromWatts(125 * Horsepower.Watts);
        var torque = Torque.FromNewtonMetres(1.25 * output.TorqueAt(ShaftSpeed.FromRpm(1141)).NewtonMetres);
        var current = CodeLetter.LockedRotorCurrent(6.7, output, LineVoltage.FromVolts(460));
        var tap = new ReducedVoltageStart(Fraction.FromPercent(65));

        PoundFeet(torque).ShouldBe(719, 0.5);
        current.Amperes.ShouldBe(1051, 0.5);
        PoundFeet(tap.StartingTorque(torque)).ShouldBe(304, 0.5);
        tap.MotorCurrent(current).Amperes.ShouldBe(683, 0.5);
        tap.FromLine(current).Amperes.ShouldBe(444, 0.5);
    }

    [Fact]
    public void An_autotransformer_at_80_per_cent()
    {
        // McPherson, Ex. 4.9 p. 79: 100 hp 2300 V 1750 rpm, 150 A and 120 % torque at full voltage: 1840 V; motor 120 A, line 96 A; full load 300.1 lb·ft, start 230.5 lb·ft.
        var rated = ShaftPower.FromWatts(100 * Horsepower.Watts).TorqueAt(ShaftSpeed.FromRpm(1750));
        var tap = new ReducedVoltageStart(Fraction.FromPercent(80));

        tap.MotorVoltage(LineVoltage.FromVolts(2300)).Volts.ShouldBe(1840, 1e-9);
        tap.MotorCurrent(LineCurrent.FromAmperes(150)).Amperes.ShouldBe(120, 1e-9);
        tap.FromLine(LineCurrent.FromAmperes(150)).Amperes.ShouldBe(96, 1e-9);
        PoundFeet(rated).ShouldBe(300.1, 0.05);
        PoundFeet(tap.StartingTorque(Torque.FromNewtonMetres(1.2 * rated.NewtonMetres))).ShouldBe(230.5, 0.05);
    }

    [Fact]
    public void Least_torques_of_a_design()
    {
        // Hubert, Ex. 5.1 p. 173: 10 hp 60 Hz 6-pole 1150 rpm: rated 45.67 lb·ft; locked rotor, breakdown and pull-up 225, 190 and 165 %: 102.8, 86.8, 75.4 lb·ft.
        var rated = PoundFeet(ShaftPower.FromWatts(10 * Horsepower.Watts).TorqueAt(ShaftSpeed.FromRpm(1150)));

        rated.ShouldBe(45.67, 0.005);
        (2.25 * rated).ShouldBe(102.8, 0.05);
        (1.90 * rated).ShouldBe(86.8, 0.05);
        (1.65 * rated).ShouldBe(75.4, 0.05);
    }

    [Fact]
    public void Ten_per_cent_low_voltage()
    {
        // Hubert, Ex. 5.4 p. 185: 50 hp 1760 rpm: to keep 1760 rpm shed 28.3 lb·ft; locked rotor 169.2 lb·ft (140 % at full voltage); torque −19 %.
        var rated = ShaftPower.FromWatts(50 * Horsepower.Watts).TorqueAt(ShaftSpeed.FromRpm(1760));
        var law = new SlipLaw(Slip.FromRatio(40 / 1800.0), LineVoltage.FromVolts(460), ElectricalFrequency.FromHertz(60), PoleCount.FromPoles(4));
        var low = new ReducedVoltageStart(Fraction.FromPercent(90));
        var left = low.StartingTorque(rated);

        law.SpeedAt(LineVoltage.FromVolts(414), law.RatedFrequency, Fraction.FromRatio(left.NewtonMetres / rated.NewtonMetres)).Rpm.ShouldBe(1760, 1e-6);
        (left.NewtonMetres / rated.NewtonMetres).ShouldBe(1 - 0.19, 1e-9);
        (PoundFeet(rated) - PoundFeet(left)).ShouldBe(28.3, 0.05);
        PoundFeet(low.StartingTorque(Torque.FromNewtonMetres(1.4 * rated.NewtonMetres))).ShouldBe(169.2, 0.05);
    }

    [Fact]
    public void Line_voltages_that_are_not_alike()
    {
        // Hubert, Ex. 5.14 p. 211: 460/455/440 V, rated rise 110 K, 30 hp, insulation of 20 years: unbalance 2.583 % (re-solved), rise +13.3 % to 124.6 K, 7.25 years, .92 of the output, 27.6 hp.
        var unbalance = VoltageUnbalance.Of(LineVoltage.FromVolts(460), LineVoltage.FromVolts(455), LineVoltage.FromVolts(440));
        var rise_K = 110 * VoltageUnbalance.RiseRatio(unbalance).Value;

        unbalance.Percent.ShouldBe(2.583, 0.0005);

        // The book goes on with the unbalance rounded to 2.58 %.
        rise_K.ShouldBe(124.6, 0.1);
        (20 * VoltageUnbalance.LifeRatio(rise_K - 110).Value).ShouldBe(7.25, 0.03);

        // Read off a curve there, off its remembered points here.
        VoltageUnbalance.PermittedOutput(unbalance)!.Value.Ratio.ShouldBe(0.92, 0.015);
        VoltageUnbalance.PermittedOutput(Fraction.FromPercent(6)).ShouldBeNull();
    }

    [Fact]
    public void Locked_rotor_current_on_another_supply()
    {
        // Hubert, Ex. 5.7 p. 192: 151 A at 230 V 60 Hz, limited by reactance: 173.3 A at 220 V 50 Hz.
        var circuit = Locked(0, 230 / Math.Sqrt(3) / 151, 230);

        Current(circuit, 230, 60).ShouldBe(151, 0.01);
        Current(circuit, 220, 50).ShouldBe(173.3, 0.05);
    }

    [Fact]
    public void A_series_reactor_that_limits_the_start()
    {
        // Hubert, Ex. 5.21 p. 236: 7.5 hp 208 V, locked rotor .294 + j.809 Ω, limit 48 A: 4.44 mH, 80.4 V across it.
        var reactor = Inductance.FromHenries(4.44e-3).ReactanceAt(ElectricalFrequency.FromHertz(60));
        var amperes = Current(Locked(0.294, 0.809 + reactor.Ohms, 208), 208, 60);

        amperes.ShouldBe(48, 0.05);
        (amperes * reactor.Ohms).ShouldBe(80.4, 0.1);
    }

    [Fact]
    public void Star_for_delta()
    {
        // Theraja II, Ex. 35.17 p. 1337: 11.2 kW 400 V 50 Hz 6-pole, slip .05, 86.4 A at rest, pf .85, efficiency .88: 26.6 % of full-load torque (re-solved 26.64).
        var rated_A = 11_200 / (Math.Sqrt(3) * 400 * 0.85 * 0.88);
        var ratio = ReducedVoltageStart.TorqueRatio(Ratio.FromValue(86.4 / rated_A), Slip.FromRatio(0.05));

        (100 * ReducedVoltageStart.StarForDelta.StartingTorque(Torque.FromNewtonMetres(ratio.Value)).NewtonMetres).ShouldBe(26.64, 0.01);
    }

    private static double PoundFeet(Torque torque) => torque.NewtonMetres / Horsepower.PoundFoot;

    private static double Current(EquivalentCircuit circuit, double volts, double hertz) =>
        CircuitSolution.LockedRotor(circuit, LineVoltage.FromVolts(volts), ElectricalFrequency.FromHertz(hertz)).Current.Amperes;

    /// <summary>A circuit known by what it is at rest alone: a resistance, a reactance at 60 Hz.</summary>
    private static EquivalentCircuit Locked(double resistance, double reactance, double volts) => new()
    {
        RatedVoltage = LineVoltage.FromVolts(volts),
        RatedFrequency = ElectricalFrequency.FromHertz(60),
        Poles = PoleCount.FromPoles(4),
        StatorResistance = Resistance.FromOhms(0.5 * resistance),
        StatorLeakage = Reactance.FromOhms(0.5 * reactance),
        Magnetizing = Reactance.FromOhms(1e12),
        RotorLeakage = Reactance.FromOhms(0.5 * reactance),
        RotorResistance = Resistance.FromOhms((0.5 * resistance) + 1e-9),
    };
}
