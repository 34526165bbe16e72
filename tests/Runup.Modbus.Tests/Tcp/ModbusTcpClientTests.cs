using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Time.Testing;
using Runup.Modbus.Identification;
using Runup.Modbus.Replies;
using Runup.Modbus.Tcp;

namespace Runup.Modbus.Tests.Tcp;

public sealed class ModbusTcpClientTests
{
    private static readonly UnitId Unit = new(0x11);
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);
    private readonly FakeTimeProvider _time = new();

    [Fact]
    public async Task Answer_is_taken()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0x7C, 2));
        Hex.Text(await server.ReceiveAsync()).ShouldBe("00 01 00 00 00 06 11 03 00 7C 00 02");
        await server.SendAsync("00 01 00 00 00 07 11 03 04 00 8D 00 8E");
        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x8D, 0x8E)));
    }

    [Fact]
    public async Task Answer_may_come_in_single_bytes()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0x7C, 1));
        await server.ReceiveAsync();
        foreach (var one in "00 01 00 00 00 05 11 03 02 00 8D".Split(' '))
        {
            await server.SendAsync(one);
        }

        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x8D)));
    }

    [Fact]
    public async Task Exception_is_a_refusal()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var writing = client.WriteRegisterAsync(Unit, new RegisterAddress(1), 3);
        await server.ReceiveAsync();
        await server.SendAsync("00 01 00 00 00 03 11 86 02");
        (await writing).ShouldBe(new ModbusOutcome<RegisterRange>.Refused(ExceptionCode.IllegalDataAddress));
    }

    [Fact]
    public async Task Silence_times_out_on_the_client_s_clock()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        _time.Advance(Second - TimeSpan.FromMilliseconds(1));
        reading.IsCompleted.ShouldBeFalse();
        _time.Advance(TimeSpan.FromMilliseconds(1));
        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.TimedOut(Second));
        client.IsConnected.ShouldBeTrue();
    }

    [Fact]
    public async Task Request_s_own_time_out_goes_before_the_link_s()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1), TimeSpan.FromMilliseconds(80));
        await server.ReceiveAsync();
        _time.Advance(TimeSpan.FromMilliseconds(80));
        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.TimedOut(TimeSpan.FromMilliseconds(80)));
    }

    [Fact]
    public async Task Late_reply_is_never_taken_for_the_next_request_s()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var first = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        _time.Advance(Second);
        (await first).ShouldBeOfType<ModbusOutcome<RegisterValues>.TimedOut>();

        var second = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        Hex.Text(await server.ReceiveAsync()).ShouldStartWith("00 02");
        await server.SendAsync("00 01 00 00 00 05 11 03 02 11 11");
        await server.SendAsync("00 02 00 00 00 05 11 03 02 22 22");
        (await second).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x2222)));
        client.DiscardedReplies.ShouldBe(1);
    }

    [Fact]
    public async Task Second_answer_to_one_request_is_discarded()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var first = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync("00 01 00 00 00 05 11 03 02 11 11 00 01 00 00 00 05 11 03 02 33 33");
        (await first).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x1111)));

        var second = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync("00 02 00 00 00 05 11 03 02 22 22");
        (await second).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x2222)));
    }

    [Theory]
    [InlineData("00 01 00 00 00 05 12 03 02 00 8D", ReplyFault.OtherUnit)]
    [InlineData("00 01 00 00 00 05 11 04 02 00 8D", ReplyFault.OtherFunction)]
    [InlineData("00 01 00 00 00 07 11 03 04 00 8D 00 8E", ReplyFault.WrongByteCount)]
    [InlineData("00 01 00 00 00 04 11 03 02 00", ReplyFault.WrongLength)]
    public async Task Reply_that_does_not_fit_is_malformed_and_the_link_goes_on(string reply, ReplyFault fault)
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync(reply);
        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.Malformed(fault));
        client.IsConnected.ShouldBeTrue();
    }

    [Fact]
    public async Task Bytes_that_are_not_Modbus_end_the_connection()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync("48 54 54 50 2F 31");
        (await reading).ShouldBe(new ModbusOutcome<RegisterValues>.Malformed(ReplyFault.NotModbus));
        (await client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1)))
            .ShouldBeOfType<ModbusOutcome<RegisterValues>.ConnectionLost>().MayHaveArrived.ShouldBeFalse();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Connection_lost_while_waiting_may_have_carried_the_request(bool reset)
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var writing = client.WriteRegisterAsync(Unit, new RegisterAddress(1), 3);
        await server.ReceiveAsync();
        if (reset)
        {
            server.Reset();
        }
        else
        {
            server.HangUp();
        }

        (await writing).ShouldBeOfType<ModbusOutcome<RegisterRange>.ConnectionLost>().MayHaveArrived.ShouldBeTrue();
        client.IsConnected.ShouldBeFalse();
        (await client.WriteRegisterAsync(Unit, new RegisterAddress(1), 3))
            .ShouldBeOfType<ModbusOutcome<RegisterRange>.ConnectionLost>().MayHaveArrived.ShouldBeFalse();
    }

    [Fact]
    public async Task Caller_may_give_up_and_the_late_reply_is_discarded()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        using var givingUp = new CancellationTokenSource();
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1), cancellationToken: givingUp.Token);
        await server.ReceiveAsync();
        await givingUp.CancelAsync();
        await Should.ThrowAsync<OperationCanceledException>(reading);

        var next = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync("00 01 00 00 00 05 11 03 02 11 11 00 02 00 00 00 05 11 03 02 22 22");
        (await next).ShouldBe(new ModbusOutcome<RegisterValues>.Answered(new RegisterValues(0x2222)));
    }

    [Fact]
    public async Task Request_given_up_before_its_turn_is_not_sent()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        using var givingUp = new CancellationTokenSource();
        var first = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        var second = client.WriteRegisterAsync(Unit, new RegisterAddress(1), 3, cancellationToken: givingUp.Token);
        await server.ReceiveAsync();
        await givingUp.CancelAsync();
        await Should.ThrowAsync<OperationCanceledException>(second);
        await server.SendAsync("00 01 00 00 00 05 11 03 02 11 11");
        await first;

        var third = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(5, 1));
        Hex.Text(await server.ReceiveAsync()).ShouldBe("00 02 00 00 00 06 11 03 00 05 00 01");
        await server.SendAsync("00 02 00 00 00 05 11 03 02 22 22");
        await third;
    }

    [Fact]
    public async Task One_request_is_outstanding_at_a_time()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var readings = Enumerable.Range(0, 5).Select(at => client.ReadHoldingRegistersAsync(Unit, new RegisterRange((ushort)at, 1))).ToArray();
        for (var i = 1; i <= 5; i++)
        {
            (await server.ReceiveAsync())[1].ShouldBe((byte)i);
            await server.SendAsync($"00 0{i} 00 00 00 05 11 03 02 00 0{i}");
        }

        (await Task.WhenAll(readings)).ShouldAllBe(outcome => outcome is ModbusOutcome<RegisterValues>.Answered);
    }

    [Fact]
    public async Task Closing_ends_what_is_waited_for()
    {
        await using var server = new ScriptedServer();
        var client = await server.AcceptAsync(Options);
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await client.DisposeAsync();
        (await reading).ShouldBeOfType<ModbusOutcome<RegisterValues>.ConnectionLost>();
    }

    [Fact]
    public async Task Tap_sees_what_is_sent_received_and_discarded_in_order()
    {
        List<string> seen = [];
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options with { Tap = (direction, _, bytes) => seen.Add($"{direction} {Hex.Text(bytes)}") });
        var reading = client.ReadHoldingRegistersAsync(Unit, new RegisterRange(0, 1));
        await server.ReceiveAsync();
        await server.SendAsync("00 09 00 00 00 05 11 03 02 11 11 00 01 00 00 00 05 11 03 02 22 22");
        await reading;
        seen.ShouldBe(
        [
            "Sent 00 01 00 00 00 06 11 03 00 00 00 01",
            "Received 00 09 00 00 00 05 11 03 02 11 11",
            "Received 00 01 00 00 00 05 11 03 02 22 22",
        ]);
    }

    [Fact]
    public async Task Identification_is_read_to_its_end()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadIdentificationAsync(Unit, ReadDeviceIdCode.Basic);
        Hex.Text(await server.ReceiveAsync(11)).ShouldBe("00 01 00 00 00 05 11 2B 0E 01 00");
        await server.SendAsync("00 01 00 00 00 0E 11 2B 0E 01 81 FF 02 02 00 01 41 01 01 42");
        Hex.Text(await server.ReceiveAsync(11)).ShouldBe("00 02 00 00 00 05 11 2B 0E 01 02");
        await server.SendAsync("00 02 00 00 00 0B 11 2B 0E 01 81 00 00 01 02 01 43");
        (await reading).ShouldBeOfType<ModbusOutcome<IReadOnlyList<IdentificationObject>>.Answered>()
            .Value.Select(one => one.Text).ShouldBe(["A", "B", "C"]);
    }

    [Fact]
    public async Task Identification_that_goes_in_circles_is_malformed()
    {
        await using var server = new ScriptedServer();
        await using var client = await server.AcceptAsync(Options);
        var reading = client.ReadIdentificationAsync(Unit, ReadDeviceIdCode.Basic);
        await server.ReceiveAsync(11);
        await server.SendAsync("00 01 00 00 00 0B 11 2B 0E 01 81 FF 01 01 00 01 41");
        await server.ReceiveAsync(11);
        await server.SendAsync("00 02 00 00 00 0B 11 2B 0E 01 81 FF 01 01 00 01 41");
        (await reading).ShouldBe(new ModbusOutcome<IReadOnlyList<IdentificationObject>>.Malformed(ReplyFault.WrongObjects));
    }

    [Fact]
    public async Task Nobody_listening_is_an_outcome()
    {
        using var taken = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        taken.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        (await ModbusTcpClient.ConnectAsync("127.0.0.1", ((IPEndPoint)taken.LocalEndPoint!).Port)).ShouldBeOfType<ConnectOutcome.NobodyListens>();
    }

    [Theory]
    [InlineData("no such host")]
    [InlineData("")]
    [InlineData("a..b")]
    public async Task Address_that_can_not_be_is_an_outcome(string host) =>
        (await ModbusTcpClient.ConnectAsync(host, 502)).ShouldBeOfType<ConnectOutcome.Unreachable>();

    private ModbusTcpClientOptions Options => new() { Time = _time, ReplyTimeout = Second };
}
