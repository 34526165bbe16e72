namespace Runup.Modbus.Tcp;

/// <summary>How a client on TCP behaves.</summary>
public sealed record ModbusTcpClientOptions
{
    /// <summary>How long to wait for the connection.</summary>
    public TimeSpan ConnectTimeout { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>How long to wait for a reply when the request names no time-out of its own.</summary>
    public TimeSpan ReplyTimeout { get; init; } = TimeSpan.FromSeconds(1);

    /// <summary>The clock of the time-outs.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Sees every frame sent and received, also those discarded.</summary>
    public FrameTap? Tap { get; init; }
}
