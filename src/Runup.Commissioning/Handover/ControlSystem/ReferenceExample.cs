using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>A run command worked out to the last digit, for whoever programs it.</summary>
/// <param name="Frequency">Output frequency asked for.</param>
/// <param name="Rotation">Direction asked for.</param>
/// <param name="Display">The reference in the drive's own unit.</param>
/// <param name="Raw">In counts.</param>
/// <param name="Words">Its registers in hex, lower address first.</param>
/// <param name="Requests">The Modbus requests that give it, from the function code on, in the order in which they are sent.</param>
public sealed record ReferenceExample(ElectricalFrequency Frequency, Rotation Rotation, string Display, long Raw, string Words, IReadOnlyList<string> Requests)
{
    /// <summary>The example of a command; null where it can't be told to the drive with what is known of it.</summary>
    public static ReferenceExample? Of(DriveProfile profile, CommandInterface command, ElectricalFrequency frequency, Rotation rotation, ParameterValues values)
    {
        ArgumentNullException.ThrowIfNull(command);
        var asked = new DriveCommand(ControlWord.EnableOperation, frequency, rotation);
        return CommandCodec.ReferenceRaw(profile, command, asked, values) is { } raw && CommandRequests.Of(profile, command, asked, values) is { } requests
            ? new(
                frequency,
                rotation,
                $"{DisplayText.Of(command.Reference, raw, values)} {DisplayText.Unit(command.Reference, values)}".TrimEnd(),
                raw,
                string.Join(' ', RegisterImage.Words(command.Reference, raw).Select(w => WordRow.Hex(w))),
                [.. requests.Select(Pdu)])
            : null;
    }

    /// <summary>A write as it goes over the wire, from the function code on: 06 for one register, 10 for several.</summary>
    public static string Pdu(RegisterWords write)
    {
        ArgumentNullException.ThrowIfNull(write);
        return write.Words is [var single]
            ? FormattableString.Invariant($"06 {write.Register:X4} {single:X4}")
            : FormattableString.Invariant($"10 {write.Register:X4} {write.Words.Count:X4} {write.Words.Count * 2:X2} {string.Join(' ', write.Words.Select(w => w.ToString("X4", System.Globalization.CultureInfo.InvariantCulture)))}");
    }
}
