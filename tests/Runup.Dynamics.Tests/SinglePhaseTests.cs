using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests;

public sealed class SinglePhaseTests
{
    /// <summary>Two-pulse bridge: the idle bus stands at the peak, √2 times the supply; loaded it lies between the mean, 2√2/π, and the peak.</summary>
    [Fact]
    public void A_small_drive_on_one_phase_runs_its_motor()
    {
        var drive = Drive with
        {
            NominalPower = ShaftPower.FromWatts(2200),
            SupplyPhases = 1,
            SupplyVoltage = (LineVoltage.FromVolts(200), LineVoltage.FromVolts(240)),
            Overloads = [new("normal", LineCurrent.FromAmperes(10), Fraction.FromRatio(1.5), Seconds(60), Seconds(600))],
            PeakCurrent = LineCurrent.FromAmperes(18),
            OvercurrentTrip = LineCurrent.FromAmperes(22),
            BusCapacitance = Capacitance.FromFarads(1560e-6),
            DcChoke = Fraction.FromPercent(0),
            OvervoltageTrip = DcVoltage.FromVolts(410),
            OvervoltageControl = DcVoltage.FromVolts(390),
            ChopperLevel = DcVoltage.FromVolts(380),
            UndervoltageTrip = DcVoltage.FromVolts(190),
        };
        var ohms = 230 / (Math.Sqrt(3) * 8.2) / 16.04;
        var motor = Motor with
        {
            StatorResistance = Resistance.FromOhms(0.42 * ohms),
            StatorLeakage = Reactance.FromOhms(0.95 * ohms),
            Magnetizing = Reactance.FromOhms(34 * ohms),
            RotorLeakage = Reactance.FromOhms(1.25 * ohms),
            RotorResistance = Resistance.FromOhms(0.46 * ohms),
            CoreLoss = null,
            FrictionLoss = ElectricalPower.FromWatts(20),
            StrayLoss = ElectricalPower.FromWatts(0),
            RatedVoltage = LineVoltage.FromVolts(230),
        };
        var machine = Pump with
        {
            Load = new Engineering.Loads.LoadCurve.Quadratic(Torque.FromNewtonMetres(11), ShaftSpeed.FromRpm(1460)),
            MachineInertia = Inertia.FromKilogramSquareMetres(0.02),
            MotorInertia = Inertia.FromKilogramSquareMetres(0.006),
            Breakaway = null,
        };
        var settings = ByPlate with
        {
            MotorRatedVoltage = LineVoltage.FromVolts(230),
            MaximumOutputVoltage = LineVoltage.FromVolts(230),
            MotorRatedPower = ShaftPower.FromWatts(2200),
            MotorRatedCurrent = LineCurrent.FromAmperes(8.2),
            CurrentLimit = LineCurrent.FromAmperes(12.3),
            MotorOverloadCurrent = LineCurrent.FromAmperes(8.2),
        };
        var simulation = new DriveSimulation(
            PumpSet with { Drive = drive, Motor = motor, Machine = machine, SupplyVoltage = LineVoltage.FromVolts(230) }, settings);

        simulation.Run(3).DcBusV.ShouldBe(Math.Sqrt(2) * 230, 3);
        simulation.Order = Forward(50);
        var running = simulation.Run(8);

        running.State.ShouldBe(DriveState.Running);
        running.DcBusV.ShouldBeInRange(0.9 * 230 * 1.1, Math.Sqrt(2) * 230);
        running.SpeedRpm.ShouldBeInRange(1440, 1495);
    }
}
