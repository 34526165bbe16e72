using Runup.Engineering.Motors;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>What an auto-tune finds, against the circuit of the plant, which it never sees.</summary>
public sealed class AutoTuneTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(0.85, 1.2)]
    [InlineData(1.2, 0.8)]
    public void At_rest_the_circuit_is_found_without_turning_the_shaft(double resistances, double magnetizing)
    {
        var motor = Scaled(resistances, magnetizing);
        var drive = new DriveSimulation(PumpSet with { Motor = motor }, ByPlate);
        drive.BeginTune(AutoTune.Stationary);
        var (fastest, peakA) = (0.0, 0.0);
        for (var i = 0; drive.IsTuning && i < 60_000; i++)
        {
            drive.Tick();
            (fastest, peakA) = (Math.Max(fastest, Math.Abs(drive.Readings.SpeedRpm)), Math.Max(peakA, drive.LargestCurrentA));
        }

        var found = drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Done>().Motor;
        var truth = TunedMotor.Of(motor);
        found.StatorResistance.Ohms.ShouldBe(truth.StatorResistance.Ohms, 0.01 * truth.StatorResistance.Ohms);
        found.Leakage.Ohms.ShouldBe(truth.Leakage.Ohms, 0.02 * truth.Leakage.Ohms);
        found.RotorResistance.Ohms.ShouldBe(truth.RotorResistance.Ohms, 0.03 * truth.RotorResistance.Ohms);
        found.Magnetizing.Ohms.ShouldBe(truth.Magnetizing.Ohms, 0.03 * truth.Magnetizing.Ohms);
        fastest.ShouldBe(0);
        peakA.ShouldBeLessThan(1.5 * 14.4);
        drive.Run(0.1).State.ShouldBe(DriveState.Stopped);
    }

    [Fact]
    public void Turning_without_load_it_finds_the_magnetizing_reactance_and_stops_again()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Uncoupled }, ByPlate);
        drive.BeginTune(AutoTune.Rotating);
        var fastest = 0.0;
        for (var i = 0; drive.IsTuning && i < 60_000; i++)
        {
            drive.Tick();
            fastest = Math.Max(fastest, drive.Readings.SpeedRpm);
        }

        var found = drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Done>().Motor;
        found.Magnetizing.Ohms.ShouldBe(TunedMotor.Of(Motor).Magnetizing.Ohms, 0.01 * Motor.Magnetizing.Ohms);
        fastest.ShouldBe(1200, 20);
        drive.Run(1).SpeedRpm.ShouldBe(0, 30);
    }

    [Fact]
    public void A_rotating_one_with_the_machine_coupled_says_that_it_is_loaded()
    {
        var heavy = PumpSet with { Machine = Pump with { Load = new Engineering.Loads.LoadCurve.Constant(Torque.FromNewtonMetres(45)), Breakaway = null } };
        var drive = new DriveSimulation(heavy, ByPlate with { TorqueBoost = Fraction.FromRatio(0.06) });
        drive.BeginTune(AutoTune.Rotating);
        drive.Run(60);

        drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Failed>().Why.ShouldContain("uncouple");
    }

    [Fact]
    public void A_motor_that_was_measured_holds_its_speed_better_than_one_reckoned_from_its_plate()
    {
        // Windings a fifth warmer than the plate lets expect, at low speed under load.
        var motor = Scaled(1.2, 1);
        var system = PumpSet with { Motor = motor, Machine = Pump with { Load = new Engineering.Loads.LoadCurve.Constant(Torque.FromNewtonMetres(35)), Breakaway = null } };
        var drive = new DriveSimulation(PumpSet with { Motor = motor }, ByPlate);
        drive.BeginTune(AutoTune.Stationary);
        drive.Run(40);
        var found = drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Done>().Motor;

        double ErrorRpm(ControlSettings settings) => Math.Abs(new DriveSimulation(system, settings with { Vector = true }) { Order = Forward(3) }.Run(8).SpeedRpm - 90);

        ErrorRpm(ByPlate with { Tuned = found }).ShouldBeLessThan(6);
        ErrorRpm(ByPlate with { Tuned = found }).ShouldBeLessThan(ErrorRpm(ByPlate));
    }

    [Fact]
    public void It_does_not_begin_while_a_run_is_ordered_and_power_off_ends_it()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(10) };
        Should.Throw<InvalidOperationException>(() => drive.BeginTune(AutoTune.Stationary));

        drive = new DriveSimulation(PumpSet, ByPlate);
        drive.BeginTune(AutoTune.Stationary);
        drive.Run(1).State.ShouldBe(DriveState.Running);
        drive.PowerOff();
        drive.Run(0.1).OutputCurrentA.ShouldBe(0);
        drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Failed>();
    }

    private static EquivalentCircuit Scaled(double resistances, double magnetizing) => Motor with
    {
        StatorResistance = Resistance.FromOhms(resistances * Motor.StatorResistance.Ohms),
        RotorResistance = Resistance.FromOhms(resistances * Motor.RotorResistance.Ohms),
        Magnetizing = Reactance.FromOhms(magnetizing * Motor.Magnetizing.Ohms),
    };
}
