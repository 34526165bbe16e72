using Runup.Engineering;
using Runup.Profiles;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>A bit of a command or status word.</summary>
/// <param name="Bit">Its place, from 0.</param>
/// <param name="Meaning">What it means when it is 1.</param>
public sealed record BitRow(int Bit, string Meaning)
{
    /// <summary>The bits of a drive's command word.</summary>
    [Source("cia402", "controlword 6040h, bits; in velocity mode bits 4 to 6 and 8")]
    public static IReadOnlyList<BitRow> OfCommand(CommandInterface command, bool mayReverse) =>
    [
        new(0, "switch on"),
        new(1, "enable voltage; 0 lets the motor coast"),
        new(2, "no quick stop; 0 asks for a quick stop"),
        new(3, "enable operation"),
        .. command.RampBits
            ? (BitRow[])[new(4, "enable the ramp; 0 stops"), new(5, "unlock the ramp; 0 holds the speed as it is"), new(6, "the ramp follows the reference; 0 gives it zero")]
            : [new(4, "not used by this drive"), new(5, "not used by this drive"), new(6, "not used by this drive")],
        new(7, "reset a trip, as the bit rises from 0 to 1"),
        new(8, "halt: stop on the ramp, operation stays enabled"),
        .. Enumerable.Range(9, 7).Select(bit => new BitRow(bit, bit != command.ReverseBit ? "leave 0" : mayReverse ? "reverse (this make's own)" : "leave 0: it would reverse (this make's own), and the drive is set to forward only")),
    ];

    /// <summary>The bits of a status word.</summary>
    [Source("cia402", "statusword 6041h, bits")]
    public static IReadOnlyList<BitRow> OfStatus { get; } =
    [
        new(0, "ready to switch on"),
        new(1, "switched on"),
        new(2, "operation enabled: the motor is fed"),
        new(3, "fault: the drive has tripped"),
        new(4, "voltage enabled: the DC bus is charged"),
        new(5, "no quick stop; 0 while a quick stop acts"),
        new(6, "switch on disabled"),
        new(7, "warning"),
        new(8, "the maker's own"),
        new(9, "remote: the drive follows the command word"),
        new(10, "target reached: the output has come to its reference"),
        new(11, "internal limit acts"),
        .. Enumerable.Range(12, 4).Select(bit => new BitRow(bit, "the maker's own")),
    ];
}
