using Runup.Modbus;
using Runup.Modbus.Rtu;

namespace Runup.Outside.Tests.Modbus;

/// <summary>MODBUS over Serial Line Specification V1.02.</summary>
public sealed class SerialLineFacts
{
    // The figures have four digits and a TimeSpan counts in steps of this size: half of each, and a little for the double.
    private const double Tick_ms = 0.00011;

    /// <summary>The source of each row stands in it; every value was recomputed with two independent routines.</summary>
    [Theory]
    [InlineData("31 32 33 34 35 36 37 38 39", "37 4B", "check value of CRC-16/MODBUS in the crc-catalog 2.5.0 documentation")]
    [InlineData("11 03 00 7C 00 02", "07 43", "pymodbus, test_framer.py")]
    [InlineData("11 03 04 00 8D 00 8E", "FB BD", "pymodbus, test_framer.py")]
    [InlineData("11 83 02", "C1 34", "pymodbus, test_framer.py")]
    [InlineData("FF 03 00 7C 00 02", "10 0D", "pymodbus, test_framer.py")]
    [InlineData("FF 83 02", "A1 01", "pymodbus, test_framer.py")]
    [InlineData("00 03 00 7C 00 02", "04 02", "pymodbus, test_framer.py")]
    [InlineData("FE 04 00 03 00 01", "D5 C5", "pymodbus, test_framer.py")]
    [InlineData("01 03 00 85 00 01", "95 E3", "github.com/howeyc/crc16, issue 6")]
    [InlineData("01 02 03 04 05 06 07 08 09", "0E B2", "page of the crcmodbus package")]
    [InlineData("03 01 04", "81 93", "page of the crcmodbus package")]
    [InlineData("19 89 56", "47 A9", "page of the crcmodbus package")]
    [InlineData("02 07", "41 12", "clause 6.2.2, figure 30")]
    [InlineData("01 03 00 00 00 0A", "C5 CD", "from memory")]
    [InlineData("11 03 00 6B 00 03", "76 87", "from memory")]
    [InlineData("11 06 00 01 00 03", "9A 9B", "from memory")]
    [InlineData("11 10 00 01 00 02 04 00 0A 01 02", "C6 F0", "from memory")]
    public void Checksum_on_the_wire(string bytes, string lowFirst, string source)
    {
        var all = Convert.FromHexString(bytes.Replace(" ", "", StringComparison.Ordinal));
        var crc = Crc16.Of(all);
        $"{crc & 0xFF:X2} {crc >> 8:X2}".ShouldBe(lowFirst, source);
        byte[] frame = [.. all, (byte)crc, (byte)(crc >> 8)];
        RtuFrame.Read(frame).State.ShouldBe(RtuFrameState.Whole, source);
    }

    /// <summary>Clause 2.5.1.1: 11 bits a character, fixed silences above 19,200 bit/s; the figures follow from it by arithmetic.</summary>
    [Theory]
    [InlineData(1200, 9.1667, 13.7500, 32.0833)]
    [InlineData(2400, 4.5833, 6.8750, 16.0417)]
    [InlineData(4800, 2.2917, 3.4375, 8.0208)]
    [InlineData(9600, 1.1458, 1.7188, 4.0104)]
    [InlineData(19200, 0.5729, 0.8594, 2.0052)]
    [InlineData(38400, 0.2865, 0.7500, 1.7500)]
    [InlineData(57600, 0.1910, 0.7500, 1.7500)]
    [InlineData(115200, 0.0955, 0.7500, 1.7500)]
    public void Silences_of_a_line(int bitsPerSecond, double character_ms, double within_ms, double between_ms)
    {
        var timing = new RtuTiming(bitsPerSecond);
        timing.Character.TotalMilliseconds.ShouldBe(character_ms, Tick_ms);
        timing.WithinFrame.TotalMilliseconds.ShouldBe(within_ms, Tick_ms);
        timing.BetweenFrames.TotalMilliseconds.ShouldBe(between_ms, Tick_ms);
    }

    /// <summary>Clause 2.2: 0 asks all, 1 to 247 are servers.</summary>
    [Fact]
    public void Frame_is_address_PDU_and_checksum()
    {
        var frame = new byte[ModbusLimits.RtuFrameLength];
        var length = RtuFrame.Write(new UnitId(0x11), [3, 0, 0x7C, 0, 2], frame);
        Convert.ToHexString(frame, 0, length).ShouldBe("1103007C00020743");
    }
}
