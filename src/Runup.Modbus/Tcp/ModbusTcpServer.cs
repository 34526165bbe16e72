using System.Net;
using System.Net.Sockets;
using Runup.Modbus.Serving;

namespace Runup.Modbus.Tcp;

/// <summary>
/// A server on TCP. It holds many connections, at most one frame's memory for each, and closes those that send what is not Modbus,
/// begin a frame and do not finish it, or do not take their replies. It listens only where it is told, by default on this machine alone.
/// </summary>
public sealed class ModbusTcpServer : IAsyncDisposable
{
    private const int Backlog = 512;
    private readonly RequestServer _server;
    private readonly ServerLoop _loop;
    private bool _disposed;

    private ModbusTcpServer(Socket listener, RequestServer server, ModbusTcpServerOptions options)
    {
        _server = server;
        Endpoint = (IPEndPoint)listener.LocalEndPoint!;
        _loop = ServerLoop.Start(listener, server, options);
    }

    /// <summary>Where it listens, with the port it took.</summary>
    public IPEndPoint Endpoint { get; }

    /// <summary>How many connections are open.</summary>
    public int ConnectionCount => _loop.ConnectionCount;

    /// <summary>What a device threw last, or null: a device should answer, not throw.</summary>
    public Exception? DeviceFailure => _server.DeviceFailure;

    /// <summary>Listens and serves until disposed.</summary>
    /// <param name="routing">Who answers for which unit.</param>
    /// <param name="options">Null for the defaults.</param>
    public static ServerStart Start(UnitRouting routing, ModbusTcpServerOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(routing);
        options ??= new ModbusTcpServerOptions();
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MaxConnections, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(options.FrameTimeout, TimeSpan.Zero, nameof(options));
        if (options.IdleTimeout != Timeout.InfiniteTimeSpan)
        {
            ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(options.IdleTimeout, TimeSpan.Zero, nameof(options));
        }

        var listener = new Socket(options.Address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
        try
        {
            listener.Bind(new IPEndPoint(options.Address, options.Port));
            listener.Listen(Backlog);
            return new ServerStart.Listening(new ModbusTcpServer(listener, new RequestServer(routing, options.DeviceFailed), options));
        }
        catch (SocketException failure)
        {
            listener.Dispose();
            return failure.SocketErrorCode == SocketError.AddressAlreadyInUse
                ? new ServerStart.PortTaken()
                : new ServerStart.NotAllowed(failure.Message);
        }
        catch
        {
            listener.Dispose();
            throw;
        }
    }

    /// <summary>Closes every connection; when it returns, no device is being asked any more.</summary>
    public async ValueTask DisposeAsync()
    {
        if (!Interlocked.Exchange(ref _disposed, true))
        {
            await _loop.DisposeAsync();
        }
    }
}
