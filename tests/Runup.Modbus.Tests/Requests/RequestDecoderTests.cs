using Runup.Modbus.Requests;

namespace Runup.Modbus.Tests.Requests;

/// <summary>Exception codes and the order of checks: Modbus Application Protocol V1.1b3, clauses 6 and 7 (from memory; quantities also in libmodbus's modbus.h).</summary>
public sealed class RequestDecoderTests
{
    [Theory]
    [InlineData("", "no function at all")]
    [InlineData("00", "function 0")]
    [InlineData("01 00 00 00 01", "read coils is not spoken")]
    [InlineData("2B 0D 00 00", "another MEI type")]
    [InlineData("83 02", "an exception reply is no request")]
    public void Function_not_spoken_is_exception_1(string pdu, string why) => Refusal(pdu, 1, why);

    [Theory]
    [InlineData("03 00 00 00 00", "no registers")]
    [InlineData("03 00 00 00 7E", "126 registers")]
    [InlineData("03 FF FF 00 7E", "quantity is checked before address")]
    [InlineData("04 00 00 FF FF", "65,535 registers")]
    [InlineData("03 00 00 00", "cut short")]
    [InlineData("03 00 00 00 01 00", "a byte too many")]
    [InlineData("06 00 01 00", "cut short")]
    [InlineData("06 00 01 00 03 00", "a byte too many")]
    [InlineData("10 00 01", "cut short")]
    [InlineData("10 00 01 00 00 00", "nothing to write")]
    [InlineData("10 00 01 00 02 04 00 0A 01", "data shorter than its byte count")]
    [InlineData("10 00 01 00 02 04 00 0A 01 02 03", "data longer than its byte count")]
    [InlineData("10 00 01 00 02 03 00 0A 01", "byte count is not twice the quantity")]
    [InlineData("10 00 01 00 01 04 00 0A 01 02", "quantity smaller than the data")]
    [InlineData("17 00 00 00 00 00 00 00 01 02 00 00", "nothing to read")]
    [InlineData("17 00 00 00 7E 00 00 00 01 02 00 00", "126 to read")]
    [InlineData("17 00 00 00 01 00 00 00 00 00", "nothing to write")]
    [InlineData("17 00 00 00 01 00 00 00 01 02 00", "data shorter than its byte count")]
    [InlineData("17 00 00 00 01 00 00 00 02 02 00 00", "byte count is not twice the quantity")]
    [InlineData("2B", "no MEI type")]
    [InlineData("2B 0E 00 00", "no such read code")]
    [InlineData("2B 0E 05 00", "no such read code")]
    [InlineData("2B 0E 01", "cut short")]
    [InlineData("2B 0E 01 00 00", "a byte too many")]
    public void Quantity_or_length_that_does_not_agree_is_exception_3(string pdu, string why) => Refusal(pdu, 3, why);

    [Theory]
    [InlineData("03 FF FF 00 02", "runs off the end")]
    [InlineData("04 FF FE 00 03", "runs off the end")]
    [InlineData("10 FF FF 00 02 04 00 0A 01 02", "runs off the end")]
    [InlineData("17 FF FF 00 02 00 00 00 01 02 00 00", "the read runs off the end")]
    [InlineData("17 00 00 00 01 FF FF 00 02 04 00 00 00 00", "the write runs off the end")]
    public void Range_beyond_the_last_address_is_exception_2(string pdu, string why) => Refusal(pdu, 2, why);

    [Fact]
    public void Last_register_of_all_can_be_asked_for() =>
        RequestDecoder.Decode(Hex.Bytes("03 FF FF 00 01")).Detach()
            .ShouldBe(new ModbusRequest.ReadHoldingRegisters(new RegisterRange(0xFFFF, 1)));

    [Fact]
    public void Largest_write_and_largest_read_write_are_accepted()
    {
        RequestDecoder.Decode([0x10, 0, 0, 0, 123, 246, .. new byte[246]]).Refusal.ShouldBeNull();
        RequestDecoder.Decode([0x10, 0, 0, 0, 124, 248, .. new byte[248]]).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
        RequestDecoder.Decode([0x17, 0, 0, 0, 125, 0, 0, 0, 121, 242, .. new byte[242]]).Refusal.ShouldBeNull();
        RequestDecoder.Decode([0x17, 0, 0, 0, 125, 0, 0, 0, 122, 244, .. new byte[244]]).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
    }

    [Fact]
    public void Byte_count_is_not_fooled_by_the_quantity_of_256_bytes()
    {
        // 128 registers are 256 bytes, which a byte count of 0 would equal if only its low eight bits were compared.
        RequestDecoder.Decode([0x10, 0, 0, 0, 128, 0]).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
    }

    private static void Refusal(string pdu, byte code, string why)
    {
        var decoded = RequestDecoder.Decode(Hex.Bytes(pdu));
        decoded.Refusal.ShouldBe(new ExceptionCode(code), why);
        decoded.Function.ShouldBe(FunctionCode.None);
        decoded.Detach().ShouldBeNull();
    }
}
