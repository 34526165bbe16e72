using Runup.Modbus.Identification;
using Runup.Modbus.Replies;
using Runup.Modbus.Requests;
using Runup.Modbus.Serving;

namespace Runup.Modbus.Tests.Identification;

/// <summary>Modbus Application Protocol V1.1b3, clause 6.21 (from memory).</summary>
public sealed class DeviceIdentificationTests
{
    private static readonly IdentificationObjectId Own = new(0x80);

    private static readonly DeviceIdentification Full = new DeviceIdentification("Invented Works", "X1", "V2")
        .With(IdentificationObjectId.ProductName, "Pump drive")
        .With(Own, "serial 17");

    [Theory]
    [InlineData(ReadDeviceIdCode.Basic, 3)]
    [InlineData(ReadDeviceIdCode.Regular, 4)]
    [InlineData(ReadDeviceIdCode.Extended, 5)]
    public void Category_brings_all_below_it(ReadDeviceIdCode code, int count)
    {
        var page = Ask(Full, code);
        page.Objects.Length.ShouldBe(count);
        page.Next.ShouldBeNull();
        page.Conformity.ShouldBe(new ConformityLevel(0x83));
    }

    [Fact]
    public void Conformity_is_that_of_the_highest_object()
    {
        var basic = new DeviceIdentification("A", "B", "C");
        basic.Conformity.Value.ShouldBe((byte)0x81);
        basic.With(IdentificationObjectId.VendorUrl, "example.org").Conformity.Value.ShouldBe((byte)0x82);
        basic.With(Own, "D").Conformity.Value.ShouldBe((byte)0x83);
        basic.Conformity.AllowsIndividualAccess.ShouldBeTrue();
        basic.Conformity.Category.ShouldBe(ReadDeviceIdCode.Basic);
    }

    [Fact]
    public void Category_the_device_does_not_have_is_answered_with_what_it_has() =>
        Ask(new DeviceIdentification("A", "B", "C"), ReadDeviceIdCode.Extended).Objects.Length.ShouldBe(3);

    [Fact]
    public void Stream_goes_on_where_it_is_told() =>
        Ask(Full, ReadDeviceIdCode.Extended, 2).Objects.Select(one => one.Id.Value).ShouldBe([2, 4, 0x80]);

    [Theory]
    [InlineData(3)]
    [InlineData(0x81)]
    public void Stream_from_an_object_that_is_not_there_begins_anew(byte from) =>
        Ask(Full, ReadDeviceIdCode.Extended, from).Objects[0].Id.ShouldBe(IdentificationObjectId.VendorName);

    [Fact]
    public void Single_object_is_had_by_its_id() => Ask(Full, ReadDeviceIdCode.Individual, 0x80).Objects.Single().Text.ShouldBe("serial 17");

    [Fact]
    public void Single_object_that_is_not_there_is_exception_2() => Answer(Full, "2B 0E 04 05").ShouldBe("AB 02");

    [Fact]
    public void What_does_not_fit_in_one_reply_follows_in_the_next()
    {
        var wordy = new DeviceIdentification(new string('a', 244), new string('b', 200), new string('c', 60));
        var first = Ask(wordy, ReadDeviceIdCode.Basic);
        first.Objects.Single().Text.Length.ShouldBe(244);
        first.Next.ShouldBe(IdentificationObjectId.ProductCode);
        var second = Ask(wordy, ReadDeviceIdCode.Basic, 1);
        second.Next.ShouldBe(IdentificationObjectId.MajorMinorRevision);
        Ask(wordy, ReadDeviceIdCode.Basic, 2).Next.ShouldBeNull();
    }

    [Fact]
    public void Object_that_no_reply_could_hold_is_not_taken() =>
        Should.Throw<ArgumentException>(() => new DeviceIdentification(new string('a', 245), "", ""));

    [Fact]
    public void Object_that_is_not_ASCII_is_not_taken() => Should.Throw<ArgumentException>(() => Full.With(Own, "Prüfstand"));

    private static IdentificationPage Ask(DeviceIdentification identification, ReadDeviceIdCode code, byte from = 0)
    {
        var asked = new ModbusRequest.ReadDeviceIdentification(code, new IdentificationObjectId(from));
        var request = new byte[ModbusLimits.PduLength];
        var reply = Hex.Bytes(Answer(identification, Hex.Text(request.AsSpan(0, asked.Encode(request)))));
        return ReplyDecoder.Decode(reply, asked).ShouldBeOfType<ReplyDecoding.Answered>().Reply.ShouldBeOfType<ModbusReply.Identification>().Page;
    }

    private static string Answer(DeviceIdentification identification, string request)
    {
        var reply = new byte[ModbusLimits.PduLength];
        var server = new RequestServer(UnitRouting.Any(new Named(identification)));
        return Hex.Text(reply.AsSpan(0, server.Answer(default, Hex.Bytes(request), reply)));
    }

    private sealed class Named(DeviceIdentification identification) : IModbusDevice
    {
        public DeviceIdentification? Identification => identification;
    }
}
