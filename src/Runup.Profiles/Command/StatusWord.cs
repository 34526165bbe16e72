namespace Runup.Profiles;

/// <summary>The status word (6041h) after IEC 61800-7-201.</summary>
/// <param name="Bits">The word.</param>
public readonly record struct StatusWord(ushort Bits)
{
    /// <summary>The bits that tell the state: ready, switched on, enabled, fault, quick stop, switch on disabled.</summary>
    public const ushort StateMask = 0x006F;

    /// <summary>The bits that tell the states in which the quick-stop bit may be anything: starting up, switch on disabled, fault.</summary>
    public const ushort StateMaskWithoutQuickStop = 0x004F;

    /// <summary>The state that the word tells; null where it follows none of the patterns.</summary>
    public PowerState? State => (Bits & StateMaskWithoutQuickStop) switch
    {
        0x0000 => PowerState.NotReadyToSwitchOn,
        0x0040 => PowerState.SwitchOnDisabled,
        0x000F => PowerState.FaultReactionActive,
        0x0008 => PowerState.Fault,
        _ => (Bits & StateMask) switch
        {
            0x0021 => PowerState.ReadyToSwitchOn,
            0x0023 => PowerState.SwitchedOn,
            0x0027 => PowerState.OperationEnabled,
            0x0007 => PowerState.QuickStopActive,
            _ => null,
        },
    };

    /// <summary>DC bus charged.</summary>
    public bool VoltageEnabled => Has(4);

    /// <summary>A warning is present.</summary>
    public bool Warning => Has(7);

    /// <summary>The drive follows the control word.</summary>
    public bool Remote => Has(9);

    /// <summary>The output has come to its reference.</summary>
    public bool TargetReached => Has(10);

    /// <summary>A limit of the drive acts.</summary>
    public bool InternalLimit => Has(11);

    /// <summary>The word of a state, without the other bits.</summary>
    public static StatusWord Of(PowerState state) => new(state switch
    {
        PowerState.NotReadyToSwitchOn => 0x0000,
        PowerState.SwitchOnDisabled => 0x0040,
        PowerState.ReadyToSwitchOn => 0x0021,
        PowerState.SwitchedOn => 0x0023,
        PowerState.OperationEnabled => 0x0027,
        PowerState.QuickStopActive => 0x0007,
        PowerState.FaultReactionActive => 0x000F,
        PowerState.Fault => 0x0008,
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
    });

    /// <summary>The word of a state with what else it tells.</summary>
    public static StatusWord Of(PowerState state, bool voltageEnabled, bool warning, bool remote, bool targetReached, bool internalLimit)
    {
        var bits = Of(state).Bits;
        bits |= (ushort)((voltageEnabled ? 1 << 4 : 0) | (warning ? 1 << 7 : 0) | (remote ? 1 << 9 : 0) | (targetReached ? 1 << 10 : 0) | (internalLimit ? 1 << 11 : 0));
        return new(bits);
    }

    /// <summary>Whether a bit is set.</summary>
    public bool Has(int bit) => (Bits & (1 << bit)) != 0;

    /// <inheritdoc/>
    public override string ToString() => $"0x{Bits:X4}";
}
