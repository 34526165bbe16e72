using System.Collections.Immutable;

namespace Runup.SimulatedDrive.Clock;

/// <summary>
/// Time that runs a number of times as fast as real time, for a simulated drive and for the program that works with it,
/// so that ramps, time-outs and heartbeats keep their length in the drive's seconds.
/// </summary>
/// <remarks>
/// A thread of its own moves it in small steps. A stall of the computer does not become a leap: one step is at most
/// <see cref="LongestStep"/>. While one of the holds says so, time stands still, and it stands still while a timer's callback
/// runs, so that a slow computer does not look like a slow person or a lost bus.
/// </remarks>
public sealed class PacedTime : TimeProvider, IDisposable
{
    private static readonly TimeSpan RealPause = TimeSpan.FromMilliseconds(1);

    private readonly TimeProvider real;
    private readonly double rate;
    private readonly DateTimeOffset begun;
    private readonly Lock gate = new();
    private readonly PriorityQueue<(PacedTimer Timer, long Version), long> due = new();
    private readonly Thread? pump;
    private long now;
    private ImmutableArray<Func<bool>> holds = [];
    private volatile bool disposed;

    /// <summary>Begins at the present real time.</summary>
    /// <param name="rate">Times real time, above 0.</param>
    /// <param name="real">Real time.</param>
    /// <param name="runs">Whether a thread moves the time; else <see cref="Advance"/> does.</param>
    public PacedTime(double rate, TimeProvider real, bool runs = true)
    {
        ArgumentNullException.ThrowIfNull(real);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rate);
        this.rate = rate;
        this.real = real;
        begun = real.GetUtcNow();
        if (runs)
        {
            pump = new Thread(Pump) { IsBackground = true, Name = "paced time", Priority = ThreadPriority.AboveNormal };
            pump.Start();
        }
    }

    /// <summary>The longest step, in this time.</summary>
    public static TimeSpan LongestStep { get; } = TimeSpan.FromMilliseconds(40);

    /// <summary>Called for each step with the time reached, before timers that are due are called.</summary>
    public event Action<TimeSpan>? Moved;

    /// <summary>Times real time.</summary>
    public double Rate => rate;

    /// <inheritdoc/>
    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => real.LocalTimeZone;

    /// <inheritdoc/>
    public override long GetTimestamp() => Interlocked.Read(ref now);

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => begun + TimeSpan.FromTicks(GetTimestamp());

    /// <inheritdoc/>
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var timer = new PacedTimer(this, callback, state);
        timer.Change(dueTime, period);
        return timer;
    }

    /// <summary>Moves the time on and calls what is due.</summary>
    public void Advance(TimeSpan step)
    {
        var reached = Interlocked.Add(ref now, step.Ticks);
        Moved?.Invoke(TimeSpan.FromTicks(reached));
        while (Next(reached) is { } timer)
        {
            timer.Fire(reached);
        }
    }

    /// <summary>Stops the time.</summary>
    public void Dispose()
    {
        disposed = true;
        if (pump is not null && pump != Thread.CurrentThread)
        {
            pump.Join();
        }
    }

    /// <summary>Asks before each step: while it answers true, time stands still. It must let go by itself.</summary>
    public void HoldWhile(Func<bool> asked) => ImmutableInterlocked.Update(ref holds, all => all.Add(asked));

    internal void Schedule(PacedTimer timer, long version, long at)
    {
        lock (gate)
        {
            due.Enqueue((timer, version), at);
        }
    }

    private PacedTimer? Next(long reached)
    {
        lock (gate)
        {
            while (due.TryPeek(out var entry, out var at) && at <= reached)
            {
                due.Dequeue();
                if (entry.Timer.IsCurrent(entry.Version))
                {
                    return entry.Timer;
                }
            }

            return null;
        }
    }

    private void Pump()
    {
        var last = real.GetTimestamp();
        while (!disposed)
        {
            Thread.Sleep(RealPause);
            var stamp = real.GetTimestamp();
            var step = real.GetElapsedTime(last, stamp) * rate;
            last = stamp;
            if (holds.Any(asked => asked()))
            {
                continue;
            }

            Advance(step < LongestStep ? step : LongestStep);
        }
    }
}
