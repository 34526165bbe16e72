namespace Runup.Modbus.Tcp;

/// <summary>The two time-outs of a server's connections on its clock.</summary>
internal sealed class TcpDeadlines(ModbusTcpServerOptions options)
{
    public long Now => options.Time.GetTimestamp();

    /// <summary>How often to look: a connection overstays by at most a quarter of the shorter time-out.</summary>
    public TimeSpan SweepPeriod
    {
        get
        {
            var shorter = IsSet(options.IdleTimeout) && options.IdleTimeout < options.FrameTimeout ? options.IdleTimeout : options.FrameTimeout;
            return TimeSpan.FromTicks(Math.Max(shorter.Ticks / 4, TimeSpan.TicksPerMillisecond));
        }
    }

    public bool FramePassed(long since, long never) => since != never && options.Time.GetElapsedTime(since) > options.FrameTimeout;

    public bool IdlePassed(long since) => IsSet(options.IdleTimeout) && options.Time.GetElapsedTime(since) > options.IdleTimeout;

    private static bool IsSet(TimeSpan timeout) => timeout != Timeout.InfiniteTimeSpan;
}
