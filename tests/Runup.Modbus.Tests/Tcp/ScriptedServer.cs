using System.Net;
using System.Net.Sockets;
using Runup.Modbus.Tcp;

namespace Runup.Modbus.Tests.Tcp;

/// <summary>A listening socket whose replies the test writes by hand.</summary>
internal sealed class ScriptedServer : IAsyncDisposable
{
    private readonly Socket _listener = new(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
    private Socket? _line;

    public ScriptedServer()
    {
        _listener.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        _listener.Listen();
    }

    public int Port => ((IPEndPoint)_listener.LocalEndPoint!).Port;

    public async Task<ModbusTcpClient> AcceptAsync(ModbusTcpClientOptions options)
    {
        var connecting = ModbusTcpClient.ConnectAsync("127.0.0.1", Port, options);
        _line = await _listener.AcceptAsync();
        return (await connecting).ShouldBeOfType<ConnectOutcome.Connected>().Client;
    }

    public async Task<byte[]> ReceiveAsync(int count = 12)
    {
        var bytes = new byte[count];
        var got = 0;
        while (got < count)
        {
            var arrived = await _line!.ReceiveAsync(bytes.AsMemory(got));
            arrived.ShouldBeGreaterThan(0, "the client closed");
            got += arrived;
        }

        return bytes;
    }

    public async Task SendAsync(string hex) => (await _line!.SendAsync(Hex.Bytes(hex))).ShouldBe(Hex.Bytes(hex).Length);

    public void HangUp() => _line!.Dispose();

    public void Reset()
    {
        _line!.LingerState = new LingerOption(true, 0);
        _line.Dispose();
    }

    public ValueTask DisposeAsync()
    {
        _line?.Dispose();
        _listener.Dispose();
        return ValueTask.CompletedTask;
    }
}
