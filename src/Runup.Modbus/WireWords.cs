using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Runup.Modbus;

/// <summary>Registers travel with their high byte first.</summary>
internal static class WireWords
{
    public static void Read(ReadOnlySpan<byte> wire, Span<ushort> words)
    {
        var asSent = MemoryMarshal.Cast<byte, ushort>(wire);
        if (BitConverter.IsLittleEndian)
        {
            BinaryPrimitives.ReverseEndianness(asSent, words);
        }
        else
        {
            asSent.CopyTo(words);
        }
    }

    public static void Write(ReadOnlySpan<ushort> words, Span<byte> wire)
    {
        var toSend = MemoryMarshal.Cast<byte, ushort>(wire);
        if (BitConverter.IsLittleEndian)
        {
            BinaryPrimitives.ReverseEndianness(words, toSend);
        }
        else
        {
            words.CopyTo(toSend);
        }
    }
}
