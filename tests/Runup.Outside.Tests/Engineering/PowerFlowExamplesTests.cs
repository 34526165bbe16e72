using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>
/// Textbook examples of slip, speed, torque and power flow, to their printed digits. Unless said otherwise the figures were read in public
/// transcriptions of the books' examples with their executed output.
/// </summary>
public sealed class PowerFlowExamplesTests
{
    private static SynchronousSpeed Synchronous(double hertz, int poles) => ElectricalFrequency.FromHertz(hertz).SynchronousSpeed(PoleCount.FromPoles(poles));

    private static ElectricalPower Electrical(double watts) => ElectricalPower.FromWatts(watts);

    private static ShaftPower Shaft(double watts) => ShaftPower.FromWatts(watts);

    private static Slip SlipAt(double hertz, int poles, double rpm) => Synchronous(hertz, poles).SlipOf(ShaftSpeed.FromRpm(rpm));

    [Fact]
    public void Speeds_at_five_per_cent_slip()
    {
        // Sen, Ex. 5.1 p. 219: 4-pole 60 Hz, slip 5 %: 1800 rpm, 1710 rpm, rotor 3 Hz. Slip speed 90 rpm.
        var synchronous = Synchronous(60, 4);
        synchronous.Rpm.ShouldBe(1800, 1e-9);
        synchronous.At(Slip.FromRatio(0.05)).Rpm.ShouldBe(1710, 1e-9);
        PublishedMotors.AtSlip("SEN-5.4", 0.05).RotorFrequency.Hertz.ShouldBe(3, 1e-9);
    }

    [Fact]
    public void Air_gap_power_from_output_and_friction()
    {
        // Sen, Ex. 5.2 p. 226: 15 hp (11 190 W), 1728 rpm, friction 750 W: developed 11 940, air gap 12 437.5, rotor copper 497.5 W.
        var flow = PowerFlow.FromDeveloped(Shaft(11_190 + 750), SlipAt(60, 4, 1728));
        flow.Developed.Watts.ShouldBe(11_940, 1e-6);
        flow.AirGap.Watts.ShouldBe(12_437.5, 0.05);
        flow.RotorCopper.Watts.ShouldBe(497.5, 0.05);
    }

    [Fact]
    public void Rotor_loss_from_input_and_speed()
    {
        // Fitzgerald 6th ed., Ex. 6.1 p. 318: 2-pole 60 Hz, 3502 rpm, 15.7 kW, 22.6 A, 0.20 Ω: 419 W.
        var flow = PowerFlow.FromInput(Electrical(15_700), Electrical(3 * 22.6 * 22.6 * 0.20), SlipAt(60, 2, 3502));
        flow.RotorCopper.Watts.ShouldBe(419, 0.5);
    }

    [Fact]
    public void Torque_of_ten_horsepower()
    {
        // Chapman, Ex. 7-1 (6-1), from memory: 208 V 10 hp 4-pole 60 Hz, slip 5 %: 41.7 N·m.
        Shaft(10 * 746).TorqueAt(Synchronous(60, 4).At(Slip.FromRatio(0.05))).NewtonMetres.ShouldBe(41.7, 0.05);
    }

    [Fact]
    public void Power_flow_of_fifty_horsepower()
    {
        // Chapman, Ex. 7-2 (6-2), answer from memory: 480 V, 60 A, pf 0.85: P_AG 38.6 kW, P_conv 37.9 kW, P_out 37.3 kW, 88 %.
        var input = Math.Sqrt(3) * 480 * 60 * 0.85;
        var flow = PowerFlow.FromRotorCopper(Electrical(input - 2000 - 1800), Electrical(700));
        flow.AirGap.Watts.ShouldBe(38_600, 50);
        flow.Developed.Watts.ShouldBe(37_900, 50);
        (flow.Developed.Watts - 600).ShouldBe(37_300, 50);
        ((flow.Developed.Watts - 600) / input).ShouldBe(0.88, 0.005);
    }

