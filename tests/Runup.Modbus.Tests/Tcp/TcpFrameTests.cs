using FsCheck.Xunit;
using Runup.Modbus.Tcp;

namespace Runup.Modbus.Tests.Tcp;

/// <summary>Head of the frame: Modbus Messaging on TCP/IP Implementation Guide V1.0b, clause 3.1.3 (from memory); the example as pymodbus's own tests print it.</summary>
public sealed class TcpFrameTests
{
    private const string Example = "00 01 00 00 00 06 11 03 00 7C 00 02";

    [Fact]
    public void Whole_frame_is_taken_apart()
    {
        var bytes = Hex.Bytes(Example);
        var reading = TcpFrame.Read(bytes);
        reading.State.ShouldBe(TcpFrameState.Whole);
        reading.Transaction.ShouldBe(new TransactionId(1));
        reading.Unit.ShouldBe(new UnitId(0x11));
        reading.Length.ShouldBe(12);
        Hex.Text(reading.Pdu(bytes)).ShouldBe("03 00 7C 00 02");
    }

    [Fact]
    public void Every_beginning_of_a_frame_is_incomplete()
    {
        var bytes = Hex.Bytes(Example);
        for (var length = 0; length < bytes.Length; length++)
        {
            TcpFrame.Read(bytes.AsSpan(0, length)).State.ShouldBe(TcpFrameState.Incomplete, $"{length} bytes");
        }
    }

    [Fact]
    public void What_follows_a_frame_is_left() => TcpFrame.Read(Hex.Bytes(Example + " 00 02 00")).Length.ShouldBe(12);

    [Theory]
    [InlineData("00 01 00 01", "another protocol")]
    [InlineData("47 45 54 20", "a web browser")]
    [InlineData("00 01 00 00 00 00", "nothing follows")]
    [InlineData("00 01 00 00 00 01", "a unit without a function")]
    [InlineData("00 01 00 00 00 FF", "longer than the longest frame")]
    [InlineData("00 01 00 00 FF FF", "longer than the longest frame")]
    public void Head_that_can_not_be_is_known_at_once(string bytes, string why) =>
        TcpFrame.Read(Hex.Bytes(bytes)).State.ShouldBe(TcpFrameState.NotModbus, why);

    [Fact]
    public void Longest_frame_is_260_bytes()
    {
        var bytes = new byte[ModbusLimits.TcpFrameLength];
        TcpFrame.WriteHeader(bytes, new TransactionId(9), new UnitId(1), ModbusLimits.PduLength).ShouldBe(260);
        TcpFrame.Read(bytes).Length.ShouldBe(260);
    }

    [Property(MaxTest = 2000)]
    public void Any_bytes_give_one_of_three_states(byte[] bytes)
    {
        var reading = TcpFrame.Read(bytes);
        if (reading.State == TcpFrameState.Whole)
        {
            reading.Length.ShouldBeInRange(TcpFrame.HeaderLength + 1, Math.Min(bytes.Length, ModbusLimits.TcpFrameLength));
        }

        reading.Pdu(bytes).Length.ShouldBe(reading.State == TcpFrameState.Whole ? reading.Length - TcpFrame.HeaderLength : 0);
    }
}
