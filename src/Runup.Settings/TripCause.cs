namespace Runup.Settings;

/// <summary>Why a drive tripped, in the make-independent vocabulary; a cause's number is its place in that closed list, 0 is none.</summary>
public enum TripCause
{
    /// <summary>No trip.</summary>
    None,

    /// <summary>Output current above the instantaneous level.</summary>
    Overcurrent,

    /// <summary>DC bus above the trip level.</summary>
    Overvoltage,

    /// <summary>DC bus below the trip level.</summary>
    Undervoltage,

    /// <summary>Thermal model of the motor.</summary>
    MotorOverload,

    /// <summary>Overload cycle of the drive exceeded.</summary>
    DriveOverload,

    /// <summary>Drive too hot.</summary>
    DriveTemperature,

    /// <summary>Motor's sensor too hot.</summary>
    MotorTemperature,

    /// <summary>Current to earth.</summary>
    EarthFault,

    /// <summary>Short circuit at the output.</summary>
    ShortCircuit,

    /// <summary>Supply phase missing.</summary>
    SupplyPhase,

    /// <summary>Motor phase missing.</summary>
    MotorPhase,

    /// <summary>No valid frame within the time-out.</summary>
    BusTimeout,

    /// <summary>External fault input.</summary>
    External,

    /// <summary>Speed above the limit.</summary>
    Overspeed,

    /// <summary>Braking resistor or chopper.</summary>
    BrakingResistor,

    /// <summary>Parameters lost or damaged.</summary>
    ParameterLoss,

    /// <summary>Motor did not follow.</summary>
    Stall,

    /// <summary>Load lost.</summary>
    Underload,
}

/// <summary>The names of trip causes in files and JSON.</summary>
public static class TripCauseNames
{
    private static readonly string[] Names =
    [
        "none", "overcurrent", "overvoltage", "undervoltage", "motor-overload", "drive-overload", "drive-temperature",
        "motor-temperature", "earth-fault", "short-circuit", "supply-phase", "motor-phase", "bus-timeout", "external",
        "overspeed", "braking-resistor", "parameter-loss", "stall", "underload",
    ];

    /// <summary>The cause's name, such as <c>motor-overload</c>.</summary>
    public static string Name(this TripCause cause) => Names[(int)cause];

    /// <summary>The cause of a name, or null.</summary>
    public static TripCause? Find(string name)
    {
        var place = Array.IndexOf(Names, name);
        return place < 0 ? null : (TripCause)place;
    }
}
