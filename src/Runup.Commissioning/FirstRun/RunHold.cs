namespace Runup.Commissioning.FirstRun;

/// <summary>Hold-to-run: a motor may turn only while a person's hold beats at 10 Hz; the first pause of 300 ms ends it, and so does any of the listed ends.</summary>
/// <remarks>An end is for good: to run again a person takes hold again. May be used from several threads.</remarks>
public sealed class RunHold : IDisposable
{
    // A timer may fire a hair before its time by the clock: then it must look again, or nobody would end the hold.
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(10);

    private readonly TimeProvider time;
    private readonly Lock gate = new();
    private readonly CancellationTokenSource lost = new();
    private readonly ITimer deadline;
    private TaskCompletionSource? waiting;
    private long lastBeat;
    private bool fresh;
    private HoldEnd? end;

    /// <summary>Takes hold; the first beat is due within <see cref="Deadline"/>.</summary>
    public RunHold(TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(time);
        this.time = time;
        Lost = lost.Token;
        lastBeat = time.GetTimestamp();
        deadline = time.CreateTimer(_ => IsHeld(), null, Deadline, LookAgain);
    }

    /// <summary>Time from one beat to the next.</summary>
    public static TimeSpan Period { get; } = TimeSpan.FromMilliseconds(100);

    /// <summary>The longest pause between two beats.</summary>
    public static TimeSpan Deadline { get; } = TimeSpan.FromMilliseconds(300);

    /// <summary>Cancelled when the hold ends.</summary>
    public CancellationToken Lost { get; }

    /// <summary>Why it ended; null while it is held.</summary>
    public HoldEnd? End
    {
        get
        {
            lock (gate)
            {
                return end;
            }
        }
    }

    /// <summary>A beat of the person's hold. After an end, or later than the deadline, it does nothing.</summary>
    public void Beat()
    {
        TaskCompletionSource? waiter;
        lock (gate)
        {
            if (end is not null || Overdue)
            {
                return;
            }

            lastBeat = time.GetTimestamp();
            fresh = true;
            waiter = Taken();
        }

        deadline.Change(Deadline, LookAgain);
        waiter?.TrySetResult();
    }

    /// <summary>Ends the hold; the first end counts.</summary>
    public void Release(HoldEnd why)
    {
        TaskCompletionSource? waiter;
        lock (gate)
        {
            if (end is not null)
            {
                return;
            }

            end = why;
            waiter = Taken();
        }

        lost.Cancel();
        waiter?.TrySetResult();
    }

    /// <summary>Whether it is held at this moment, by the clock and not by a timer that may be late.</summary>
    public bool IsHeld()
    {
        bool overdue;
        lock (gate)
        {
            if (end is not null)
            {
                return false;
            }

            overdue = Overdue;
        }

        if (overdue)
        {
            Release(HoldEnd.Silent);
        }

        return !overdue;
    }

    /// <summary>Waits for a beat that was not used yet; each beat is used once. False when the hold ended instead.</summary>
    public async Task<bool> Renewal()
    {
        while (IsHeld())
        {
            Task next;
            lock (gate)
            {
                if (fresh)
                {
                    fresh = false;
                    return true;
                }

                waiting ??= new(TaskCreationOptions.RunContinuationsAsynchronously);
                next = waiting.Task;
            }

            // The end may have come before the wait began.
            if (!IsHeld())
            {
                return false;
            }

            await next;
        }

        return false;
    }

    /// <summary>Ends the hold.</summary>
    public void Dispose()
    {
        Release(HoldEnd.Released);
        deadline.Dispose();
        lost.Dispose();
    }

    private bool Overdue => time.GetElapsedTime(lastBeat) >= Deadline;

    private TaskCompletionSource? Taken()
    {
        var waiter = waiting;
        waiting = null;
        return waiter;
    }
}

/// <summary>Why a hold ended.</summary>
public enum HoldEnd
{
    /// <summary>The person let go.</summary>
    Released,

    /// <summary>The window lost the focus.</summary>
    FocusLost,

    /// <summary>The page was hidden.</summary>
    PageHidden,

    /// <summary>A second touch.</summary>
    SecondTouch,

    /// <summary>No beat within the deadline: a lost process, a lost connection, a stalled computer.</summary>
    Silent,

    /// <summary>The step was done.</summary>
    StepDone,
}