    [Fact]
    public void Twice_the_torque_is_twice_the_slip()
    {
        // Chapman, Ex. 7-4 (6-4), answer from memory: 2-pole 50 Hz, 15 kW at 2950 rpm: 1.67 %, 48.6 N·m; torque doubled: 3.33 %, 2900 rpm, 29.5 kW.
        var law = new SlipLaw(SlipAt(50, 2, 2950), LineVoltage.FromVolts(460), ElectricalFrequency.FromHertz(50), PoleCount.FromPoles(2));
        var torque = Shaft(15_000).TorqueAt(ShaftSpeed.FromRpm(2950));
        law.RatedSlip.Ratio.ShouldBe(0.0167, 0.00005);
        torque.NewtonMetres.ShouldBe(48.6, 0.05);
        var speed = law.SpeedAt(law.RatedVoltage, law.RatedFrequency, Fraction.FromRatio(2));
        speed.Rpm.ShouldBe(2900, 0.5);
        Torque.FromNewtonMetres(2 * torque.NewtonMetres).PowerAt(speed).Watts.ShouldBe(29_500, 50);
    }

    [Fact]
    public void Shaft_power_and_torque_from_rotor_copper()
    {
        // Hubert, Ex. 4.5 p. 152: rotor input 14 580 W, rotor copper 263 W, 4-pole 60 Hz: 1767.5 rpm, 19.19 hp, 57.03 lb·ft.
        var flow = PowerFlow.FromRotorCopper(Electrical(14_580), Electrical(263));
        Synchronous(60, 4).At(flow.Slip).Rpm.ShouldBe(1767.5, 0.05);
        (flow.Developed.Watts / 746).ShouldBe(19.19, 0.005);
        (flow.DevelopedTorque(Synchronous(60, 4)).NewtonMetres / Horsepower.PoundFoot).ShouldBe(57.03, 0.03);
    }

    [Fact]
    public void Power_flow_of_a_hundred_horsepower()
    {
        // Hubert, Ex. 4.6 p. 159: 100 hp, 6-pole 60 Hz, efficiency 91.0 %; core 1697, stator copper 2803, rotor copper 1549 W: gap 77 478 W, 1176.0 rpm, 446.6 lb·ft;
        // friction and stray 1329 W.
        var input = 100 * 746 / 0.91;
        var stator = PowerFlow.FromInput(Electrical(input), Electrical(1697 + 2803), Slip.FromRatio(0)).AirGap;
        stator.Watts.ShouldBe(77_478, 0.6);
        var flow = PowerFlow.FromRotorCopper(stator, Electrical(1549));
        var speed = Synchronous(60, 6).At(flow.Slip);
        speed.Rpm.ShouldBe(1176.0, 0.05);
        (flow.Developed.Watts - (100 * 746)).ShouldBe(1329, 0.6);
        (Shaft(100 * 746).TorqueAt(speed).NewtonMetres / Horsepower.PoundFoot).ShouldBe(446.6, 0.3);
    }

    [Fact]
    public void Half_the_torque_is_half_the_slip()
    {
        // McPherson, Ex. 4.5 p. 73: 10 hp 4-pole 60 Hz 1745 rpm; half torque: slip .0306, 1772.5 rpm, 5.08 hp.
        var law = new SlipLaw(SlipAt(60, 4, 1745), LineVoltage.FromVolts(230), ElectricalFrequency.FromHertz(60), PoleCount.FromPoles(4));
        law.RatedSlip.Ratio.ShouldBe(0.0306, 0.00005);
        var speed = law.SpeedAtRatedFlux(law.RatedFrequency, Fraction.FromRatio(0.5));
        speed.Rpm.ShouldBe(1772.5, 0.05);
        (10 * 0.5 * speed.Rpm / 1745).ShouldBe(5.08, 0.005);
    }

