using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>Loops whose gains go by the motor's rated values, on motors a hundred times apart.</summary>
public sealed class SizesTests
{
    /// <summary>Power in W, current in A, speed in rpm, power factor, inertia of the rotor in kg·m².</summary>
    public static TheoryData<double, double, double, double, double> Motors => new()
    {
        { 750, 1.9, 1410, 0.76, 0.002 },
        { 4000, 8.1, 1440, 0.82, 0.012 },
        { 22_000, 41, 1470, 0.85, 0.15 },
        { 75_000, 135, 1484, 0.87, 0.8 },
    };

    [Theory]
    [MemberData(nameof(Motors))]
    public void Vector_control_holds_the_speed_of_every_size_loaded_and_empty(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var (system, settings) = Set(powerW, currentA, rpm, powerFactor, inertia);
        var ratedNm = powerW / (rpm * Math.PI / 30);
        foreach (var (hertz, share) in new[] { (50.0, 0.9), (50, 0), (20, 1), (20, 0), (3, 0.9), (3, 0) })
        {
            var machine = system.Machine with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(share * ratedNm)) };
            var drive = new DriveSimulation(system with { Machine = machine }, settings with { Vector = true }) { Order = Forward(hertz) };

            var at = drive.Run(12);

            at.State.ShouldBe(DriveState.Running, $"{hertz} Hz, {share}: {at.Trip}");
            at.SpeedRpm.ShouldBe(30 * hertz, 18, $"{hertz} Hz, {share}");
            drive.Order = Stop();
            drive.Run(30).State.ShouldBe(DriveState.Stopped, $"{hertz} Hz, {share}: {drive.Readings.Trip}");
        }
    }

    [Theory]
    [MemberData(nameof(Motors))]
    public void An_auto_tune_at_rest_finds_every_size(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var (system, settings) = Set(powerW, currentA, rpm, powerFactor, inertia);
        var drive = new DriveSimulation(system, settings);
        drive.BeginTune(AutoTune.Stationary);
        drive.Run(90);

        var found = drive.TuneOutcome.ShouldBeOfType<AutoTuneOutcome.Done>().Motor;
        var truth = TunedMotor.Of(system.Motor);
        (found.StatorResistance.Ohms / truth.StatorResistance.Ohms).ShouldBe(1, 0.02);
        (found.Leakage.Ohms / truth.Leakage.Ohms).ShouldBe(1, 0.03);
        (found.RotorResistance.Ohms / truth.RotorResistance.Ohms).ShouldBe(1, 0.04);
        // At rest the magnetizing branch of a large motor shows least; turning without load it is found within a hundredth.
        (found.Magnetizing.Ohms / truth.Magnetizing.Ohms).ShouldBe(1, 0.08);
    }

    [Theory]
    [MemberData(nameof(Motors))]
    public void A_spinning_fan_of_every_size_is_caught_and_carried_over_a_gap(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var (system, settings) = Set(powerW, currentA, rpm, powerFactor, inertia);
        var ratedNm = powerW / (rpm * Math.PI / 30);
        var fan = system with
        {
            Machine = system.Machine with { Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(0.6 * ratedNm), ShaftSpeed.FromRpm(1500)), MachineInertia = Inertia.FromKilogramSquareMetres(30 * inertia) },
        };
        var slow = settings with { Acceleration = Seconds(20), Deceleration = Seconds(20), FlyingRestart = true, UndervoltageRideThrough = true };
        var drive = new DriveSimulation(fan, slow) { Order = Forward(45) };
        drive.Run(40).SpeedRpm.ShouldBe(1350, 45);
        drive.SupplyPresent = false;
        drive.Run(0.5).State.ShouldBe(DriveState.Running);
        drive.SupplyPresent = true;
        drive.Run(10).State.ShouldBe(DriveState.Running);
        drive.Order = Stop(StopKind.Coast);
        drive.Run(2);
        drive.Order = Forward(45);

        drive.Run(40).State.ShouldBe(DriveState.Running, drive.Readings.Trip.ToString());
        drive.Readings.SpeedRpm.ShouldBe(1350, 45);
    }

    internal static (DriveSystem System, ControlSettings Settings) Set(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var plate = new Nameplate
        {
            Output = ShaftPower.FromWatts(powerW),
            Voltage = LineVoltage.FromVolts(400),
            Current = LineCurrent.FromAmperes(currentA),
            Frequency = ElectricalFrequency.FromHertz(50),
            Speed = ShaftSpeed.FromRpm(rpm),
            PowerFactor = PowerFactor.FromRatio(powerFactor),
        };
        var motor = CircuitFit.Of(plate).ShouldBeOfType<CircuitFit.Fitted>().Circuit;
        var system = new DriveSystem
        {
            Motor = motor,
            Machine = new DrivenMachine
            {
                Load = new LoadCurve.Constant(default),
                MachineInertia = Inertia.FromKilogramSquareMetres(2 * inertia),
                MotorInertia = Inertia.FromKilogramSquareMetres(inertia),
            },
            Drive = Size(powerW, currentA),
            SupplyVoltage = LineVoltage.FromVolts(400),
            SupplyFrequency = ElectricalFrequency.FromHertz(50),
        };
        var values = MotorSettings.With(Runup.Settings.Setting.MotorRatedPower, powerW).With(Runup.Settings.Setting.MotorRatedCurrent, currentA)
            .With(Runup.Settings.Setting.MotorRatedSpeed, rpm * Math.PI / 30).With(Runup.Settings.Setting.MotorPowerFactor, powerFactor);
        return (system, ControlSettings.From(values, system.Drive) with { Acceleration = Seconds(6), Deceleration = Seconds(8) });
    }

    private static DriveRating Size(double powerW, double currentA) => Drive with
    {
        NominalPower = ShaftPower.FromWatts(powerW),
        Overloads = [new("normal", LineCurrent.FromAmperes(1.15 * currentA), Fraction.FromRatio(1.1), Seconds(60), Seconds(600))],
        PeakCurrent = LineCurrent.FromAmperes(1.8 * currentA),
        OvercurrentTrip = LineCurrent.FromAmperes(2.4 * currentA),
        BusCapacitance = Capacitance.FromFarads(540e-6 * powerW / 7500),
    };
}
