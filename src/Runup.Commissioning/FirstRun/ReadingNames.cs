using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>The readings of a first run: name, unit, and where they stand in a status.</summary>
internal static class ReadingNames
{
    public static IReadOnlyList<(ReadingKind Kind, string Name, string Unit, Func<DriveStatus, double?> Of)> All { get; } =
    [
        (ReadingKind.OutputFrequency, "output frequency", "Hz", s => s.OutputFrequencyHz),
        (ReadingKind.OutputCurrent, "output current", "A", s => s.OutputCurrentA),
        (ReadingKind.DcBusVoltage, "DC bus voltage", "V", s => s.DcBusV),
        (ReadingKind.OutputVoltage, "output voltage", "V", s => s.OutputVoltageV),
        (ReadingKind.Speed, "speed", "rpm", s => s.SpeedRpm),
        (ReadingKind.Torque, "torque", "%", s => s.TorquePercent),
    ];

    /// <summary>The name of a reading.</summary>
    public static string Of(ReadingKind kind) => All.First(r => r.Kind == kind).Name;
}
