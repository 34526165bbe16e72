namespace Runup.Profiles;

/// <summary>What can be read from a drive while it runs.</summary>
public enum ReadingKind
{
    /// <summary>Output frequency.</summary>
    OutputFrequency,

    /// <summary>Output current.</summary>
    OutputCurrent,

    /// <summary>Voltage of the DC bus.</summary>
    DcBusVoltage,

    /// <summary>Output voltage, line to line.</summary>
    OutputVoltage,

    /// <summary>Torque, of the motor's rated torque.</summary>
    Torque,

    /// <summary>Speed of the shaft.</summary>
    Speed,

    /// <summary>State, as the status word's state bits.</summary>
    State,

    /// <summary>Last trip.</summary>
    LastTrip,
}

/// <summary>The names of readings in drive profiles.</summary>
public static class ReadingKindNames
{
    private static readonly string[] Names = ["output-frequency", "output-current", "dc-bus-voltage", "output-voltage", "torque", "speed", "state", "last-trip"];

    /// <summary>All names, in the order of the kinds.</summary>
    public static IReadOnlyList<string> All => Names;

    /// <summary>The kind's name.</summary>
    public static string Name(this ReadingKind kind) => Names[(int)kind];

    /// <summary>The kind of a name, or null.</summary>
    public static ReadingKind? Find(string name)
    {
        var place = Array.IndexOf(Names, name);
        return place < 0 ? null : (ReadingKind)place;
    }
}

/// <summary>A reading: the parameter that shows it, and how its number becomes the quantity.</summary>
/// <param name="Kind">What is read.</param>
/// <param name="Parameter">The parameter that shows it.</param>
/// <param name="Conversion">How its number becomes the quantity, such as a part of rated current.</param>
public sealed record DriveReading(ReadingKind Kind, Parameter Parameter, Conversion Conversion);
