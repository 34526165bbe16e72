namespace Runup.SimulatedDrive.Clock;

/// <summary>A timer of <see cref="PacedTime"/>; its callback runs while the time stands still, on the thread that moves it, and must not wait for that time.</summary>
internal sealed class PacedTimer(PacedTime time, TimerCallback callback, object? state) : ITimer
{
    private readonly Lock gate = new();
    private long version;
    private TimeSpan period = Timeout.InfiniteTimeSpan;

    public bool Change(TimeSpan dueTime, TimeSpan period)
    {
        lock (gate)
        {
            version++;
            this.period = period;
            if (dueTime != Timeout.InfiniteTimeSpan)
            {
                time.Schedule(this, version, time.GetTimestamp() + dueTime.Ticks);
            }
        }

        return true;
    }

    public void Dispose() => Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }

    internal bool IsCurrent(long scheduled) => Interlocked.Read(ref version) == scheduled;

    internal void Fire(long reached)
    {
        lock (gate)
        {
            if (period > TimeSpan.Zero)
            {
                time.Schedule(this, version, reached + period.Ticks);
            }
        }

        callback(state);
    }
}
