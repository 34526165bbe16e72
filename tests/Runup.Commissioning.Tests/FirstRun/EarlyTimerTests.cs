using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.FirstRun;

namespace Runup.Commissioning.Tests.FirstRun;

public sealed class EarlyTimerTests
{
    [Fact]
    public void A_deadline_timer_that_fires_a_hair_early_still_ends_the_hold()
    {
        var time = new EarlyTime();
        using var hold = new RunHold(time);
        time.Advance(TimeSpan.FromMilliseconds(299));
        hold.End.ShouldBeNull();
        time.Advance(TimeSpan.FromMilliseconds(20));
        hold.End.ShouldBe(HoldEnd.Silent);
    }

    /// <summary>Timers that fire a millisecond before their time by the clock, as those of real computers do.</summary>
    private sealed class EarlyTime : FakeTimeProvider
    {
        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
            base.CreateTimer(callback, state, dueTime - TimeSpan.FromMilliseconds(1), period);
    }
}
