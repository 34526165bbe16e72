using System.Globalization;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>What the control system can read, each with the counts of the motor's rated point.</summary>
internal static class ReadingRows
{
    public static IEnumerable<RegisterRow> Of(DriveProfile profile, ParameterValues values, DriveReadings rated)
    {
        var counts = ReadingCodec.Encode(profile, values, rated).ToDictionary(r => r.Parameter.Number, r => r.Raw, StringComparer.Ordinal);
        return profile.Readings.Select(r => RegisterRow.Of(
            Name(r.Kind), r.Parameter, values, Worth(r, values), counts.TryGetValue(r.Parameter.Number, out var raw) ? Example(r, raw, rated) : null));
    }

    private static string Name(ReadingKind kind) => kind switch
    {
        ReadingKind.OutputFrequency => "output frequency",
        ReadingKind.OutputCurrent => "output current",
        ReadingKind.DcBusVoltage => "DC bus voltage",
        ReadingKind.OutputVoltage => "output voltage",
        ReadingKind.Torque => "torque, of rated torque",
        ReadingKind.Speed => "speed of the shaft",
        ReadingKind.State => "state",
        ReadingKind.LastTrip => "last trip",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    private static string? Worth(DriveReading reading, ParameterValues values) => (reading.Kind, reading.Conversion) switch
    {
        (ReadingKind.State, _) => "the state bits of the status word",
        (ReadingKind.LastTrip, _) => "a code, see below",
        (_, Conversion.PartOf part) => $"{DisplayText.Of(reading.Parameter, 1, values)} {DisplayText.Unit(reading.Parameter, values)} of {part.Whole}",
        _ => null,
    };

    private static string? Example(DriveReading reading, long raw, DriveReadings rated) => Quantity(reading.Kind, rated) is { } quantity
        ? string.Create(CultureInfo.InvariantCulture, $"{quantity} = {raw} = {RegisterRow.Words(reading.Parameter, raw)}")
        : null;

    private static string? Quantity(ReadingKind kind, DriveReadings rated) => kind switch
    {
        ReadingKind.OutputFrequency => Text(rated.OutputFrequency),
        ReadingKind.OutputCurrent => Text(rated.OutputCurrent),
        ReadingKind.DcBusVoltage => Text(rated.DcBus),
        ReadingKind.OutputVoltage => Text(rated.OutputVoltage),
        ReadingKind.Torque => Text(rated.Torque),
        ReadingKind.Speed => Text(rated.Speed),
        _ => null,
    };

    private static string? Text<T>(T? quantity)
        where T : struct, IQuantity<T> => quantity is { } value ? QuantityText.Write(T.Dimension, value.Si, UnitSystem.Metric, 4) : null;
}
