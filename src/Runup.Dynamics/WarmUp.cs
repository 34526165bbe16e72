using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>Compiles what a simulation runs before the first one, for a thread beside the one that reads the job: it takes longer than the ticks of most runs.</summary>
/// <remarks>By a short run of a set that is nobody's: the kinds of step that most runs have. It changes no result.</remarks>
public static class WarmUp
{
    private static readonly Duration Short = Duration.FromSeconds(0.05);

    private static readonly DriveSystem System = new()
    {
        Motor = new()
        {
            StatorResistance = Resistance.FromOhms(1),
            StatorLeakage = Reactance.FromOhms(2),
            Magnetizing = Reactance.FromOhms(60),
            RotorLeakage = Reactance.FromOhms(2),
            RotorResistance = Resistance.FromOhms(1),
            RatedFrequency = ElectricalFrequency.FromHertz(50),
            RatedVoltage = LineVoltage.FromVolts(400),
            Poles = PoleCount.FromPoles(4),
        },
        Machine = new()
        {
            Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(10), ShaftSpeed.FromRpm(1500)),
            MachineInertia = default,
            MotorInertia = Inertia.FromKilogramSquareMetres(0.05),
            Breakaway = Torque.FromNewtonMetres(1),
        },
        Drive = new()
        {
            NominalPower = ShaftPower.FromWatts(4000),
            SupplyVoltage = (LineVoltage.FromVolts(400), LineVoltage.FromVolts(400)),
            SupplyPhases = 3,
            Overloads = [new("normal", LineCurrent.FromAmperes(9), Fraction.FromRatio(1.5), Duration.FromSeconds(60), Duration.FromSeconds(600))],
            PeakCurrent = LineCurrent.FromAmperes(18),
            PeakTime = Duration.FromSeconds(2),
            OvercurrentTrip = LineCurrent.FromAmperes(25),
            BusCapacitance = Capacitance.FromFarads(3e-4),
            DcChoke = default,
            OvervoltageTrip = DcVoltage.FromVolts(820),
            OvervoltageControl = DcVoltage.FromVolts(760),
            ChopperLevel = DcVoltage.FromVolts(760),
            UndervoltageTrip = DcVoltage.FromVolts(350),
            SwitchingDerating = [],
            AmbientDerating = new(Temperature.FromCelsius(40), 0, Temperature.FromCelsius(50)),
            AltitudeDerating = new(Length.FromMetres(1000), 0, Length.FromMetres(4000)),
        },
        SupplyVoltage = LineVoltage.FromVolts(400),
        SupplyFrequency = ElectricalFrequency.FromHertz(50),
    };

    /// <summary>Does it.</summary>
    /// <param name="ofMany">Also for an <see cref="EnsembleRehearsal"/>.</param>
    public static void Run(bool ofMany)
    {
        var settings = ControlSettings.From(SettingSet.Empty, System.Drive) with { Acceleration = Short, Deceleration = Short };
        var ran = (RehearsalOutcome.Ran)new Rehearsal { System = System, Settings = settings, Script = Rehearsal.StartAndStop(settings.MaximumFrequency.Hertz, Short, Short) }.Run();
        if (ofMany)
        {
            new EnsembleRehearsal { System = System, Motors = [System.Motor], Settings = settings, Orders = ran.Result.Orders, Length = Duration.FromSeconds(4 * Short.Seconds) }.Run(atMostThreads: 1);
        }
    }
}
