using Runup.Engineering.Braking;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook and field examples of loads, duty and braking.</summary>
public sealed class MechanicsExamplesTests
{
    private static readonly Fraction All = Fraction.FromRatio(1);

    private static DutySegment Segment(double minutes, double from, double to) =>
        new(Duration.FromSeconds(60 * minutes), Torque.FromNewtonMetres(from), Torque.FromNewtonMetres(to));

    private static DutySegment Rest(double minutes) => Segment(minutes, 0, 0) with { IsRest = true };

    private static double Rms(params DutySegment[] segments) => DutyCycle.RmsTorque(segments, All).NewtonMetres;

    [Fact]
    public void Inertia_and_torque_through_a_gear()
    {
        // Gupta & Singhal, Ex. 3.2 p. 34, read: J0 .4, J1 10, gear .1, efficiency .9, 50 N·m, 1400 rpm: J .5, 5.556 N·m, 814.5 W.
        var machine = new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(50)),
            MachineInertia = Inertia.FromKilogramSquareMetres(10),
            MotorInertia = Inertia.FromKilogramSquareMetres(0.4),
            GearRatio = 10,
            GearEfficiency = Efficiency.FromRatio(0.9),
        };
        machine.TotalInertia.KilogramSquareMetres.ShouldBe(0.5, 1e-12);
        var torque = machine.LoadTorque(ShaftSpeed.FromRpm(1400));
        torque.NewtonMetres.ShouldBe(5.556, 0.0005);
        torque.PowerAt(ShaftSpeed.FromRpm(1400)).Watts.ShouldBe(814.5, 0.05);
    }

    [Fact]
    public void Root_mean_square_of_a_mine_hoist()
    {
        // Dubey, Ex. 4.3 p. 53, read: 0 to 400 kW in 5 min, 500 kW 5 min, -400 kW 4 min, rest 2 min: 367 kW.
        Rms(Segment(5, 0, 400), Segment(5, 500, 500), Segment(4, -400, -400), Rest(2)).ShouldBe(367, 0.5);
    }

    [Fact]
    public void Root_mean_square_of_five_stretches()
    {
        // Gupta & Singhal, Ex. 4.6 p. 59, read: 50/100/150/120/0 hp for 20/20/10/20/15 s: 94.74 hp.
        Rms(Segment(20, 50, 50), Segment(20, 100, 100), Segment(10, 150, 150), Segment(20, 120, 120), Rest(15)).ShouldBe(94.74, 0.005);
    }

    [Fact]
    public void Root_mean_square_with_two_rests()
    {
        // J.B. Gupta, Ex. 57 p. 152, read: 100 kW 10 min, rest 5, 50 kW 8, rest 4 min: 66.67 kW.
        Rms(Segment(10, 100, 100), Rest(5), Segment(8, 50, 50), Rest(4)).ShouldBe(66.67, 0.005);
    }

    [Fact]
    public void Root_mean_square_of_torques()
    {
        // J.B. Gupta, Ex. 58 p. 152, read: 240/140/300/200 N·m for 20/10/10/20 min at 720 rpm: 225.4 N·m, 17.0 kW.
        var torque = DutyCycle.RmsTorque([Segment(20, 240, 240), Segment(10, 140, 140), Segment(10, 300, 300), Segment(20, 200, 200)], All);
        torque.NewtonMetres.ShouldBe(225.4, 0.05);
        torque.PowerAt(ShaftSpeed.FromRpm(720)).Watts.ShouldBe(17_000, 50);
    }

    [Fact]
    public void A_third_of_the_rest_counts_with_the_fan_on_the_shaft()
    {
        // Theraja III, Ex. 45.1 p. 1796, read: 100 kW 10, 75 kW 10, 50 kW 20, 0 for 20 min, a third of the rest counted: 66 kW.
        var segments = new[] { Segment(10, 100, 100), Segment(10, 75, 75), Segment(20, 50, 50), Rest(20) };
        DutyCycle.RmsTorque(segments, Fraction.FromRatio(1 / 3.0)).NewtonMetres.ShouldBe(66.48, 0.005);
    }

    [Fact]
    public void Root_mean_square_of_a_ramp()
    {
        // Theraja III, Ex. 45.5 p. 1800, read: 0 to 100 hp in 5 min, 50 hp 10 min, rest 3 min: 48.11 hp.
        Rms(Segment(5, 0, 100), Segment(10, 50, 50), Rest(3)).ShouldBe(48.11, 0.005);
    }

    [Fact]
    public void Braking_a_flywheel()
    {
        // Field example, figures derived by hand: 2.4 kg·m², 1450 to 100 rpm in 4 s: peak J·α·ω₀ 12.9 kW, so at most 38 Ω at 700 V. The stop below has the same rate.
        var circuit = PublishedMotors.Circuit("PRESET-400-37KW");
        var motor = new MotorOnDrive(
            circuit,
            new VoltsPerHertz { BaseFrequency = ElectricalFrequency.FromHertz(50), MaximumVoltage = LineVoltage.FromVolts(400), RatedVoltage = LineVoltage.FromVolts(400) },
            LineCurrent.FromAmperes(100));
        var machine = new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
            MachineInertia = Inertia.FromKilogramSquareMetres(2.4),
            MotorInertia = Inertia.FromKilogramSquareMetres(0),
        };

        // Without load and friction this motor's shaft is at 1450 rpm at 48.333 Hz.
        var demand = BrakingDemand.Of(
            machine, motor, ElectricalFrequency.FromHertz(1450 / 30.0), Duration.FromSeconds(4 * 1450 / 1350.0), ElectricalPower.FromWatts(0)).ShouldNotBeNull();
        demand.From.Rpm.ShouldBe(1450, 0.01);
        demand.InertiaPeak.Watts.ShouldBe(12_900, 50);
        (700 * 700 / demand.InertiaPeak.Watts).ShouldBe(38, 0.5);
        demand.Peak.Watts.ShouldBeInRange(0.85 * demand.InertiaPeak.Watts, demand.InertiaPeak.Watts);
    }

    [Fact]
    public void Capacitors_never_save_a_deceleration()
    {
        // Field example, figures derived by hand: 1 mF from 540 to 800 V takes only 174 J.
        BusCapacitor.EnergyBetween(Capacitance.FromFarads(1e-3), DcVoltage.FromVolts(540), DcVoltage.FromVolts(800)).Joules.ShouldBe(174, 0.5);
    }

    [Theory]
    [InlineData(208, 294)]
    [InlineData(400, 566)]
    [InlineData(480, 679)]
    [InlineData(690, 976)]
    public void Bus_voltage_without_load(double line, double bus)
    {
        // Derived: the peak of the line voltage.
        BusCapacitor.NoLoadVoltage(LineVoltage.FromVolts(line)).Volts.ShouldBe(bus, 0.5);
    }
}
