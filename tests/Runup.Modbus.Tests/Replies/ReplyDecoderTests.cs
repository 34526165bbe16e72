using FsCheck.Xunit;
using Runup.Modbus.Identification;
using Runup.Modbus.Replies;
using Runup.Modbus.Requests;
using Runup.Modbus.Serving;
using Runup.Modbus.Tests.Serving;

namespace Runup.Modbus.Tests.Replies;

[Properties(Arbitrary = [typeof(AnyRequest), typeof(Mutation)], MaxTest = 2000)]
public sealed class ReplyDecoderTests
{
    private static readonly ModbusRequest ReadTwo = new ModbusRequest.ReadHoldingRegisters(new RegisterRange(1, 2));
    private static readonly ModbusRequest WriteOne = new ModbusRequest.WriteSingleRegister(new RegisterAddress(1), 3);
    private static readonly ModbusRequest WriteTwo = new ModbusRequest.WriteMultipleRegisters(new RegisterAddress(1), new RegisterValues(10, 258));
    private static readonly ModbusRequest Basic = new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Basic, default);
    private static readonly ModbusRequest One = new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Individual, new IdentificationObjectId(1));

    [Fact]
    public void Registers_are_as_many_as_asked_for() =>
        Decode("03 04 00 0A 01 02", ReadTwo).ShouldBe(new ReplyDecoding.Answered(new ModbusReply.Registers(new RegisterValues(10, 258))));

    [Fact]
    public void Exception_carries_its_code() => Decode("83 02", ReadTwo).ShouldBe(new ReplyDecoding.Refused(ExceptionCode.IllegalDataAddress));

    [Fact]
    public void Exception_code_of_no_specification_is_kept() => Decode("83 7F", ReadTwo).ShouldBe(new ReplyDecoding.Refused(new ExceptionCode(0x7F)));

    [Theory]
    [InlineData("", ReplyFault.Empty)]
    [InlineData("04 04 00 0A 01 02", ReplyFault.OtherFunction)]
    [InlineData("84 02", ReplyFault.OtherFunction)]
    [InlineData("83", ReplyFault.WrongLength)]
    [InlineData("83 02 00", ReplyFault.WrongLength)]
    [InlineData("03", ReplyFault.WrongLength)]
    [InlineData("03 02 00 0A", ReplyFault.WrongByteCount)]
    [InlineData("03 06 00 0A 01 02 00 00", ReplyFault.WrongByteCount)]
    [InlineData("03 04 00 0A 01", ReplyFault.WrongLength)]
    [InlineData("03 04 00 0A 01 02 00", ReplyFault.WrongLength)]
    public void Reply_to_a_read_that_does_not_fit_is_no_answer(string pdu, ReplyFault fault) =>
        Decode(pdu, ReadTwo).ShouldBe(new ReplyDecoding.NotAnAnswer(fault));

    [Theory]
    [InlineData("06 00 01 00 04", ReplyFault.WrongEcho)]
    [InlineData("06 00 02 00 03", ReplyFault.WrongEcho)]
    [InlineData("06 00 01 00", ReplyFault.WrongLength)]
    public void Echo_of_a_write_must_agree(string pdu, ReplyFault fault)
    {
        Decode("06 00 01 00 03", WriteOne).ShouldBe(new ReplyDecoding.Answered(new ModbusReply.Written(new RegisterRange(1, 1))));
        Decode(pdu, WriteOne).ShouldBe(new ReplyDecoding.NotAnAnswer(fault));
    }

    [Fact]
    public void Write_of_several_must_be_acknowledged_in_full()
    {
        Decode("10 00 01 00 02", WriteTwo).ShouldBe(new ReplyDecoding.Answered(new ModbusReply.Written(new RegisterRange(1, 2))));
        Decode("10 00 01 00 01", WriteTwo).ShouldBe(new ReplyDecoding.NotAnAnswer(ReplyFault.WrongEcho));
    }

    [Theory]
    [InlineData("2B 0E 01 01 00 00 01 00 02 41", ReplyFault.WrongLength, "value cut short")]
    [InlineData("2B 0E 01 01 00 00 02 00 01 41", ReplyFault.WrongLength, "an object missing")]
    [InlineData("2B 0E 01 01 00 00 01 00 01 41 42", ReplyFault.WrongLength, "a byte too many")]
    [InlineData("2B 0E 01 01 00 00", ReplyFault.WrongLength, "head cut short")]
    [InlineData("2B 0E 02 01 00 00 01 00 01 41", ReplyFault.WrongEcho, "another code")]
    [InlineData("2B 0D 01 01 00 00 01 00 01 41", ReplyFault.WrongEcho, "another MEI type")]
    [InlineData("2B 0E 01 01 00 00 00", ReplyFault.WrongObjects, "no object at all")]
    [InlineData("2B 0E 01 01 01 01 01 00 01 41", ReplyFault.WrongObjects, "more-follows is neither 0 nor FF")]
    [InlineData("2B 0E 01 01 FF 00 01 00 01 41", ReplyFault.WrongObjects, "next does not advance")]
    [InlineData("2B 0E 01 01 00 00 02 01 01 41 00 01 41", ReplyFault.WrongObjects, "not ascending")]
    public void Identification_that_contradicts_itself_is_no_answer(string pdu, ReplyFault fault, string why) =>
        Decode(pdu, Basic).ShouldBe(new ReplyDecoding.NotAnAnswer(fault), why);

    [Fact]
    public void Single_object_must_be_the_one_asked_for()
    {
        Decode("2B 0E 04 83 00 00 01 01 02 41 42", One).ShouldBeOfType<ReplyDecoding.Answered>()
            .Reply.ShouldBeOfType<ModbusReply.Identification>().Page.Objects[0].Text.ShouldBe("AB");
        Decode("2B 0E 04 83 00 00 01 02 02 41 42", One).ShouldBe(new ReplyDecoding.NotAnAnswer(ReplyFault.WrongObjects));
    }

    [Property]
    public void Any_bytes_give_an_answer_a_refusal_or_no_answer(byte[] bytes, ModbusRequest asked) =>
        ReplyDecoder.Decode(bytes, asked).ShouldNotBeNull();

    [Property]
    public void Any_bytes_after_the_right_function_are_judged(byte[] bytes, ModbusRequest asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ReplyDecoder.Decode([(byte)asked.Function, .. bytes], asked).ShouldNotBeNull();
    }

    [Property]
    public void Our_server_s_reply_is_understood_and_damage_to_its_length_is_not(ModbusRequest asked, Mutation damage)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(damage);
        var reply = ReplyOf(asked);
        if (reply.Length == 0)
        {
            return;
        }

        ReplyDecoder.Decode(reply, asked).ShouldNotBeOfType<ReplyDecoding.NotAnAnswer>();
        ReplyDecoder.Decode(damage.Apply(reply), asked).ShouldNotBeNull();
        ReplyDecoder.Decode((damage with { Kind = 3 + (damage.Kind % 2) }).Apply(reply), asked).ShouldBeOfType<ReplyDecoding.NotAnAnswer>();
    }

    private static byte[] ReplyOf(ModbusRequest asked)
    {
        var request = new byte[ModbusLimits.PduLength];
        var reply = new byte[ModbusLimits.PduLength];
        var length = new RequestServer(UnitRouting.Any(new BankDevice())).Answer(default, request.AsSpan(0, asked.Encode(request)), reply);
        return reply[..length];
    }

    private static ReplyDecoding Decode(string pdu, ModbusRequest asked) => ReplyDecoder.Decode(Hex.Bytes(pdu), asked);
}
