using Runup.Modbus.Serving;

namespace Runup.Modbus.Tests.Serving;

public sealed class RequestServerTests
{
    private readonly BankDevice _device = new();

    [Fact]
    public void Read_returns_what_was_written()
    {
        Answer("10 00 01 00 02 04 00 0A 01 02").ShouldBe("10 00 01 00 02");
        Answer("03 00 01 00 02").ShouldBe("03 04 00 0A 01 02");
    }

    [Fact]
    public void Input_registers_are_another_table() => Answer("04 00 08 00 01").ShouldBe("04 02 03 F0");

    [Fact]
    public void Write_single_is_echoed() => Answer("06 00 01 00 03").ShouldBe("06 00 01 00 03");

    [Fact]
    public void Read_write_reads_what_it_has_just_written() =>
        Answer("17 00 0E 00 03 00 0E 00 03 06 00 FF 00 FE 00 FD").ShouldBe("17 06 00 FF 00 FE 00 FD");

    [Fact]
    public void Address_the_device_does_not_have_is_exception_2() => Answer("03 03 E7 00 02").ShouldBe("83 02");

    [Fact]
    public void Value_the_device_does_not_allow_is_exception_3() => Answer("06 00 01 DE AD").ShouldBe("86 03");

    [Fact]
    public void Silent_device_gives_no_reply() => Answer("06 00 01 BE EF").ShouldBe("");

    [Fact]
    public void Device_that_throws_is_exception_4_and_known()
    {
        Exception? told = null;
        var server = new RequestServer(UnitRouting.Any(_device), failure => told = failure);
        Answer("06 00 01 FF FF", server).ShouldBe("86 04");
        told.ShouldBeOfType<InvalidOperationException>();
        server.DeviceFailure.ShouldBe(told);
        Answer("03 00 00 00 01", server).ShouldBe("03 02 00 00");
    }

    [Fact]
    public void Function_the_device_does_not_offer_is_exception_1()
    {
        var server = new RequestServer(UnitRouting.Any(new Nothing()));
        Answer("03 00 00 00 01", server).ShouldBe("83 01");
        Answer("04 00 00 00 01", server).ShouldBe("84 01");
        Answer("06 00 00 00 01", server).ShouldBe("86 01");
        Answer("10 00 00 00 01 02 00 01", server).ShouldBe("90 01");
        Answer("17 00 00 00 01 00 00 00 01 02 00 01", server).ShouldBe("97 01");
        Answer("2B 0E 01 00", server).ShouldBe("AB 01");
    }

    [Fact]
    public void Unit_that_is_not_here_is_exception_0B()
    {
        var server = new RequestServer(UnitRouting.Device(_device, new UnitId(7)));
        Answer("03 00 00 00 01", server, unit: 7).ShouldBe("03 02 00 00");
        Answer("03 00 00 00 01", server, unit: 0).ShouldBe("03 02 00 00");
        Answer("03 00 00 00 01", server, unit: 255).ShouldBe("03 02 00 00");
        Answer("03 00 00 00 01", server, unit: 8).ShouldBe("83 0B");
    }

    [Fact]
    public void Unit_that_is_not_here_may_be_met_with_silence() =>
        Answer("03 00 00 00 01", new RequestServer(UnitRouting.Device(_device, new UnitId(7), UnknownUnit.Silence)), unit: 8).ShouldBe("");

    [Fact]
    public void Answering_allocates_nothing()
    {
        var server = new RequestServer(UnitRouting.Any(_device));
        byte[][] requests = [Hex.Bytes("03 00 00 00 7D"), Hex.Bytes("10 00 01 00 02 04 00 0A 01 02"), Hex.Bytes("06 00 01 00 03"), Hex.Bytes("04 00 00 00 01")];
        var reply = new byte[ModbusLimits.PduLength];
        Ask(100);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Ask(1000);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);

        void Ask(int times)
        {
            for (var i = 0; i < times; i++)
            {
                foreach (var request in requests)
                {
                    _ = server.Answer(new UnitId(1), request, reply);
                }
            }
        }
    }

    private string Answer(string pdu, RequestServer? server = null, byte unit = 1)
    {
        server ??= new RequestServer(UnitRouting.Any(_device));
        var reply = new byte[ModbusLimits.PduLength];
        var length = server.Answer(new UnitId(unit), Hex.Bytes(pdu), reply);
        return Hex.Text(reply.AsSpan(0, length));
    }

    private sealed class Nothing : IModbusDevice;
}
