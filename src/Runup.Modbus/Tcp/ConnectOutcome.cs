namespace Runup.Modbus.Tcp;

/// <summary>How an attempt to connect ended; a closed set.</summary>
public abstract record ConnectOutcome
{
    private ConnectOutcome()
    {
    }

    /// <summary>The connection stands.</summary>
    /// <param name="Client">The link, owned by the caller.</param>
    public sealed record Connected(ModbusTcpClient Client) : ConnectOutcome;

    /// <summary>Nothing answered in time.</summary>
    /// <param name="After">The time-out.</param>
    public sealed record TimedOut(TimeSpan After) : ConnectOutcome;

    /// <summary>The machine is there and nobody listens at that port.</summary>
    public sealed record NobodyListens : ConnectOutcome;

    /// <summary>There is no way to that machine, or no machine of that name.</summary>
    /// <param name="Why">What the system says.</param>
    public sealed record Unreachable(string Why) : ConnectOutcome;
}
