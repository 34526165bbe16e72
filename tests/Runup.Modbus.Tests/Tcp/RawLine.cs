using System.Net;
using System.Net.Sockets;

namespace Runup.Modbus.Tests.Tcp;

/// <summary>A connection whose bytes the test writes by hand.</summary>
internal sealed class RawLine : IDisposable
{
    private readonly Socket _socket = new(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };

    public static async Task<RawLine> ToAsync(IPEndPoint server)
    {
        var line = new RawLine();
        await line._socket.ConnectAsync(server);
        return line;
    }

    public async Task SendAsync(string hex) => await SendAsync(Hex.Bytes(hex));

    public async Task SendAsync(byte[] bytes) => await _socket.SendAsync(bytes);

    public async Task<string> ReceiveAsync(int count)
    {
        var bytes = new byte[count];
        var got = 0;
        while (got < count)
        {
            var arrived = await _socket.ReceiveAsync(bytes.AsMemory(got));
            arrived.ShouldBeGreaterThan(0, "the server closed");
            got += arrived;
        }

        return Hex.Text(bytes);
    }

    /// <summary>Waits until the server has closed, reading away whatever it still sends.</summary>
    public async Task IsClosedAsync()
    {
        var bytes = new byte[4096];
        try
        {
            while (await _socket.ReceiveAsync(bytes) > 0)
            {
            }
        }
        catch (SocketException closed)
        {
            closed.SocketErrorCode.ShouldBeOneOf(SocketError.ConnectionReset, SocketError.Shutdown, SocketError.ConnectionAborted);
        }
    }

    /// <summary>Sends without reading until the server's and the system's memory is full and the server stops taking.</summary>
    public async Task FloodAsync(byte[] request)
    {
        _socket.SendBufferSize = 4096;
        byte[] many = [.. Enumerable.Repeat(request, 1000).SelectMany(one => one)];
        try
        {
            while (true)
            {
                await _socket.SendAsync(many);
            }
        }
        catch (SocketException)
        {
            // The server has closed.
        }
    }

    public void Dispose() => _socket.Dispose();
}
