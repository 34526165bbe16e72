using System.Text;
using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Modbus.Replies;
using Runup.Modbus.Requests;
using Runup.Modbus.Serving;

namespace Runup.Outside.Tests.Modbus;

/// <summary>
/// The examples printed in MODBUS Application Protocol Specification V1.1b3 (April 26, 2012), clause beside each.
/// Bytes of 6.3, 6.4, 6.6, 6.12 and 6.17 as several public implementations' tests repeat them; 6.21 from memory, see there.
/// </summary>
public sealed class SpecificationExamples
{
    [Fact]
    public void Clause_6_3_read_registers_108_to_110() =>
        Both("03 00 6B 00 03", "03 06 02 2B 00 00 00 64", new ModbusRequest.ReadHoldingRegisters(new RegisterRange(107, 3)), new ModbusReply.Registers(new RegisterValues(555, 0, 100)));

    [Fact]
    public void Clause_6_4_read_input_register_9() =>
        Both("04 00 08 00 01", "04 02 00 0A", new ModbusRequest.ReadInputRegisters(new RegisterRange(8, 1)), new ModbusReply.Registers(new RegisterValues(10)));

    [Fact]
    public void Clause_6_6_write_register_2() =>
        Both("06 00 01 00 03", "06 00 01 00 03", new ModbusRequest.WriteSingleRegister(new RegisterAddress(1), 3), new ModbusReply.Written(new RegisterRange(1, 1)));

    [Fact]
    public void Clause_6_12_write_two_registers() =>
        Both(
            "10 00 01 00 02 04 00 0A 01 02",
            "10 00 01 00 02",
            new ModbusRequest.WriteMultipleRegisters(new RegisterAddress(1), new RegisterValues(0x000A, 0x0102)),
            new ModbusReply.Written(new RegisterRange(1, 2)));

    [Fact]
    public void Clause_6_17_read_six_and_write_three_registers() =>
        Both(
            "17 00 03 00 06 00 0E 00 03 06 00 FF 00 FF 00 FF",
            "17 0C 00 FE 0A CD 00 01 00 03 00 0D 00 FF",
            new ModbusRequest.ReadWriteMultipleRegisters(new RegisterRange(3, 6), new RegisterAddress(14), new RegisterValues(0xFF, 0xFF, 0xFF)),
            new ModbusReply.Registers(new RegisterValues(0x00FE, 0x0ACD, 1, 3, 13, 0xFF)));

    /// <summary>From memory. The printed table gives the second object the length 0D for a text of fifteen characters; the length here is that of the text.</summary>
    [Fact]
    public void Clause_6_21_basic_device_identification()
    {
        var request = new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Basic, IdentificationObjectId.VendorName);
        Encoded(request).ShouldBe(Bytes("2B 0E 01 00"));
        byte[] objects = [0, 0x16, .. Ascii("Company identification"), 1, 0x0F, .. Ascii("Product code XX"), 2, 5, .. Ascii("V2.11")];
        var page = ReplyDecoder.Decode([.. Bytes("2B 0E 01 01 00 00 03"), .. objects], request)
            .ShouldBeOfType<ReplyDecoding.Answered>().Reply.ShouldBeOfType<ModbusReply.Identification>().Page;
        page.Conformity.Category.ShouldBe(ReadDeviceIdCode.Basic);
        page.Conformity.AllowsIndividualAccess.ShouldBeFalse();
        page.Objects.Select(one => one.Text).ShouldBe(["Company identification", "Product code XX", "V2.11"]);

        // Our own device differs from the printed one in offering single objects too.
        var device = new RegisterBank { Identification = new DeviceIdentification("Company identification", "Product code XX", "V2.11") };
        Answered(device, Bytes("2B 0E 01 00")).ShouldBe([.. Bytes("2B 0E 01 81 00 00 03"), .. objects]);
    }

    /// <summary>Clause 7's example asks for a coil (01 04 A1 00 01, answered 81 02); here the same exception to a function we speak.</summary>
    [Fact]
    public void Clause_7_exception_is_the_function_with_its_highest_bit_set_and_a_code()
    {
        Answered(new RegisterBank(), Bytes("03 04 A1 00 01")).ShouldBe(Bytes("83 02"));
        Answered(new RegisterBank(), Bytes("01 04 A1 00 01")).ShouldBe(Bytes("81 01"));
    }

    private static void Both(string request, string reply, ModbusRequest asked, ModbusReply said)
    {
        Encoded(asked).ShouldBe(Bytes(request));
        RequestDecoder.Decode(Bytes(request)).Detach().ShouldBe(asked);
        ReplyDecoder.Decode(Bytes(reply), asked).ShouldBe(new ReplyDecoding.Answered(said));
        Answered(new Printed(), Bytes(request)).ShouldBe(Bytes(reply));
    }

    private static byte[] Encoded(ModbusRequest request)
    {
        var pdu = new byte[ModbusLimits.PduLength];
        return pdu[..request.Encode(pdu)];
    }

    private static byte[] Answered(IModbusDevice device, byte[] request)
    {
        var reply = new byte[ModbusLimits.PduLength];
        return reply[..new RequestServer(UnitRouting.Any(device)).Answer(default, request, reply)];
    }

    private static byte[] Bytes(string spaced) => Convert.FromHexString(spaced.Replace(" ", "", StringComparison.Ordinal));

    private static byte[] Ascii(string text) => Encoding.ASCII.GetBytes(text);

    /// <summary>Holds what the printed replies say.</summary>
    private sealed class Printed : IModbusDevice
    {
        private readonly Dictionary<int, ushort> _holding = new()
        {
            [3] = 0x00FE,
            [4] = 0x0ACD,
            [5] = 1,
            [6] = 3,
            [7] = 13,
            [8] = 0xFF,
            [107] = 555,
            [108] = 0,
            [109] = 100,
        };

        public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
        {
            for (var i = 0; i < values.Length; i++)
            {
                values[i] = _holding[range.Start.Value + i];
            }

            return DeviceAnswer.Done;
        }

        public DeviceAnswer ReadInputRegisters(RegisterRange range, Span<ushort> values)
        {
            values[0] = 10;
            return DeviceAnswer.Done;
        }

        public DeviceAnswer WriteRegister(RegisterAddress address, ushort value) => WriteRegisters(new RegisterRange(address, 1), [value]);

        public DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values)
        {
            for (var i = 0; i < values.Length; i++)
            {
                _holding[range.Start.Value + i] = values[i];
            }

            return DeviceAnswer.Done;
        }

        public DeviceAnswer ReadWriteRegisters(RegisterRange read, Span<ushort> readValues, RegisterRange write, ReadOnlySpan<ushort> written)
        {
            WriteRegisters(write, written);
            return ReadHoldingRegisters(read, readValues);
        }
    }
}
