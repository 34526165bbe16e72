using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook examples of a motor at other frequencies and voltages, to their printed digits.</summary>
public sealed class FrequencyControlExamplesTests
{
    private static EquivalentCircuit Dubey => PublishedMotors.Circuit("DUBEY-6.9");

    // The examples of this section neglect the magnetizing branch.
    private static EquivalentCircuit DubeyWithoutMagnetizing => Dubey with { Magnetizing = Reactance.FromOhms(1e12) };

    private static SlipLaw DubeyLaw => new(Slip.FromRatio(130 / 1500.0), LineVoltage.FromVolts(400), Hertz(50), PoleCount.FromPoles(4));

    private static ElectricalFrequency Hertz(double hertz) => ElectricalFrequency.FromHertz(hertz);

    private static LineVoltage AtConstantFlux(double hertz) => LineVoltage.FromVolts(400 * hertz / 50);

    private static Fraction Part(double ratio) => Fraction.FromRatio(ratio);

    [Theory]
    [InlineData(10, 22.93)]
    [InlineData(15, 31.18)]
    [InlineData(20, 37.44)]
    [InlineData(25, 42.22)]
    [InlineData(30, 45.94)]
    [InlineData(35, 48.89)]
    [InlineData(40, 51.27)]
    [InlineData(45, 53.24)]
    [InlineData(50, 54.88)]
    public void Breakdown_torque_at_constant_volts_per_hertz(double hertz, double torque)
    {
        // Dubey, Ex. 6.9 p. 199, read; magnetizing reactance neglected.
        Breakdown.Of(DubeyWithoutMagnetizing, AtConstantFlux(hertz), Hertz(hertz)).Torque.NewtonMetres.ShouldBe(torque, 0.005);
    }

    [Fact]
    public void Start_at_ten_hertz()
    {
        // Dubey, Ex. 6.9 p. 199, read: start torque .549 and current .33 of the 50 Hz values.
        var low = CircuitSolution.LockedRotor(DubeyWithoutMagnetizing, AtConstantFlux(10), Hertz(10));
        var full = CircuitSolution.LockedRotor(DubeyWithoutMagnetizing, AtConstantFlux(50), Hertz(50));
        (low.DevelopedTorque.NewtonMetres / full.DevelopedTorque.NewtonMetres).ShouldBe(0.549, 0.0005);
        (low.Current.Amperes / full.Current.Amperes).ShouldBe(0.33, 0.005);
    }

    [Theory]
    [InlineData(5, 84.3)]
    [InlineData(10, 123.8)]
    [InlineData(15, 159.2)]
    [InlineData(20, 193.7)]
    [InlineData(25, 228.0)]
    [InlineData(30, 262.3)]
    [InlineData(35, 296.7)]
    [InlineData(40, 331.1)]
    [InlineData(45, 365.5)]
    [InlineData(50, 400)]
    public void Voltage_for_constant_breakdown_torque(double hertz, double volts)
    {
        // Dubey, Ex. 6.10 p. 201, read: the boost that low speed asks for.
        var torque = Breakdown.Of(DubeyWithoutMagnetizing, LineVoltage.FromVolts(400), Hertz(50)).Torque;
        Breakdown.VoltageFor(DubeyWithoutMagnetizing, Hertz(hertz), torque).Volts.ShouldBe(volts, 0.05);
    }

    [Fact]
    public void Straight_line_of_torque_and_slip_speed()
    {
        // Dubey, Ex. 6.11 p. 202, read: 30 Hz at 80 %: 796 rpm; 1000 rpm at full torque: 37.67 Hz; 40 Hz at 1100 rpm: 19.52 of 25.37 N·m.
        DubeyLaw.SpeedAtRatedFlux(Hertz(30), Part(0.8)).Rpm.ShouldBe(796, 0.5);
        DubeyLaw.FrequencyAtRatedFlux(ShaftSpeed.FromRpm(1000), Part(1)).Hertz.ShouldBe(37.67, 0.005);
        (25.37 * DubeyLaw.TorqueAtRatedFlux(Hertz(40), ShaftSpeed.FromRpm(1100)).Ratio).ShouldBe(19.52, 0.005);
    }

    [Fact]
    public void The_same_while_braking()
    {
        // Dubey, Ex. 6.12 p. 204, read: 30 Hz at 80 %: 1004 rpm; 1000 rpm at full torque: 29.0 Hz; 40 Hz at 1300 rpm: -19.52 N·m.
        DubeyLaw.SpeedAtRatedFlux(Hertz(30), Part(-0.8)).Rpm.ShouldBe(1004, 0.5);
        DubeyLaw.FrequencyAtRatedFlux(ShaftSpeed.FromRpm(1000), Part(-1)).Hertz.ShouldBe(29.0, 0.05);
        (25.37 * DubeyLaw.TorqueAtRatedFlux(Hertz(40), ShaftSpeed.FromRpm(1300)).Ratio).ShouldBe(-19.52, 0.005);
    }

