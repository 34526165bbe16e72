using Runup.SimulatedDrive.Clock;

namespace Runup.SimulatedDrive.Tests.Clock;

public sealed class PacedTimeTests
{
    [Fact]
    public async Task A_delay_ends_when_the_time_has_moved_so_far()
    {
        using var time = new PacedTime(20, TimeProvider.System, runs: false);
        var delay = Task.Delay(TimeSpan.FromMilliseconds(300), time, TestContext.Current.CancellationToken);
        time.Advance(TimeSpan.FromMilliseconds(299));
        delay.IsCompleted.ShouldBeFalse();
        time.Advance(TimeSpan.FromMilliseconds(1));
        await delay;
        time.GetElapsedTime(0).ShouldBe(TimeSpan.FromMilliseconds(300));
    }

    [Fact]
    public async Task A_periodic_timer_fires_each_period()
    {
        using var time = new PacedTime(1, TimeProvider.System, runs: false);
        using var fired = new SemaphoreSlim(0);
        await using var timer = time.CreateTimer(_ => fired.Release(), null, TimeSpan.FromMilliseconds(100), TimeSpan.FromMilliseconds(100));
        for (var i = 0; i < 5; i++)
        {
            time.Advance(TimeSpan.FromMilliseconds(100));
            (await fired.WaitAsync(TimeSpan.FromSeconds(5), TestContext.Current.CancellationToken)).ShouldBeTrue();
        }
    }

    [Fact]
    public void A_disposed_timer_never_fires()
    {
        using var time = new PacedTime(1, TimeProvider.System, runs: false);
        var fired = 0;
        time.CreateTimer(_ => fired++, null, TimeSpan.FromMilliseconds(10), Timeout.InfiniteTimeSpan).Dispose();
        time.Advance(TimeSpan.FromMilliseconds(100));
        fired.ShouldBe(0);
    }

    [Fact]
    public async Task Time_runs_a_number_of_times_as_fast_as_real_time()
    {
        using var time = new PacedTime(50, TimeProvider.System);
        var begun = TimeProvider.System.GetTimestamp();
        await Task.Delay(TimeSpan.FromSeconds(5), time, TestContext.Current.CancellationToken);
        TimeProvider.System.GetElapsedTime(begun).ShouldBeLessThan(TimeSpan.FromSeconds(3));
        time.GetElapsedTime(0).ShouldBeGreaterThanOrEqualTo(TimeSpan.FromSeconds(5));
    }

    [Fact]
    public void Time_stands_still_while_held_back()
    {
        using var asked = new ManualResetEventSlim();
        using var time = new PacedTime(50, TimeProvider.System);
        time.HoldWhile(() =>
        {
            asked.Set();
            return true;
        });
        asked.Wait(TestContext.Current.CancellationToken);
        var at = time.GetTimestamp();
        asked.Reset();
        asked.Wait(TestContext.Current.CancellationToken);
        time.GetTimestamp().ShouldBe(at);
    }
}
