using System.Net.Sockets;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp.Linux;

namespace Runup.Modbus.Tcp;

/// <summary>Waits for connections and their requests; disposing it closes them all and returns when no device is being asked any more.</summary>
internal abstract class ServerLoop : IAsyncDisposable
{
    /// <summary>How many connections are open.</summary>
    public abstract int ConnectionCount { get; }

    /// <inheritdoc />
    public abstract ValueTask DisposeAsync();

    /// <summary>Begins to serve on a listening socket, which it owns from here on.</summary>
    public static ServerLoop Start(Socket listener, RequestServer server, ModbusTcpServerOptions options)
    {
        if (options.Threading == ServerThreading.ThreadPool || !OperatingSystem.IsLinux() || !LibC.IsThere)
        {
            return new ThreadPoolLoop(listener, server, options);
        }

        return new ReadinessLoop(listener, server, options);
    }

    /// <summary>Replies leave at once, and a peer that vanished without a word is noticed.</summary>
    protected static void Prepare(Socket socket)
    {
        socket.NoDelay = true;
        socket.SetSocketOption(SocketOptionLevel.Socket, SocketOptionName.KeepAlive, true);
    }
}
