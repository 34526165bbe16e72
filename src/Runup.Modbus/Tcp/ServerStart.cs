namespace Runup.Modbus.Tcp;

/// <summary>How an attempt to serve ended; a closed set.</summary>
public abstract record ServerStart
{
    private ServerStart()
    {
    }

    /// <summary>It listens.</summary>
    /// <param name="Server">The server, owned by the caller.</param>
    public sealed record Listening(ModbusTcpServer Server) : ServerStart;

    /// <summary>Another program listens there.</summary>
    public sealed record PortTaken : ServerStart;

    /// <summary>The system does not let it listen there.</summary>
    /// <param name="Why">What the system says.</param>
    public sealed record NotAllowed(string Why) : ServerStart;
}
