using System.Buffers.Binary;
using Runup.Modbus.Identification;

namespace Runup.Modbus.Requests;

/// <summary>
/// Reads the PDU of a request. Total: any bytes give an acceptable request or a refusal, never an exception.
/// Each length is held against every other: the PDU's own, the byte count in it, the quantity, and the end of the address space.
/// The order of the checks is that of the specification's state diagrams: function, then quantity and lengths, then addresses.
/// </summary>
public static class RequestDecoder
{
    private const int ReadLength = 5;
    private const int WriteHead = 6;
    private const int ReadWriteHead = 10;
    private const int IdentificationLength = 4;

    /// <summary>Reads a PDU.</summary>
    /// <param name="pdu">Function code and data, exactly as long as the frame says.</param>
    public static ReceivedRequest Decode(ReadOnlySpan<byte> pdu)
    {
        if (pdu.IsEmpty)
        {
            return ReceivedRequest.Refused(0, ExceptionCode.IllegalFunction);
        }

        return pdu[0] switch
        {
            (byte)FunctionCode.ReadHoldingRegisters => DecodeRead(FunctionCode.ReadHoldingRegisters, pdu),
            (byte)FunctionCode.ReadInputRegisters => DecodeRead(FunctionCode.ReadInputRegisters, pdu),
            (byte)FunctionCode.WriteSingleRegister => DecodeWriteSingle(pdu),
            (byte)FunctionCode.WriteMultipleRegisters => DecodeWriteMultiple(pdu),
            (byte)FunctionCode.ReadWriteMultipleRegisters => DecodeReadWrite(pdu),
            (byte)FunctionCode.EncapsulatedInterface => DecodeIdentification(pdu),
            _ => ReceivedRequest.Refused(pdu[0], ExceptionCode.IllegalFunction),
        };
    }

    private static ReceivedRequest DecodeRead(FunctionCode function, ReadOnlySpan<byte> pdu)
    {
        if (pdu.Length != ReadLength)
        {
            return WrongValue(pdu);
        }

        var (start, count) = StartAndCount(pdu[1..]);
        if (count is 0 or > ModbusLimits.ReadCount)
        {
            return WrongValue(pdu);
        }

        return Fits(start, count)
            ? ReceivedRequest.Reads(function, new RegisterRange(start, count))
            : WrongAddress(pdu);
    }

    private static ReceivedRequest DecodeWriteSingle(ReadOnlySpan<byte> pdu)
    {
        if (pdu.Length != ReadLength)
        {
            return WrongValue(pdu);
        }

        var (address, _) = StartAndCount(pdu[1..]);
        return ReceivedRequest.WritesRegisters(FunctionCode.WriteSingleRegister, new RegisterRange(address, 1), pdu.Slice(3, 2));
    }

    private static ReceivedRequest DecodeWriteMultiple(ReadOnlySpan<byte> pdu)
    {
        if (pdu.Length < WriteHead)
        {
            return WrongValue(pdu);
        }

        var (start, count) = StartAndCount(pdu[1..]);
        var data = pdu[WriteHead..];
        if (count is 0 or > ModbusLimits.WriteCount || pdu[5] != count * 2 || data.Length != count * 2)
        {
            return WrongValue(pdu);
        }

        return Fits(start, count)
            ? ReceivedRequest.WritesRegisters(FunctionCode.WriteMultipleRegisters, new RegisterRange(start, count), data)
            : WrongAddress(pdu);
    }

    private static ReceivedRequest DecodeReadWrite(ReadOnlySpan<byte> pdu)
    {
        if (pdu.Length < ReadWriteHead)
        {
            return WrongValue(pdu);
        }

        var (readStart, readCount) = StartAndCount(pdu[1..]);
        var (writeStart, writeCount) = StartAndCount(pdu[5..]);
        var data = pdu[ReadWriteHead..];
        if (readCount is 0 or > ModbusLimits.ReadCount
            || writeCount is 0 or > ModbusLimits.ReadWriteWriteCount
            || pdu[9] != writeCount * 2
            || data.Length != writeCount * 2)
        {
            return WrongValue(pdu);
        }

        return Fits(readStart, readCount) && Fits(writeStart, writeCount)
            ? ReceivedRequest.ReadsAndWrites(new RegisterRange(readStart, readCount), new RegisterRange(writeStart, writeCount), data)
            : WrongAddress(pdu);
    }

    private static ReceivedRequest DecodeIdentification(ReadOnlySpan<byte> pdu)
    {
        // Another MEI type is another function, whatever its length.
        if (pdu.Length >= 2 && pdu[1] != MeiType.ReadDeviceIdentification)
        {
            return ReceivedRequest.Refused(pdu[0], ExceptionCode.IllegalFunction);
        }

        if (pdu.Length != IdentificationLength || pdu[2] is < (byte)ReadDeviceIdCode.Basic or > (byte)ReadDeviceIdCode.Individual)
        {
            return WrongValue(pdu);
        }

        return ReceivedRequest.Identifies((ReadDeviceIdCode)pdu[2], new IdentificationObjectId(pdu[3]));
    }

    private static (ushort Start, int Count) StartAndCount(ReadOnlySpan<byte> data) =>
        (BinaryPrimitives.ReadUInt16BigEndian(data), BinaryPrimitives.ReadUInt16BigEndian(data[2..]));

    private static bool Fits(ushort start, int count) => start + count <= ModbusLimits.AddressSpace;

    private static ReceivedRequest WrongValue(ReadOnlySpan<byte> pdu) => ReceivedRequest.Refused(pdu[0], ExceptionCode.IllegalDataValue);

    private static ReceivedRequest WrongAddress(ReadOnlySpan<byte> pdu) => ReceivedRequest.Refused(pdu[0], ExceptionCode.IllegalDataAddress);
}
