using System.Net;
using Microsoft.Extensions.Time.Testing;
using Runup.Modbus.Identification;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.Modbus.Tests.Serving;

namespace Runup.Modbus.Tests.Tcp;

/// <summary>What a server does whichever way it waits.</summary>
public abstract class ModbusTcpServerContract(ServerThreading threading)
{
    private const string ReadOne = "00 01 00 00 00 06 01 03 00 00 00 01";
    private const string ReadOneReply = "00 01 00 00 00 05 01 03 02 00 00";
    private readonly FakeTimeProvider _time = new();
    private readonly BankDevice _device = new();

    [Fact]
    public async Task Client_and_server_agree_on_every_function()
    {
        await using var server = Start();
        await using var client = await ConnectAsync(server);
        var unit = new UnitId(1);
        (await client.WriteRegisterAsync(unit, new RegisterAddress(5), 42)).ShouldBe(new ModbusOutcome<RegisterRange>.Answered(new RegisterRange(5, 1)));
        (await client.WriteRegistersAsync(unit, new RegisterAddress(6), new RegisterValues(1, 2))).ShouldBe(new ModbusOutcome<RegisterRange>.Answered(new RegisterRange(6, 2)));
        (await client.ReadHoldingRegistersAsync(unit, new RegisterRange(5, 3))).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(42, 1, 2)));
        (await client.ReadInputRegistersAsync(unit, new RegisterRange(0, 2))).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(1000, 1001)));
        (await client.ReadWriteRegistersAsync(unit, new RegisterRange(5, 2), new RegisterAddress(6), new RegisterValues(9)))
            .ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(42, 9)));
        (await client.ReadHoldingRegistersAsync(unit, new RegisterRange(900, 125))).ShouldBe(new ModbusOutcome<RegisterValues>.Refused(ExceptionCode.IllegalDataAddress));
        (await client.ReadIdentificationAsync(unit, ReadDeviceIdCode.Extended)).ShouldBeOfType<ModbusOutcome<IReadOnlyList<IdentificationObject>>.Answered>()
            .Value.Select(one => one.Text).ShouldBe(["Invented Works", "BANK", "V1.0", "Register bank"]);
        (await client.ReadIdentificationObjectAsync(unit, IdentificationObjectId.ProductCode)).ShouldBeOfType<ModbusOutcome<IdentificationObject>.Answered>()
            .Value.Text.ShouldBe("BANK");
    }

    [Fact]
    public async Task Several_requests_in_one_packet_are_answered_in_order()
    {
        await using var server = Start();
        using var line = await RawLine.ToAsync(server.Endpoint);
        await line.SendAsync("00 01 00 00 00 06 01 06 00 05 00 07 00 02 00 00 00 06 01 03 00 05 00 01 00 03 00 00 00 06 01 41 00 05 00 01");
        (await line.ReceiveAsync(12 + 11 + 9)).ShouldBe("00 01 00 00 00 06 01 06 00 05 00 07 00 02 00 00 00 05 01 03 02 00 07 00 03 00 00 00 03 01 C1 01");
    }

    [Fact]
    public async Task Request_may_come_in_single_bytes()
    {
        await using var server = Start();
        using var line = await RawLine.ToAsync(server.Endpoint);
        foreach (var one in ReadOne.Split(' '))
        {
            await line.SendAsync(one);
        }

        (await line.ReceiveAsync(11)).ShouldBe(ReadOneReply);
    }

    [Fact]
    public async Task Longest_request_and_longest_reply_pass()
    {
        await using var server = Start();
        using var line = await RawLine.ToAsync(server.Endpoint);
        byte[] write = [0, 1, 0, 0, 0, 253, 1, 16, 0, 0, 0, 123, 246, .. Enumerable.Range(0, 246).Select(i => (byte)i)];
        await line.SendAsync(write);
        (await line.ReceiveAsync(12)).ShouldBe("00 01 00 00 00 06 01 10 00 00 00 7B");
        await line.SendAsync("00 02 00 00 00 06 01 03 00 00 00 7D");
        (await line.ReceiveAsync(259)).ShouldBe("00 02 00 00 00 FD 01 03 FA " + Hex.Text([.. write.AsSpan(13), 0, 0, 0, 0]));
    }

    [Theory]
    [InlineData("47 45 54 20 2F 20 48 54 54 50")]
    [InlineData("00 01 00 00 00 00")]
    [InlineData("00 01 00 00 FF FF 01 03")]
    public async Task Line_that_does_not_speak_Modbus_is_closed_and_the_others_go_on(string bytes)
    {
        await using var server = Start();
        using var good = await RawLine.ToAsync(server.Endpoint);
        using var bad = await RawLine.ToAsync(server.Endpoint);
        await bad.SendAsync(bytes);
        await bad.IsClosedAsync();
        await good.SendAsync(ReadOne);
        (await good.ReceiveAsync(11)).ShouldBe(ReadOneReply);
    }

    [Fact]
    public async Task Frame_begun_and_dribbled_is_cut_off_in_time()
    {
        await using var server = Start();
        using var quiet = await RawLine.ToAsync(server.Endpoint);
        using var slow = await RawLine.ToAsync(server.Endpoint);
        await quiet.SendAsync(ReadOne);
        await quiet.ReceiveAsync(11);
        await slow.SendAsync(ReadOne + " 00 02 00");
        (await slow.ReceiveAsync(11)).ShouldBe(ReadOneReply);
        _time.Advance(TimeSpan.FromSeconds(4));
        await slow.SendAsync("00");
        server.ConnectionCount.ShouldBe(2);
        _time.Advance(TimeSpan.FromSeconds(3));
        await slow.IsClosedAsync();
        await quiet.SendAsync(ReadOne);
        (await quiet.ReceiveAsync(11)).ShouldBe(ReadOneReply);
    }

    [Fact]
    public async Task Line_that_does_not_take_its_replies_is_cut_off_in_time()
    {
        await using var server = Start();
        using var greedy = await RawLine.ToAsync(server.Endpoint);
        using var good = await RawLine.ToAsync(server.Endpoint);
        var flooding = greedy.FloodAsync(Hex.Bytes("00 01 00 00 00 06 01 03 00 00 00 7D"));
        while (!flooding.IsCompleted)
        {
            _time.Advance(TimeSpan.FromSeconds(6));
            await good.SendAsync(ReadOne);
            (await good.ReceiveAsync(11)).ShouldBe(ReadOneReply);
        }

        await flooding;
    }

    [Fact]
    public async Task Idle_line_is_kept_unless_told_otherwise()
    {
        await using var server = Start();
        using var line = await RawLine.ToAsync(server.Endpoint);
        await line.SendAsync(ReadOne);
        await line.ReceiveAsync(11);
        _time.Advance(TimeSpan.FromDays(30));
        await line.SendAsync(ReadOne);
        (await line.ReceiveAsync(11)).ShouldBe(ReadOneReply);
    }

    [Fact]
    public async Task Idle_line_is_closed_after_the_idle_time()
    {
        await using var server = Start(options => options with { IdleTimeout = TimeSpan.FromMinutes(1) });
        using var line = await RawLine.ToAsync(server.Endpoint);
        await line.SendAsync(ReadOne);
        await line.ReceiveAsync(11);
        _time.Advance(TimeSpan.FromMinutes(2));
        await line.IsClosedAsync();
    }

    [Fact]
    public async Task Line_beyond_the_limit_is_closed_at_once_and_a_place_given_up_can_be_taken()
    {
        await using var server = Start(options => options with { MaxConnections = 2 });
        var first = await RawLine.ToAsync(server.Endpoint);
        using var second = await RawLine.ToAsync(server.Endpoint);
        await first.SendAsync(ReadOne);
        await first.ReceiveAsync(11);
        await second.SendAsync(ReadOne);
        await second.ReceiveAsync(11);
        using var third = await RawLine.ToAsync(server.Endpoint);
        await third.IsClosedAsync();
        first.Dispose();
        while (server.ConnectionCount > 1)
        {
            await Task.Yield();
        }

        using var fourth = await RawLine.ToAsync(server.Endpoint);
        await fourth.SendAsync(ReadOne);
        (await fourth.ReceiveAsync(11)).ShouldBe(ReadOneReply);
    }

    [Fact]
    public async Task Stopping_closes_every_line_and_frees_the_port()
    {
        var server = Start();
        using var line = await RawLine.ToAsync(server.Endpoint);
        await line.SendAsync(ReadOne);
        await line.ReceiveAsync(11);
        await server.DisposeAsync();
        await line.IsClosedAsync();
        server.ConnectionCount.ShouldBe(0);
        await using var again = Start(options => options with { Port = server.Endpoint.Port });
        again.Endpoint.Port.ShouldBe(server.Endpoint.Port);
        await again.DisposeAsync();
    }

    [Fact]
    public async Task Port_that_is_taken_is_an_outcome()
    {
        await using var server = Start();
        ModbusTcpServer.Start(UnitRouting.Any(_device), new ModbusTcpServerOptions { Port = server.Endpoint.Port, Threading = threading })
            .ShouldBeOfType<ServerStart.PortTaken>();
    }

    [Fact]
    public async Task Only_this_machine_is_listened_to_by_default()
    {
        await using var server = Start();
        server.Endpoint.Address.ShouldBe(IPAddress.Loopback);
    }

    [Fact]
    public async Task Tap_sees_requests_and_replies_in_order()
    {
        List<string> seen = [];
        await using var server = Start(options => options with { Tap = (direction, _, bytes) => seen.Add($"{direction} {Hex.Text(bytes)}") });
        using var line = await RawLine.ToAsync(server.Endpoint);
        await line.SendAsync(ReadOne);
        await line.ReceiveAsync(11);
        await line.SendAsync("01 02 03 04");
        await line.IsClosedAsync();
        seen.ShouldBe(["Received " + ReadOne, "Sent " + ReadOneReply, "Received 01 02 03 04"]);
    }

    [Fact]
    public async Task Many_lines_at_once_are_each_given_their_own_answers()
    {
        await using var server = Start();
        for (ushort i = 0; i < BankDevice.Size; i++)
        {
            _device.Holding[i] = i;
        }

        await Task.WhenAll(Enumerable.Range(0, 50).Select(async n =>
        {
            await using var client = await ConnectAsync(server, TimeProvider.System);
            for (var i = 0; i < 50; i++)
            {
                var at = (ushort)((n * 19) + i);
                (await client.ReadHoldingRegistersAsync(new UnitId(1), new RegisterRange(at, 1)))
                    .ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(at)));
            }
        }));
    }

    [Fact]
    public async Task Noise_on_many_lines_does_not_disturb_a_good_one()
    {
        const int Seed = 20_260;
        var random = new Random(Seed);
        await using var server = Start();
        using var good = await RawLine.ToAsync(server.Endpoint);
        for (var i = 0; i < 300; i++)
        {
            var noise = new byte[random.Next(1, 600)];
            random.NextBytes(noise);
            if (i % 2 == 0)
            {
                // A head that is right and a length that fits, so that the noise reaches the decoder.
                noise = [0, 1, 0, 0, 0, (byte)Math.Clamp(noise.Length, 2, 254), .. noise.AsSpan(0, Math.Min(noise.Length, 254)), .. noise];
                noise[7] = (byte)random.Next(3, 48);
            }

            using var bad = await RawLine.ToAsync(server.Endpoint);
            await bad.SendAsync(noise);
            await good.SendAsync(ReadOne);
            (await good.ReceiveAsync(9)).ShouldBe(ReadOneReply[..26]);
            await good.ReceiveAsync(2);
        }

        // The noise may hit the one value at which the device itself breaks; nothing else may have thrown.
        (server.DeviceFailure?.Message ?? BankDevice.Breakdown).ShouldBe(BankDevice.Breakdown);
    }

    private async Task<ModbusTcpClient> ConnectAsync(ModbusTcpServer server, TimeProvider? time = null) =>
        (await ModbusTcpClient.ConnectAsync("127.0.0.1", server.Endpoint.Port, new ModbusTcpClientOptions { Time = time ?? _time, ReplyTimeout = TimeSpan.FromSeconds(30) }))
            .ShouldBeOfType<ConnectOutcome.Connected>().Client;

    private ModbusTcpServer Start(Func<ModbusTcpServerOptions, ModbusTcpServerOptions>? change = null)
    {
        var options = new ModbusTcpServerOptions { Time = _time, Threading = threading };
        return ModbusTcpServer.Start(UnitRouting.Any(_device), change?.Invoke(options) ?? options).ShouldBeOfType<ServerStart.Listening>().Server;
    }
}

public sealed class ThreadPoolServerTests() : ModbusTcpServerContract(ServerThreading.ThreadPool);

/// <summary>On a system without epoll this is the thread pool once more.</summary>
public sealed class ReadinessServerTests() : ModbusTcpServerContract(ServerThreading.ReadinessLoop);
