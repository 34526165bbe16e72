using System.Buffers.Binary;

namespace Runup.Modbus.Rtu;

/// <summary>The frame of a serial line: address, PDU, CRC. Where it begins and ends is told by silence, or by its own lengths, and is another's task.</summary>
public static class RtuFrame
{
    private const int AddressLength = 1;
    private const int CrcLength = 2;

    /// <summary>Address, function code and CRC.</summary>
    public const int MinLength = AddressLength + 1 + CrcLength;

    /// <summary>Judges the bytes between two silences. Total: any bytes give one of the states.</summary>
    /// <param name="bytes">All that was heard.</param>
    public static RtuFrameReading Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length is < MinLength or > ModbusLimits.RtuFrameLength)
        {
            return new RtuFrameReading(bytes.Length < MinLength ? RtuFrameState.TooShort : RtuFrameState.TooLong, default, 0);
        }

        var pduLength = bytes.Length - AddressLength - CrcLength;
        return Crc16.Of(bytes[..^CrcLength]) == BinaryPrimitives.ReadUInt16LittleEndian(bytes[^CrcLength..])
            ? new RtuFrameReading(RtuFrameState.Whole, new UnitId(bytes[0]), pduLength)
            : new RtuFrameReading(RtuFrameState.WrongCrc, default, 0);
    }

    /// <summary>Writes a frame.</summary>
    /// <param name="unit">Who is asked, or answers; 0 asks all and is answered by none.</param>
    /// <param name="pdu">1 to <see cref="ModbusLimits.PduLength"/> bytes.</param>
    /// <param name="frame">At least <see cref="ModbusLimits.RtuFrameLength"/> bytes.</param>
    /// <returns>The frame's length.</returns>
    public static int Write(UnitId unit, ReadOnlySpan<byte> pdu, Span<byte> frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pdu.Length, 1, nameof(pdu));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pdu.Length, ModbusLimits.PduLength, nameof(pdu));
        frame[0] = unit.Value;
        pdu.CopyTo(frame[AddressLength..]);
        var checkedLength = AddressLength + pdu.Length;
        BinaryPrimitives.WriteUInt16LittleEndian(frame[checkedLength..], Crc16.Of(frame[..checkedLength]));
        return checkedLength + CrcLength;
    }
}
