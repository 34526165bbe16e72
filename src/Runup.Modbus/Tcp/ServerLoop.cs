using System.Net.Sockets;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp.Linux;

namespace Runup.Modbus.Tcp;

/// <summary>Waits for connections and their requests; disposing it closes them all and returns when no device is being asked any more.</summary>
internal abstract class ServerLoop : IAsyncDisposable
{
    private const int DescriptorsForOthers = 128;
    private const int FewestConnections = 8;

    /// <summary>How many connections are open.</summary>
    public abstract int ConnectionCount { get; }

    /// <inheritdoc />
    public abstract ValueTask DisposeAsync();

    /// <summary>Begins to serve on a listening socket, which it owns from here on.</summary>
    public static ServerLoop Start(Socket listener, RequestServer server, ModbusTcpServerOptions options)
    {
        if (!OperatingSystem.IsLinux() || !LibC.IsThere)
        {
            return new ThreadPoolLoop(listener, server, options);
        }

        // A flood of connections must not take the descriptors that the rest of the process needs, its journal first.
        options = options with { MaxConnections = Math.Min(options.MaxConnections, Math.Max(LibC.DescriptorLimit - DescriptorsForOthers, FewestConnections)) };
        return options.Threading == ServerThreading.ThreadPool
            ? new ThreadPoolLoop(listener, server, options)
            : new ReadinessLoop(listener, server, options);
    }

    /// <summary>Replies leave at once, and a peer that vanished without a word is noticed.</summary>
    protected static void Prepare(Socket socket)
    {
        socket.NoDelay = true;
        socket.SetSocketOption(SocketOptionLevel.Socket, SocketOptionName.KeepAlive, true);
    }
}
