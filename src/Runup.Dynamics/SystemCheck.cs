using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;

namespace Runup.Dynamics;

/// <summary>Whether a system and its settings can be simulated at all; checks of engineering sense belong elsewhere.</summary>
public static class SystemCheck
{
    // Rates of currents and shaft beyond this, in 1/s, are no motor's: some 300 is usual, and the steps of the simulation follow up to here.
    private const double FastestRate = 10_000;

    // How long the bus must hold nominal power; buses that are built do so for some milliseconds, small ones of film capacitors for half of one.
    private const double LeastStoreS = 1e-4;

    /// <summary>Everything that prevents a simulation; empty where nothing does.</summary>
    public static IReadOnlyList<SystemProblem> Of(DriveSystem system, ControlSettings settings)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(settings);
        return [.. OfMotor(system.Motor), .. OfMachine(system.Machine, system.Motor), .. DriveProblems(system), .. SettingProblems(settings)];
    }

    internal static void Require(IReadOnlyList<SystemProblem> problems, string argument)
    {
        if (problems.Count > 0)
        {
            throw new ArgumentException(string.Join(" ", problems), argument);
        }
    }

    internal static IReadOnlyList<SystemProblem> OfMotor(EquivalentCircuit motor)
    {
        List<SystemProblem> problems =
        [
            .. Positive("stator resistance", motor.StatorResistance.Ohms),
            .. Positive("stator leakage reactance", motor.StatorLeakage.Ohms),
            .. Positive("magnetizing reactance", motor.Magnetizing.Ohms),
            .. Positive("rotor leakage reactance", motor.RotorLeakage.Ohms),
            .. Positive("rotor resistance", motor.RotorResistance.Ohms),
            .. Positive("core-loss resistance", motor.CoreLoss?.Ohms ?? 1),
            .. Positive("motor rated frequency", motor.RatedFrequency.Hertz),
            .. Positive("motor rated voltage", motor.RatedVoltage.Volts),
            .. Positive("number of poles", motor.Poles.Poles),
        ];
        if (problems.Count == 0 && new InductionMachine<One>([motor]).FastestRate > FastestRate)
        {
            problems.Add(new("leakage reactances", "are too small against the resistances: currents would change within microseconds, as in no real motor."));
        }

        return problems;
    }

    internal static IReadOnlyList<SystemProblem> OfMachine(DrivenMachine machine, EquivalentCircuit motor)
    {
        List<SystemProblem> problems =
        [
            .. Positive("gear ratio", machine.GearRatio),
            .. Positive("gear efficiency", machine.GearEfficiency.Ratio),
            .. machine.GearRatio > 0 ? Positive("inertia of motor and machine", machine.TotalInertia.KilogramSquareMetres) : [],
        ];
        if (problems.Count == 0 && OfMotor(motor).Count == 0 && SwingRate(motor, ShaftLoad.LeastInertia(machine)) > FastestRate)
        {
            problems.Add(new("inertia of motor and machine", "is too small for this motor: the shaft would follow every swing of the field within microseconds."));
        }

        return problems;
    }

    private static double SwingRate(EquivalentCircuit motor, double inertia) =>
        new InductionMachine<One>([motor]).SwingRate(motor.RatedVoltage.Phase.Volts, motor.RatedFrequency.RadiansPerSecond, inertia);

    private static IEnumerable<SystemProblem> DriveProblems(DriveSystem system)
    {
        var drive = system.Drive;
        List<SystemProblem> problems =
        [
            .. Positive("supply voltage", system.SupplyVoltage.Volts),
            .. Positive("supply frequency", system.SupplyFrequency.Hertz),
            .. Positive("DC bus capacitance", drive.BusCapacitance.Farads),
            .. Positive("nominal power of the drive", drive.NominalPower.Watts),
            .. Positive("peak current of the drive", drive.PeakCurrent.Amperes),
            .. Positive("overcurrent trip", drive.OvercurrentTrip.Amperes),
            .. Positive("braking resistor", system.BrakingResistor?.Ohms ?? 1),
        ];
        if (drive.Overloads.Count == 0 || drive.Overloads.Any(o => o.Current.Amperes <= 0))
        {
            problems.Add(new("continuous current of the drive", "none is given; at least one rating with its overload is needed."));
        }

        if (system.Detail is { } detail)
        {
            problems.AddRange(DetailProblems(detail));
        }

        if (problems.Count == 0 && StoreS(system) < LeastStoreS)
        {
            problems.Add(new("DC bus capacitance", $"is too small: nominal power would empty the bus in {1e6 * StoreS(system):g3} µs, and the control looks once in a millisecond."));
        }

        if (drive.SupplyPhases is not (1 or 3))
        {
            problems.Add(new("supply phases", $"{drive.SupplyPhases} are given; a rectifier has 1 or 3."));
        }

        if (drive.UndervoltageTrip.Volts >= drive.OvervoltageTrip.Volts)
        {
            problems.Add(new("trip levels of the DC bus", "undervoltage does not lie below overvoltage."));
        }

        if (Math.Sqrt(2) * system.SupplyVoltage.Volts >= drive.OvervoltageTrip.Volts)
        {
            problems.Add(new("supply voltage", "its peak already lies at the overvoltage trip level of the drive."));
        }

        return problems;
    }

    private static double StoreS(DriveSystem system) =>
        0.5 * system.Drive.BusCapacitance.Farads * 2 * system.SupplyVoltage.Volts * system.SupplyVoltage.Volts / system.Drive.NominalPower.Watts;

    private static List<SystemProblem> SettingProblems(ControlSettings settings)
    {
        List<SystemProblem> problems =
        [
            .. Positive("base-frequency", settings.BaseFrequency.Hertz),
            .. Positive("maximum-frequency", settings.MaximumFrequency.Hertz),
            .. Positive("acceleration-time", settings.Acceleration.Seconds),
            .. Positive("deceleration-time", settings.Deceleration.Seconds),
            .. Positive("quick-stop time", settings.QuickStop.Seconds),
            .. Positive("current-limit", settings.CurrentLimit.Amperes),
            .. Positive("motor-rated-power", settings.MotorRatedPower.Watts),
            .. Positive("motor-rated-voltage", settings.MotorRatedVoltage.Volts),
            .. Positive("motor-rated-current", settings.MotorRatedCurrent.Amperes),
            .. Positive("motor-rated-frequency", settings.MotorRatedFrequency.Hertz),
            .. Positive("motor-power-factor", settings.MotorPowerFactor.Ratio),
            .. Positive("motor-overload-current", settings.MotorOverloadCurrent.Amperes),
            .. Positive("overload trip time", settings.OverloadTripTime.Seconds),
        ];
        problems.AddRange(settings.SecondAcceleration is { } second ? Positive("second-acceleration-time", second.Seconds) : []);
        problems.AddRange(settings.SecondDeceleration is { } other ? Positive("second-deceleration-time", other.Seconds) : []);
        problems.AddRange(Positive("encoder-pulses", settings.Encoder?.PulsesPerTurn ?? 1));
        if (settings.SCurve.Seconds < 0)
        {
            problems.Add(new("s-curve", $"is {settings.SCurve.Seconds:g4} s; zero or more would do."));
        }

        if (settings.MinimumFrequency.Hertz > settings.MaximumFrequency.Hertz)
        {
            problems.Add(new("minimum-frequency", "lies above maximum-frequency; one of them must change."));
        }

        if (SkipBand.CoverAll(settings.SkipBands, settings.MinimumFrequency.Hertz, settings.MaximumFrequency.Hertz))
        {
            problems.Add(new("skip-frequency", $"the bands leave no frequency between {settings.MinimumFrequency.Hertz:g4} and {settings.MaximumFrequency.Hertz:g4} Hz; narrower or fewer ones would do."));
        }

        return problems;
    }

    private static IEnumerable<SystemProblem> DetailProblems(PlantDetail detail)
    {
        if (detail.IronShare.Ratio is < 0 or >= 1)
        {
            yield return new("iron's share of the magnetizing current", $"is {detail.IronShare.Ratio:g4}; from 0 to below 1 would do.");
        }

        if (detail.Coupling is { } coupling)
        {
            foreach (var problem in Positive("stiffness of the coupling", coupling.Stiffness_NmPerRad))
            {
                yield return problem;
            }

            if (coupling.Damping_NmsPerRad < 0)
            {
                yield return new("damping of the coupling", $"is {coupling.Damping_NmsPerRad:g4}; zero or more would do.");
            }
        }
    }

    private static SystemProblem[] Positive(string subject, double value) =>
        value > 0 ? [] : [new(subject, $"is {value:g4}; it must be above zero.")];
}