    [Fact]
    public void Breakdown_torque_above_base_frequency()
    {
        // Dubey, Ex. 6.13 p. 204, read: 60 Hz at 400 V: .727 of the torque at 50 Hz.
        var (at50, at60) = (Breakdown.Of(DubeyWithoutMagnetizing, LineVoltage.FromVolts(400), Hertz(50)), Breakdown.Of(DubeyWithoutMagnetizing, LineVoltage.FromVolts(400), Hertz(60)));
        (at60.Torque.NewtonMetres / at50.Torque.NewtonMetres).ShouldBe(0.727, 0.0005);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(30)]
    [InlineData(10)]
    public void The_same_slip_speed_at_the_same_flux_is_the_same_current_and_torque(double hertz)
    {
        // Dubey, Ex. 6.14 p. 209 (identity) and Ex. 6.15 p. 210, read: 7.244 A, 22.71 N·m at any frequency.
        var flux = CircuitSolution.AtSpeed(Dubey, LineVoltage.FromVolts(400), Hertz(50), ShaftSpeed.FromRpm(1370)).AirGapVoltage.Volts / 50;
        var speed = ShaftSpeed.FromRpm((30 * hertz) - 130);
        var at400 = CircuitSolution.AtSpeed(Dubey, LineVoltage.FromVolts(400), Hertz(hertz), speed);
        var solution = CircuitSolution.AtSpeed(Dubey, LineVoltage.FromVolts(400 * flux * hertz / at400.AirGapVoltage.Volts), Hertz(hertz), speed);
        solution.Current.Amperes.ShouldBe(7.244, 0.0005);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(22.71, 0.005);
    }

    [Fact]
    public void Speeds_at_constant_slip_speed()
    {
        // Dubey, Ex. 6.15 p. 210, read: 30 Hz: 770 rpm; 1200 rpm needs 44.33 Hz; half torque at 30 Hz: 835 rpm; braking at rated torque, 45 Hz: 1480 rpm.
        DubeyLaw.SpeedAtRatedFlux(Hertz(30), Part(1)).Rpm.ShouldBe(770, 0.5);
        DubeyLaw.FrequencyAtRatedFlux(ShaftSpeed.FromRpm(1200), Part(1)).Hertz.ShouldBe(44.33, 0.005);
        DubeyLaw.SpeedAtRatedFlux(Hertz(30), Part(0.5)).Rpm.ShouldBe(835, 0.5);
        DubeyLaw.SpeedAtRatedFlux(Hertz(45), Part(-1)).Rpm.ShouldBe(1480, 0.5);
    }

    [Fact]
    public void The_same_motor_at_415_volts()
    {
        // Gupta & Singhal, Ex. 6.19 p. 195, read: 7.52 A, 24.45 N·m; 1200 rpm: 44.33 Hz.
        var solution = CircuitSolution.AtSpeed(Dubey, LineVoltage.FromVolts(415), Hertz(50), ShaftSpeed.FromRpm(1370));
        solution.Current.Amperes.ShouldBe(7.52, 0.005);
        solution.DevelopedTorque.NewtonMetres.ShouldBe(24.45, 0.005);
    }

    [Fact]
    public void Half_voltage_and_half_frequency()
    {
        // Wadhwa, ch. 4 Ex. 5 p. 195, read: R1 = R2 .05, X1 = X2 .3: largest torque .9207, starting torque 1.85 of full voltage and frequency.
        var circuit = Machine(0.05, 0.3, 0.05);
        Largest(circuit, 200, 25).ShouldBe(0.9207 * Largest(circuit, 400, 50), 0.00005 * Largest(circuit, 400, 50));
        Start(circuit, 200, 25).ShouldBe(1.85 * Start(circuit, 400, 50), 0.005 * Start(circuit, 400, 50));
    }

    [Fact]
    public void Twenty_hertz_against_fifty()
    {
        // Gupta & Singhal, Ex. 6.14 p. 181, read: R1 = R2 .04, X1 = X2 .2: largest .863, start 2.08.
        var circuit = Machine(0.04, 0.2, 0.04);
        Largest(circuit, 160, 20).ShouldBe(0.863 * Largest(circuit, 400, 50), 0.0005 * Largest(circuit, 400, 50));
        Start(circuit, 160, 20).ShouldBe(2.08 * Start(circuit, 400, 50), 0.005 * Start(circuit, 400, 50));
    }

