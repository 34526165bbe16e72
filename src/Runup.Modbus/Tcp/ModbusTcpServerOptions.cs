using System.Net;

namespace Runup.Modbus.Tcp;

/// <summary>How a server on TCP behaves.</summary>
public sealed record ModbusTcpServerOptions
{
    /// <summary>Where it listens; by default where only this machine reaches it.</summary>
    public IPAddress Address { get; init; } = IPAddress.Loopback;

    /// <summary>The TCP port; 0 takes a free one.</summary>
    public int Port { get; init; }

    /// <summary>Connections beyond this many are closed at once; fewer where the system allows this process fewer descriptors.</summary>
    public int MaxConnections { get; init; } = 2048;

    /// <summary>A connection is closed when a frame begun is not finished, or a reply not taken, within this time.</summary>
    public TimeSpan FrameTimeout { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>A connection is closed when no whole frame came for this long; by default never.</summary>
    public TimeSpan IdleTimeout { get; init; } = Timeout.InfiniteTimeSpan;

    /// <summary>The clock of the time-outs.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>How it waits.</summary>
    public ServerThreading Threading { get; init; }

    /// <summary>Sees every frame received and sent.</summary>
    public FrameTap? Tap { get; init; }

    /// <summary>Told when a device throws; its client gets exception 4.</summary>
    public Action<Exception>? DeviceFailed { get; init; }
}
