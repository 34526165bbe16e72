using System.Buffers.Binary;

namespace Runup.Modbus.Tcp;

/// <summary>The frame of Modbus TCP: transaction, protocol (0), length of what follows, unit, PDU.</summary>
public static class TcpFrame
{
    /// <summary>Bytes before the PDU.</summary>
    public const int HeaderLength = 7;

    private const int LengthEnd = 6;

    /// <summary>Looks for one whole frame at the beginning of what has arrived. Total: any bytes give one of three states, and a head that is wrong is known by its first wrong byte pair.</summary>
    /// <param name="received">What has arrived and was not yet taken.</param>
    public static TcpFrameReading Read(ReadOnlySpan<byte> received)
    {
        if (received.Length >= 4 && BinaryPrimitives.ReadUInt16BigEndian(received[2..]) != 0)
        {
            return TcpFrameReading.NotModbus;
        }

        if (received.Length < LengthEnd)
        {
            return TcpFrameReading.Incomplete;
        }

        // Unit and at least the function code, at most unit and the longest PDU.
        var following = BinaryPrimitives.ReadUInt16BigEndian(received[4..]);
        if (following is < 2 or > 1 + ModbusLimits.PduLength)
        {
            return TcpFrameReading.NotModbus;
        }

        return received.Length < LengthEnd + following
            ? TcpFrameReading.Incomplete
            : TcpFrameReading.Whole(
                new TransactionId(BinaryPrimitives.ReadUInt16BigEndian(received)),
                new UnitId(received[LengthEnd]),
                LengthEnd + following);
    }

    /// <summary>Writes the head before a PDU that stands at <see cref="HeaderLength"/>.</summary>
    /// <param name="frame">The frame's memory.</param>
    /// <param name="transaction">Pairs request and reply.</param>
    /// <param name="unit">Who is asked, or answers.</param>
    /// <param name="pduLength">1 to <see cref="ModbusLimits.PduLength"/>.</param>
    /// <returns>The whole frame's length.</returns>
    public static int WriteHeader(Span<byte> frame, TransactionId transaction, UnitId unit, int pduLength)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pduLength, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pduLength, ModbusLimits.PduLength);
        BinaryPrimitives.WriteUInt16BigEndian(frame, transaction.Value);
        BinaryPrimitives.WriteUInt16BigEndian(frame[2..], 0);
        BinaryPrimitives.WriteUInt16BigEndian(frame[4..], (ushort)(1 + pduLength));
        frame[LengthEnd] = unit.Value;
        return HeaderLength + pduLength;
    }
}
