using Microsoft.Extensions.Time.Testing;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>Runs asynchronous work on one thread and moves fake time on only when nothing is left to do: the same run every time.</summary>
internal sealed class Pump : SynchronizationContext
{
    private readonly Queue<(SendOrPostCallback Call, object? State)> queue = new();
    private readonly Lock gate = new();

    public override void Post(SendOrPostCallback d, object? state)
    {
        lock (gate)
        {
            queue.Enqueue((d, state));
        }
    }

    internal static T Run<T>(FakeTimeProvider time, Func<Task<T>> work, TimeSpan? step = null, TimeSpan? limit = null)
    {
        var before = Current;
        var pump = new Pump();
        SetSynchronizationContext(pump);
        try
        {
            var task = work();
            var passed = TimeSpan.Zero;
            while (true)
            {
                pump.Drain();
                if (task.IsCompleted)
                {
                    return task.GetAwaiter().GetResult();
                }

                var by = step ?? TimeSpan.FromMilliseconds(5);
                time.Advance(by);
                passed += by;
                passed.ShouldBeLessThan(limit ?? TimeSpan.FromMinutes(30), "the work does not end");
            }
        }
        finally
        {
            SetSynchronizationContext(before);
        }
    }

    private void Drain()
    {
        while (true)
        {
            (SendOrPostCallback Call, object? State) next;
            lock (gate)
            {
                if (!queue.TryDequeue(out next))
                {
                    return;
                }
            }

            next.Call(next.State);
        }
    }
}
