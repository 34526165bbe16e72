using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Plant;

/// <summary>The plant with saturated iron, two cages and a shaft that twists.</summary>
public sealed class DetailedPlantTests
{
    private static readonly PlantDetail Nothing = new();

    private static readonly EquivalentCircuit TwoCages = Motor with
    {
        RotorResistance = Resistance.FromOhms(0.55),
        RotorLeakage = Reactance.FromOhms(1.9),
        SecondCage = new RotorCage(Resistance.FromOhms(2.6), Reactance.FromOhms(0.9)),
    };

    [Fact]
    public void With_nothing_added_it_goes_as_the_plain_one()
    {
        foreach (var settings in new[] { ByPlate, ByPlate with { Acceleration = Seconds(0.8) }, ByPlate with { StoppingMethod = StoppingMethod.Coast } })
        {
            var plain = new DriveSimulation(PumpSet, settings) { Order = Forward(50) };
            var detailed = new DriveSimulation(PumpSet with { Detail = Nothing }, settings) { Order = Forward(50) };
            for (var i = 0; i < 14_000; i++)
            {
                if (i == 7000)
                {
                    plain.Order = detailed.Order = Stop();
                }

                plain.Tick();
                detailed.Tick();
                if (i % 100 == 0)
                {
                    var (a, b) = (plain.Readings, detailed.Readings);
                    b.State.ShouldBe(a.State);
                    b.SpeedRpm.ShouldBe(a.SpeedRpm, 1.5, $"at {a.TimeS} s");
                    b.OutputCurrentA.ShouldBe(a.OutputCurrentA, 0.3, $"at {a.TimeS} s");
                    b.DcBusV.ShouldBe(a.DcBusV, 3, $"at {a.TimeS} s");
                }
            }
        }
    }

    [Theory]
    [InlineData(50)]
    [InlineData(25)]
    public void Two_cages_settle_where_the_circuit_of_both_does(double hertz)
    {
        var at = new DriveSimulation(PumpSet with { Motor = TwoCages, Detail = Nothing }, ByPlate) { Order = Forward(hertz) }.Run(10);

        var expected = CircuitSolution.AtSpeed(TwoCages, LineVoltage.FromVolts(at.OutputVoltageV), ElectricalFrequency.FromHertz(at.OutputFrequencyHz), ShaftSpeed.FromRpm(at.SpeedRpm));
        at.OutputCurrentA.ShouldBe(expected.Current.Amperes, 0.001 * expected.Current.Amperes);
        at.TorqueNm.ShouldBe(expected.DevelopedTorque.NewtonMetres, 0.001 * Math.Max(10, expected.DevelopedTorque.NewtonMetres));
    }

    [Fact]
    public void A_blocked_rotor_of_two_cages_has_the_torque_and_current_of_both_and_not_of_one()
    {
        var held = PumpSet with { Motor = TwoCages, Machine = Pump with { Breakaway = Torque.FromNewtonMetres(5000) }, Detail = Nothing };
        var plant = new DetailedPlant(held, Nothing, 1e-3);
        for (var i = 0; i < 8000; i++)
        {
            double busV = plant.Reading.BusV;
            plant.Advance(new PlantCommand<One>(LaneSet.Every<One>(), Math.Sqrt(2.0 / 3) * 120 / busV, default, 50, false, LaneSet.Every<One>(), RectifierMode.Conducting));
        }

        double volts = plant.Reading.OutputV;
        var both = CircuitSolution.AtSpeed(TwoCages, LineVoltage.FromVolts(volts), ElectricalFrequency.FromHertz(50), ShaftSpeed.FromRpm(0));
        var one = CircuitSolution.AtSpeed(TwoCages.WithOneCage(), LineVoltage.FromVolts(volts), ElectricalFrequency.FromHertz(50), ShaftSpeed.FromRpm(0));
        ((double)plant.Reading.CurrentA).ShouldBe(both.Current.Amperes, 0.005 * both.Current.Amperes);
        ((double)plant.Reading.TorqueNm).ShouldBe(both.DevelopedTorque.NewtonMetres, 0.01 * both.DevelopedTorque.NewtonMetres);
        one.DevelopedTorque.NewtonMetres.ShouldBeLessThan(0.8 * both.DevelopedTorque.NewtonMetres);
    }

