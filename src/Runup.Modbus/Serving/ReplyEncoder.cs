using System.Buffers.Binary;

namespace Runup.Modbus.Serving;

internal static class ReplyEncoder
{
    private const byte ExceptionFlag = 0x80;

    public static int Refusal(Span<byte> pdu, byte function, ExceptionCode code)
    {
        pdu[0] = (byte)(function | ExceptionFlag);
        pdu[1] = code.Value;
        return 2;
    }

    public static int Registers(Span<byte> pdu, FunctionCode function, ReadOnlySpan<ushort> values)
    {
        var byteCount = values.Length * 2;
        pdu[0] = (byte)function;
        pdu[1] = (byte)byteCount;
        WireWords.Write(values, pdu.Slice(2, byteCount));
        return 2 + byteCount;
    }

    public static int Echo(Span<byte> pdu, FunctionCode function, RegisterAddress address, ushort second)
    {
        pdu[0] = (byte)function;
        BinaryPrimitives.WriteUInt16BigEndian(pdu[1..], address.Value);
        BinaryPrimitives.WriteUInt16BigEndian(pdu[3..], second);
        return 5;
    }
}
