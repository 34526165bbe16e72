using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.DriveLink;
using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Modbus.Requests;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.SimulatedDrive.Clock;

namespace Runup.Outside.Tests.Modbus;

/// <summary>Our frames read by an independent dissector: tshark, from Debian's tshark.</summary>
public sealed class TsharkTests
{
    private static readonly UnitId Unit = new(17);

    [Fact]
    public async Task Dissector_finds_no_malformed_frame_in_a_whole_conversation()
    {
        Assert.SkipUnless(await OtherProgram.RunAsync("tshark", "--version") is { Status: 0 }, "tshark is not installed: apt-get install tshark");
        await using var server = ModbusTcpServer.Start(UnitRouting.Device(new RegisterBank(), Unit)).ShouldBeOfType<ServerStart.Listening>().Server;
        using var capture = new Capture((ushort)server.Endpoint.Port);
        await ConverseAsync(server, capture);
        capture.Finish();

        var lines = await DissectAsync(capture, server.Endpoint.Port);
        lines.Length.ShouldBe(capture.Frames);
        foreach (var line in lines)
        {
            var fields = line.Split('\t');
            fields[0].ShouldEndWith("mbtcp:modbus", customMessage: line);
            fields[1].ShouldBeEmpty(line);
            fields[2].ShouldBeEmpty(line);
        }

        // The functions it saw are those of the conversation, requests and replies.
        lines.Select(line => line.Split('\t')[3]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ShouldBe(["16", "23", "3", "4", "43", "6"]);
        lines.Select(line => line.Split('\t')[4]).Where(code => code.Length > 0).ShouldBe(["2", "3", "2"]);
    }

    [Fact]
    public async Task Dissector_finds_no_malformed_frame_between_the_program_and_the_simulated_drive()
    {
        Assert.SkipUnless(await OtherProgram.RunAsync("tshark", "--version") is { Status: 0 }, "tshark is not installed: apt-get install tshark");
        using var time = new PacedTime(1, TimeProvider.System);
        await using var host = SimulatedPump.Start(time);
        using var capture = new Capture((ushort)host.Endpoint.Port);
        var links = new ModbusDriveLinks(new LinkAddress("127.0.0.1", host.Endpoint.Port, 1), SimulatedPump.Profile, TimeProvider.System, capture.Tap);
        (await ReadDrive.Run("P-1", SimulatedPump.Profile, links, new InMemoryRecords(TimeProvider.System), TestContext.Current.CancellationToken)).ShouldBeOfType<DriveRead.Read>();
        capture.Finish();

        var lines = await DissectAsync(capture, host.Endpoint.Port);
        lines.Length.ShouldBe(capture.Frames);
        lines.Length.ShouldBeGreaterThan(6);
        foreach (var line in lines)
        {
            var fields = line.Split('\t');
            fields[0].ShouldEndWith("mbtcp:modbus", customMessage: line);
            fields[1].ShouldBeEmpty(line);
            fields[2].ShouldBeEmpty(line);
        }
    }

    [Fact]
    public async Task Dissector_would_see_a_malformed_frame()
    {
        Assert.SkipUnless(await OtherProgram.RunAsync("tshark", "--version") is { Status: 0 }, "tshark is not installed: apt-get install tshark");
        using var capture = new Capture(15_020);
        capture.Tap(FrameDirection.Sent, DateTimeOffset.UnixEpoch, [0, 1, 0, 0, 0, 4, 17, 3, 0, 0]);
        capture.Finish();
        var fields = (await DissectAsync(capture, 15_020))[0].Split('\t');
        fields[1].ShouldContain("Malformed Packet");
    }

    private static async Task ConverseAsync(ModbusTcpServer server, Capture capture)
    {
        var connected = await ModbusTcpClient.ConnectAsync("127.0.0.1", server.Endpoint.Port, new ModbusTcpClientOptions { Tap = capture.Tap, ReplyTimeout = TimeSpan.FromSeconds(10) });
        await using var client = connected.ShouldBeOfType<ConnectOutcome.Connected>().Client;
        ModbusRequest[] requests =
        [
            new ModbusRequest.ReadHoldingRegisters(new RegisterRange(0, 1)),
            new ModbusRequest.ReadHoldingRegisters(new RegisterRange(0, ModbusLimits.ReadCount)),
            new ModbusRequest.ReadInputRegisters(new RegisterRange(8, 2)),
            new ModbusRequest.WriteSingleRegister(new RegisterAddress(5), 0x1234),
            new ModbusRequest.WriteMultipleRegisters(new RegisterAddress(5), Words(2)),
            new ModbusRequest.WriteMultipleRegisters(new RegisterAddress(5), Words(ModbusLimits.WriteCount)),
            new ModbusRequest.ReadWriteMultipleRegisters(new RegisterRange(3, 6), new RegisterAddress(14), Words(3)),
            new ModbusRequest.ReadWriteMultipleRegisters(new RegisterRange(0, ModbusLimits.ReadCount), new RegisterAddress(14), Words(ModbusLimits.ReadWriteWriteCount)),
            new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Basic, default),
            new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Regular, default),
            new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Extended, default),
            new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Individual, IdentificationObjectId.ProductName),
        ];
        foreach (var request in requests)
        {
            (await client.SendAsync(Unit, request)).ShouldBeOfType<ModbusOutcome<Runup.Modbus.Replies.ModbusReply>.Answered>();
        }

        ModbusRequest[] refused =
        [
            new ModbusRequest.ReadHoldingRegisters(new RegisterRange(999, 2)),
            new ModbusRequest.WriteSingleRegister(new RegisterAddress(5), 0xDEAD),
            new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Individual, IdentificationObjectId.ModelName),
        ];
        foreach (var request in refused)
        {
            (await client.SendAsync(Unit, request)).ShouldBeOfType<ModbusOutcome<Runup.Modbus.Replies.ModbusReply>.Refused>();
        }
    }

    private static RegisterValues Words(int count) => new([.. Enumerable.Range(1, count).Select(i => (ushort)(i * 257))]);

    private static async Task<string[]> DissectAsync(Capture capture, int port)
    {
        var run = (await OtherProgram.RunAsync(
            "tshark", "-r", capture.Path, "-o", $"mbtcp.tcp.port:{port}", "-T", "fields",
            "-e", "frame.protocols", "-e", "_ws.malformed", "-e", "_ws.expert.message", "-e", "modbus.func_code", "-e", "modbus.exception_code")).ShouldNotBeNull();
        run.Status.ShouldBe(0, run.Errors);
        return run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
