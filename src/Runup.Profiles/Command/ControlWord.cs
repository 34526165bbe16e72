namespace Runup.Profiles;

/// <summary>The control word (6040h) after IEC 61800-7-201. <c>default</c> disables the voltage.</summary>
/// <param name="Bits">The word.</param>
public readonly record struct ControlWord(ushort Bits)
{
    private const ushort RampBits = 0x0070;

    /// <summary>Disable voltage: the motor coasts.</summary>
    public static ControlWord DisableVoltage => default;

    /// <summary>Quick stop.</summary>
    public static ControlWord QuickStop => new(0x0002);

    /// <summary>Shutdown: to ready to switch on.</summary>
    public static ControlWord Shutdown => new(0x0006);

    /// <summary>Switch on; from operation enabled the same word disables operation.</summary>
    public static ControlWord SwitchOn => new(0x0007);

    /// <summary>Enable operation.</summary>
    public static ControlWord EnableOperation => new(0x000F);

    /// <summary>Fault reset, which acts as its bit rises.</summary>
    public static ControlWord FaultReset => new(0x0080);

    /// <summary>Halt bit of the velocity mode.</summary>
    public bool IsHalt => Has(8);

    /// <summary>Whether the ramp is enabled, unlocked and follows the reference (bits 4 to 6 of the velocity mode).</summary>
    public bool RampFollows => (Bits & RampBits) == RampBits;

    /// <summary>This word with the ramp enabled, unlocked and following the reference.</summary>
    public ControlWord WithRamp => new((ushort)(Bits | RampBits));

    /// <summary>Whether a bit is set.</summary>
    public bool Has(int bit) => (Bits & (1 << bit)) != 0;

    /// <summary>This word with a bit set or cleared.</summary>
    public ControlWord With(int bit, bool set) => new((ushort)(set ? Bits | (1 << bit) : Bits & ~(1 << bit)));

    /// <inheritdoc/>
    public override string ToString() => $"0x{Bits:X4}";
}
