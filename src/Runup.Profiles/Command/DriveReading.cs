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
    /// <summary>All names with their kinds.</summary>
    public static IReadOnlyList<(string Name, ReadingKind Kind)> All { get; } =
    [
        ("output-frequency", ReadingKind.OutputFrequency), ("output-current", ReadingKind.OutputCurrent), ("dc-bus-voltage", ReadingKind.DcBusVoltage),
        ("output-voltage", ReadingKind.OutputVoltage), ("torque", ReadingKind.Torque), ("speed", ReadingKind.Speed), ("state", ReadingKind.State), ("last-trip", ReadingKind.LastTrip),
    ];

    /// <summary>The kind's name.</summary>
    public static string Name(this ReadingKind kind) => All.First(a => a.Kind == kind).Name;
}

/// <summary>A reading: the parameter that shows it, and how its number becomes the quantity.</summary>
/// <param name="Kind">What is read.</param>
/// <param name="Parameter">The parameter that shows it.</param>
/// <param name="Conversion">How its number becomes the quantity, such as a part of rated current.</param>
public sealed record DriveReading(ReadingKind Kind, Parameter Parameter, Conversion Conversion);
