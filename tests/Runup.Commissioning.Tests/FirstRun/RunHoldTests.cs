using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.FirstRun;

namespace Runup.Commissioning.Tests.FirstRun;

public sealed class RunHoldTests
{
    private readonly FakeTimeProvider time = new();

    [Fact]
    public void It_is_held_while_it_beats()
    {
        using var hold = new RunHold(time);
        for (var i = 0; i < 50; i++)
        {
            hold.Beat();
            time.Advance(RunHold.Period);
            hold.IsHeld().ShouldBeTrue();
        }
    }

    [Fact]
    public void A_pause_of_300_ms_ends_it_for_good()
    {
        using var hold = new RunHold(time);
        hold.Beat();
        time.Advance(TimeSpan.FromMilliseconds(299));
        hold.IsHeld().ShouldBeTrue();
        time.Advance(TimeSpan.FromMilliseconds(1));
        hold.End.ShouldBe(HoldEnd.Silent);
        hold.Lost.IsCancellationRequested.ShouldBeTrue();
        hold.Beat();
        hold.IsHeld().ShouldBeFalse();
    }

    [Fact]
    public void A_hold_that_never_beats_ends_too()
    {
        using var hold = new RunHold(time);
        time.Advance(RunHold.Deadline);
        hold.End.ShouldBe(HoldEnd.Silent);
    }

    [Fact]
    public void The_first_end_counts()
    {
        using var hold = new RunHold(time);
        hold.Release(HoldEnd.SecondTouch);
        hold.Release(HoldEnd.Released);
        hold.End.ShouldBe(HoldEnd.SecondTouch);
    }

    [Fact]
    public async Task A_beat_is_used_once()
    {
        using var hold = new RunHold(time);
        hold.Beat();
        hold.Beat();
        (await hold.Renewal()).ShouldBeTrue();
        var next = hold.Renewal();
        next.IsCompleted.ShouldBeFalse();
        time.Advance(RunHold.Period);
        hold.Beat();
        (await next).ShouldBeTrue();
    }

    [Fact]
    public async Task Waiting_for_a_beat_ends_with_the_hold()
    {
        using var hold = new RunHold(time);
        var next = hold.Renewal();
        time.Advance(RunHold.Deadline);
        (await next).ShouldBeFalse();
        (await hold.Renewal()).ShouldBeFalse();
    }

    // A timer may be late when the computer stalls; the clock decides.
    [Fact]
    public void It_is_lost_by_the_clock_even_when_no_timer_fired()
    {
        var stalled = new StalledTimers();
        using var hold = new RunHold(stalled);
        hold.Beat();
        stalled.Now += TimeSpan.FromMilliseconds(301).Ticks;
        hold.Beat();
        hold.IsHeld().ShouldBeFalse();
        hold.End.ShouldBe(HoldEnd.Silent);
    }

    private sealed class StalledTimers : TimeProvider
    {
        internal long Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => new Never();

        private sealed class Never : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period) => true;

            public void Dispose()
            {
                // Nothing was begun.
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }
}
