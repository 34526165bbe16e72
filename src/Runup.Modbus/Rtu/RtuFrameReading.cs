using System.Runtime.InteropServices;

namespace Runup.Modbus.Rtu;

/// <summary>What the bytes between two silences are.</summary>
public enum RtuFrameState
{
    /// <summary>Fewer than address, function code and CRC.</summary>
    TooShort,

    /// <summary>More than a frame may have; often two frames without a silence between them.</summary>
    TooLong,

    /// <summary>Damaged, or not a frame.</summary>
    WrongCrc,

    /// <summary>A frame.</summary>
    Whole,
}

/// <summary>What <see cref="RtuFrame.Read"/> found. The default is too short.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct RtuFrameReading
{
    private readonly int _pduLength;

    internal RtuFrameReading(RtuFrameState state, UnitId unit, int pduLength)
    {
        State = state;
        Unit = unit;
        _pduLength = pduLength;
    }

    /// <summary>What the bytes are.</summary>
    public RtuFrameState State { get; }

    /// <summary>The frame's unit, when whole.</summary>
    public UnitId Unit { get; }

    /// <summary>The PDU of a whole frame.</summary>
    /// <param name="bytes">The bytes that were read.</param>
    public ReadOnlySpan<byte> Pdu(ReadOnlySpan<byte> bytes) => State == RtuFrameState.Whole ? bytes.Slice(1, _pduLength) : [];
}
