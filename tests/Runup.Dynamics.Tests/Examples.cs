using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics.Tests;

/// <summary>An invented 7.5 kW set, of plausible figures; each test changes what it is about.</summary>
internal static class Examples
{
    /// <summary>A circuit that gives about 7.5 kW at 1460 rpm, 400 V, 50 Hz.</summary>
    internal static EquivalentCircuit Motor { get; } = new()
    {
        StatorResistance = Resistance.FromOhms(0.42),
        StatorLeakage = Reactance.FromOhms(0.95),
        Magnetizing = Reactance.FromOhms(34),
        RotorLeakage = Reactance.FromOhms(1.25),
        RotorResistance = Resistance.FromOhms(0.46),
        CoreLoss = Resistance.FromOhms(820),
        FrictionLoss = ElectricalPower.FromWatts(60),
        StrayLoss = ElectricalPower.FromWatts(70),
        RatedCurrent = LineCurrent.FromAmperes(14.4),
        RatedSpeed = ShaftSpeed.FromRpm(1460),
        RatedFrequency = ElectricalFrequency.FromHertz(50),
        RatedVoltage = LineVoltage.FromVolts(400),
        Poles = PoleCount.FromPoles(4),
    };

    /// <summary>A size of 17 A normal, 13.6 A heavy, with a 4 % choke and 540 µF.</summary>
    internal static DriveRating Drive { get; } = new()
    {
        NominalPower = ShaftPower.FromWatts(7500),
        SupplyVoltage = (LineVoltage.FromVolts(380), LineVoltage.FromVolts(480)),
        SupplyPhases = 3,
        Overloads =
        [
            new("normal", LineCurrent.FromAmperes(17), Fraction.FromRatio(1.1), Duration.FromSeconds(60), Duration.FromSeconds(600)),
            new("heavy", LineCurrent.FromAmperes(13.6), Fraction.FromRatio(1.5), Duration.FromSeconds(60), Duration.FromSeconds(600)),
        ],
        PeakCurrent = LineCurrent.FromAmperes(1.8 * 13.6),
        PeakTime = Duration.FromSeconds(2),
        OvercurrentTrip = LineCurrent.FromAmperes(2.2 * 13.6),
        BusCapacitance = Capacitance.FromFarads(540e-6),
        DcChoke = Fraction.FromPercent(4),
        LowestBrakingResistance = Resistance.FromOhms(40),
        OvervoltageTrip = DcVoltage.FromVolts(820),
        OvervoltageControl = DcVoltage.FromVolts(780),
        ChopperLevel = DcVoltage.FromVolts(760),
        UndervoltageTrip = DcVoltage.FromVolts(380),
        SwitchingDerating = [(SwitchingFrequency.FromHertz(4000), Fraction.FromRatio(1))],
        AmbientDerating = new(Temperature.FromCelsius(40), 0.015, Temperature.FromCelsius(50)),
        AltitudeDerating = new(Length.FromMetres(1000), 0.0001, Length.FromMetres(4000)),
    };

    /// <summary>A centrifugal pump: 42 N·m at 1460 rpm.</summary>
    internal static DrivenMachine Pump { get; } = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(42), ShaftSpeed.FromRpm(1460)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.12),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
        Breakaway = Torque.FromNewtonMetres(8),
    };

    /// <summary>The motor alone.</summary>
    internal static DrivenMachine Uncoupled { get; } = Pump with
    {
        Load = new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0),
        Breakaway = null,
    };

    internal static DriveSystem PumpSet { get; } = new()
    {
        Motor = Motor,
        Machine = Pump,
        Drive = Drive,
        SupplyVoltage = LineVoltage.FromVolts(400),
        SupplyFrequency = ElectricalFrequency.FromHertz(50),
    };

    internal static SettingSet MotorSettings { get; } = SettingSet.Empty
        .With(Setting.MotorRatedPower, 7500)
        .With(Setting.MotorRatedVoltage, 400)
        .With(Setting.MotorRatedCurrent, 14.4)
        .With(Setting.MotorRatedFrequency, 50)
        .With(Setting.MotorRatedSpeed, 1460 * Math.PI / 30)
        .With(Setting.MotorPowerFactor, 0.83);

    internal static ControlSettings ByPlate { get; } = ControlSettings.From(MotorSettings, Drive);

    internal static Duration Seconds(double seconds) => Duration.FromSeconds(seconds);

    internal static DriveOrder Forward(double frequencyHz) => new(Run: true, frequencyHz, StopKind.ByMethod);

    internal static DriveOrder Stop(StopKind kind = StopKind.ByMethod) => new(Run: false, 0, kind);

    /// <summary>Ticks for so many seconds.</summary>
    internal static DriveReadings Run(this DriveSimulation simulation, double seconds)
    {
        for (var i = (int)Math.Round(seconds / DriveSimulation.TickSeconds); i > 0; i--)
        {
            simulation.Tick();
        }

        return simulation.Readings;
    }
}