    [Fact]
    public void Sixty_hertz_motor_on_fifty_hertz()
    {
        // Hubert, Ex. 5.9 p. 194, read: 1770 rpm at 60 Hz, same load at 50 Hz: 1470.2 rpm, s .0199. The book rounds the first slip to .0166 on the way; unrounded 1470.
        var law = new SlipLaw(Slip.FromRatio(30 / 1800.0), LineVoltage.FromVolts(460), Hertz(60), PoleCount.FromPoles(4));
        law.SpeedAtRatedFlux(Hertz(50), Part(1)).Rpm.ShouldBe(1470.2, 0.25);
    }

    [Fact]
    public void Low_voltage_and_low_frequency()
    {
        // Hubert, Ex. 5.6 p. 190, read: 60 Hz 230 V 6-pole 20 hp 1175 rpm; voltage -10 %, frequency -6 %, same torque: 1100.7 rpm, 18.74 hp.
        var law = new SlipLaw(Slip.FromRatio(25 / 1200.0), LineVoltage.FromVolts(230), Hertz(60), PoleCount.FromPoles(6));
        var speed = law.SpeedAt(LineVoltage.FromVolts(207), Hertz(56.4), Part(1));
        speed.Rpm.ShouldBe(1100.7, 0.05);
        (20 * speed.Rpm / 1175).ShouldBe(18.74, 0.005);
    }

    [Fact]
    public void Fifty_to_sixty_hertz_at_the_same_voltage()
    {
        // Nagrath & Kothari, Ex. 9.17 p. 187, read: s_maxT .2, R1 neglected: start current .838, start torque .703, largest torque .694.
        // The printed start torque is in synchronous watts: the torque itself falls once more with the speed of the field, to .586.
        var circuit = Machine(0, 0.5, 0.2);
        Locked(circuit, 60).Current.Amperes.ShouldBe(0.838 * Locked(circuit, 50).Current.Amperes, 0.0005 * Locked(circuit, 50).Current.Amperes);
        Locked(circuit, 60).AirGapPower.Watts.ShouldBe(0.703 * Locked(circuit, 50).AirGapPower.Watts, 0.0005 * Locked(circuit, 50).AirGapPower.Watts);
        Start(circuit, 400, 60).ShouldBe(0.586 * Start(circuit, 400, 50), 0.0005 * Start(circuit, 400, 50));
        Largest(circuit, 400, 60).ShouldBe(0.694 * Largest(circuit, 400, 50), 0.0005 * Largest(circuit, 400, 50));
        static CircuitSolution Locked(EquivalentCircuit circuit, double hertz) =>
            CircuitSolution.LockedRotor(circuit, LineVoltage.FromVolts(400), Hertz(hertz));
    }

    [Theory]
    [InlineData(45, 1296)]
    [InlineData(30, 846)]
    [InlineData(15, 396)]
    public void Slip_speed_stays_at_constant_flux_and_torque(double hertz, double rpm)
    {
        // Mohan, Electric Drives, from memory: 4-pole 60 Hz, 1746 rpm at 40 N·m; the same torque at 45, 30, 15 Hz.
        var law = new SlipLaw(Slip.FromRatio(54 / 1800.0), LineVoltage.FromVolts(460), Hertz(60), PoleCount.FromPoles(4));
        law.SpeedAtRatedFlux(Hertz(hertz), Part(1)).Rpm.ShouldBe(rpm, 0.5);
    }

    private static double Largest(EquivalentCircuit circuit, double volts, double hertz) =>
        Breakdown.Of(circuit, LineVoltage.FromVolts(volts), Hertz(hertz)).Torque.NewtonMetres;

    private static double Start(EquivalentCircuit circuit, double volts, double hertz) =>
        CircuitSolution.LockedRotor(circuit, LineVoltage.FromVolts(volts), Hertz(hertz)).DevelopedTorque.NewtonMetres;

    /// <summary>A circuit with equal leakages and no magnetizing branch.</summary>
    private static EquivalentCircuit Machine(double statorOhm, double leakageOhm, double rotorOhm) => new()
    {
        RatedVoltage = LineVoltage.FromVolts(400),
        RatedFrequency = Hertz(50),
        Poles = PoleCount.FromPoles(4),
        StatorResistance = Resistance.FromOhms(statorOhm),
        StatorLeakage = Reactance.FromOhms(leakageOhm),
        Magnetizing = Reactance.FromOhms(1e12),
        RotorLeakage = Reactance.FromOhms(leakageOhm),
        RotorResistance = Resistance.FromOhms(rotorOhm),
    };
}
