namespace Runup.Modbus.Tcp;

/// <summary>How a server waits for its connections; the measurements are in docs/decisions/0010-modbus-by-hand.md.</summary>
public enum ServerThreading
{
    /// <summary>The quickest that this system offers.</summary>
    Automatic,

    /// <summary>One thread that the system tells which connections have something to read (Linux only).</summary>
    ReadinessLoop,

    /// <summary>An asynchronous receive for each connection on the thread pool (everywhere).</summary>
    ThreadPool,
}