    [Fact]
    public void Speeds_and_torque_of_ten_metric_horsepower()
    {
        // Gupta & Singhal, Ex. 6.1 p. 153: 10 metric hp, 50 Hz 4-pole, slips 1 % and 4 %: 1485 and 1440 rpm, 48.77 N·m.
        Synchronous(50, 4).At(Slip.FromRatio(0.01)).Rpm.ShouldBe(1485, 1e-6);
        var loaded = Synchronous(50, 4).At(Slip.FromRatio(0.04));
        loaded.Rpm.ShouldBe(1440, 1e-6);
        Shaft(10 * Horsepower.MetricWatts).TorqueAt(loaded).NewtonMetres.ShouldBe(48.77, 0.005);
    }

    [Fact]
    public void Rotor_alternations_tell_the_slip()
    {
        // Gupta & Singhal, Ex. 6.2 p. 153: 80 kW into the rotor, 6-pole 50 Hz, 100 alternations a minute: slip .0333, 966.67 rpm, 77.33 kW, 888.9 W a phase, 763.9 N·m.
        var flow = new PowerFlow(Electrical(80_000), Slip.FromRatio(100 / 60.0 / 50));
        flow.Slip.Ratio.ShouldBe(0.0333, 0.00005);
        Synchronous(50, 6).At(flow.Slip).Rpm.ShouldBe(966.67, 0.005);
        flow.Developed.Watts.ShouldBe(77_330, 5);
        (flow.RotorCopper.Watts / 3).ShouldBe(888.9, 0.05);
        flow.DevelopedTorque(Synchronous(50, 6)).NewtonMetres.ShouldBe(763.9, 0.05);
    }

    [Fact]
    public void Input_from_shaft_torque_and_lost_torque()
    {
        // Nagrath & Kothari, Ex. 9.1 p. 148: 160 N·m, 6-pole 50 Hz, rotor 120 cycles a minute, lost torque 10 N·m, stator 800 W: 712.1 W, 18 602 W, 86.47 %.
        var slip = Slip.FromRatio(120 / 60.0 / 50);
        var speed = Synchronous(50, 6).At(slip);
        var flow = PowerFlow.FromDeveloped(Torque.FromNewtonMetres(170).PowerAt(speed), slip);
        flow.RotorCopper.Watts.ShouldBe(712.1, 0.1);
        (flow.AirGap.Watts + 800).ShouldBe(18_602, 1);
        (Torque.FromNewtonMetres(160).PowerAt(speed).Watts / (flow.AirGap.Watts + 800)).ShouldBe(0.8647, 0.00005);
    }

    [Fact]
    public void Loss_segregation()
    {
        // McPherson, Ex. 4.1-4.2 p. 70: 460 V 25 A pf 0.85; stator 1000, rotor 500, core 800, friction 250, stray 200 W, 4-pole 60 Hz: 16 931, 15 931, 14 181 W, 83.76 %,
        // slip .0314, 1743.5 rpm, 77.67 N·m. The book takes the core loss after the gap.
        var input = Math.Sqrt(3) * 460 * 25 * 0.85;
        input.ShouldBe(16_931, 0.5);
        var flow = PowerFlow.FromRotorCopper(PowerFlow.FromInput(Electrical(input), Electrical(1000), Slip.FromRatio(0)).AirGap, Electrical(500));
        flow.AirGap.Watts.ShouldBe(15_931, 0.5);
        flow.Slip.Ratio.ShouldBe(0.0314, 0.00005);
        var speed = Synchronous(60, 4).At(flow.Slip);
        speed.Rpm.ShouldBe(1743.5, 0.05);
        var output = Shaft(flow.Developed.Watts - 800 - 250 - 200);
        output.Watts.ShouldBe(14_181, 0.5);
        (output.Watts / input).ShouldBe(0.8376, 0.00005);
        output.TorqueAt(speed).NewtonMetres.ShouldBe(77.67, 0.005);
    }
}