    [Fact]
    public void Saturated_iron_takes_the_same_current_at_rated_voltage_and_more_beyond()
    {
        NoLoadA(Fraction.FromRatio(0.3), 1).ShouldBe(NoLoadA(default, 1), 0.02 * NoLoadA(default, 1));

        // ψ is about 1.1: (1 − a) + a·ψ⁶ over 1, less what the higher current drops on the stator.
        (NoLoadA(Fraction.FromRatio(0.3), 1.1) / NoLoadA(default, 1.1)).ShouldBe(1 + (0.3 * (Math.Pow(1.1, 6) - 1)), 0.05);
        NoLoadA(Fraction.FromRatio(0.3), 0.8).ShouldBeLessThan(0.85 * NoLoadA(default, 0.8));
    }

    [Fact]
    public void Two_masses_swing_with_their_own_frequency_and_come_to_rest_against_each_other()
    {
        const double Stiffness = 400, MotorJ = 0.035, LoadJ = 0.12;
        var machine = Pump with { Load = new LoadCurve.Constant(default), Breakaway = null };
        var shaft = new DetailedShaft(new ShaftLoad(machine, Motor with { FrictionLoss = default }), new ShaftCoupling(Stiffness, 0));
        var states = new DetailedStates(default, default, default, 100, 100, 0.01, 0);
        states = shaft.Settled(states, 0);
        var (crossings, first, last) = (0, 0.0, 0.0);
        const double H = 1e-5;
        var energy = Energy(states);
        for (var i = 0; i < 200_000; i++)
        {
            var was = states.TwistRad;
            states = Midpoint(shaft, states, H);
            if (was < 0 && states.TwistRad >= 0)
            {
                crossings++;
                first = crossings == 1 ? i * H : first;
                last = i * H;
            }
        }

        var expected = Math.Sqrt(Stiffness * ((1 / MotorJ) + (1 / LoadJ))) / (2 * Math.PI);
        ((crossings - 1) / (last - first)).ShouldBe(expected, 0.001 * expected);
        Energy(states).ShouldBe(energy, 1e-5 * energy);

        static double Energy(in DetailedStates x) =>
            0.5 * ((MotorJ * x.MotorRadPerS * x.MotorRadPerS) + (LoadJ * x.LoadRadPerS * x.LoadRadPerS) + (Stiffness * x.TwistRad * x.TwistRad));
    }

    [Fact]
    public void A_soft_coupling_runs_up_to_the_same_speed_and_stands_after_the_stop()
    {
        var soft = Nothing with { Coupling = new ShaftCoupling(500, 0.5) };
        var drive = new DriveSimulation(PumpSet with { Detail = soft }, ByPlate) { Order = Forward(50) };
        var stiff = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        drive.Run(8).SpeedRpm.ShouldBe(stiff.Run(8).SpeedRpm, 0.5);
        drive.Order = Stop();

        var at = drive.Run(8);

        at.State.ShouldBe(DriveState.Stopped);
        at.SpeedRpm.ShouldBe(0, 1);
    }

    private static double NoLoadA(Fraction ironShare, double voltage)
    {
        var plant = new DetailedPlant(PumpSet with { Motor = Motor with { CoreLoss = null }, Machine = Uncoupled }, Nothing with { IronShare = ironShare }, 1e-3);
        for (var i = 0; i < 3000; i++)
        {
            var ramp = Math.Min(1, i / 1000.0);
            double busV = plant.Reading.BusV;
            plant.Advance(new PlantCommand<One>(LaneSet.Every<One>(), Math.Sqrt(2.0 / 3) * 400 * voltage * Math.Max(ramp, 0.02) / busV, default, 50 * ramp, false, LaneSet.Every<One>(), RectifierMode.Conducting));
        }

        return plant.Reading.CurrentA;
    }

    private static DetailedStates Midpoint(DetailedShaft shaft, in DetailedStates x, double h)
    {
        DetailedStates Rates(in DetailedStates at)
        {
            var (motor, load, twist) = shaft.Rates(at, 0);
            return new DetailedStates(default, default, default, motor, load, twist, 0);
        }

        return x.After(h, Rates(x.After(0.5 * h, Rates(x))));
    }
}
