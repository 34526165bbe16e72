using Runup.Modbus;
using Runup.Modbus.Requests;
using Runup.Modbus.Tcp;

namespace Runup.Outside.Tests.Modbus;

/// <summary>
/// Limits of MODBUS Application Protocol V1.1b3 and of MODBUS Messaging on TCP/IP V1.0b; quantities and lengths also as libmodbus's modbus.h has them.
/// The order of the checks, quantity before address, is that of figures 11 to 22 of the former.
/// </summary>
public sealed class SpecificationLimits
{
    [Fact]
    public void Lengths_of_clause_4_1()
    {
        ModbusLimits.PduLength.ShouldBe(253);
        ModbusLimits.RtuFrameLength.ShouldBe(1 + 253 + 2);
        ModbusLimits.TcpFrameLength.ShouldBe(7 + 253);
    }

    [Theory]
    [InlineData(0x03, 125)]
    [InlineData(0x04, 125)]
    public void Registers_of_one_read(byte function, int most)
    {
        Exception([function, 0, 0, 0, (byte)most]).ShouldBeNull();
        Exception([function, 0, 0, 0, (byte)(most + 1)]).ShouldBe(3);
        Exception([function, 0, 0, 0, 0]).ShouldBe(3);
    }

    [Fact]
    public void Registers_of_one_write()
    {
        Exception([0x10, 0, 0, 0, 123, 246, .. new byte[246]]).ShouldBeNull();
        Exception([0x10, 0, 0, 0, 124, 248, .. new byte[248]]).ShouldBe(3);
    }

    [Fact]
    public void Registers_of_one_read_and_write()
    {
        Exception([0x17, 0, 0, 0, 125, 0, 0, 0, 121, 242, .. new byte[242]]).ShouldBeNull();
        Exception([0x17, 0, 0, 0, 126, 0, 0, 0, 1, 2, 0, 0]).ShouldBe(3);
        Exception([0x17, 0, 0, 0, 1, 0, 0, 0, 122, 244, .. new byte[244]]).ShouldBe(3);
    }

    [Fact]
    public void Function_is_checked_before_quantity_and_quantity_before_address()
    {
        Exception([0x09, 0xFF, 0xFF, 0, 0]).ShouldBe(1);
        Exception([0x03, 0xFF, 0xFF, 0, 0]).ShouldBe(3);
        Exception([0x03, 0xFF, 0xFF, 0, 2]).ShouldBe(2);
    }

    [Theory]
    [InlineData(1, "illegal function")]
    [InlineData(2, "illegal data address")]
    [InlineData(3, "illegal data value")]
    [InlineData(4, "server device failure")]
    [InlineData(5, "acknowledge")]
    [InlineData(6, "server device busy")]
    [InlineData(8, "memory parity error")]
    [InlineData(0x0A, "gateway path unavailable")]
    [InlineData(0x0B, "gateway target device failed to respond")]
    public void Exception_codes_of_clause_7(byte code, string name) => new ExceptionCode(code).Name.ShouldBe(name);

    /// <summary>TCP guide, clause 3.1.3: protocol 0; the length counts unit and PDU. The frame is one that pymodbus's own tests print.</summary>
    [Fact]
    public void Head_of_a_frame_on_TCP()
    {
        byte[] frame = [0, 0, 0, 0, 0, 6, 0x11, 3, 0, 0x7C, 0, 2];
        var reading = TcpFrame.Read(frame);
        reading.State.ShouldBe(TcpFrameState.Whole);
        reading.Unit.ShouldBe(new UnitId(0x11));
        RequestDecoder.Decode(reading.Pdu(frame)).Detach().ShouldBe(new ModbusRequest.ReadHoldingRegisters(new RegisterRange(0x7C, 2)));
        var written = new byte[12];
        frame.AsSpan(7).CopyTo(written.AsSpan(7));
        TcpFrame.WriteHeader(written, new TransactionId(0), new UnitId(0x11), 5).ShouldBe(12);
        written.ShouldBe(frame);
    }

    private static int? Exception(byte[] pdu) => RequestDecoder.Decode(pdu).Refusal?.Value;
}
