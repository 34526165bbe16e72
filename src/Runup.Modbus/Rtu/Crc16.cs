namespace Runup.Modbus.Rtu;

/// <summary>The checksum of a serial frame: polynomial x¹⁶+x¹⁵+x²+1 with its bits reversed (A001h), preset FFFFh (MODBUS over Serial Line V1.02, clause 6.2.2).</summary>
public static class Crc16
{
    private static readonly ushort[] Table = [.. Enumerable.Range(0, 256).Select(OfByte)];

    /// <summary>The checksum of bytes; on the wire its low byte comes first, unlike everything else in Modbus.</summary>
    /// <param name="bytes">Address and PDU.</param>
    public static ushort Of(ReadOnlySpan<byte> bytes)
    {
        ushort crc = 0xFFFF;
        foreach (var one in bytes)
        {
            crc = (ushort)((crc >> 8) ^ Table[(crc ^ one) & 0xFF]);
        }

        return crc;
    }

    private static ushort OfByte(int value)
    {
        var crc = (ushort)value;
        for (var bit = 0; bit < 8; bit++)
        {
            crc = (ushort)((crc & 1) != 0 ? (crc >> 1) ^ 0xA001 : crc >> 1);
        }

        return crc;
    }
}
