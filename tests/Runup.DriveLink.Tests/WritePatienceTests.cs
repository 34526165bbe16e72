using Microsoft.Extensions.Time.Testing;
using Runup.Modbus;

namespace Runup.DriveLink.Tests;

public sealed class WritePatienceTests
{
    private readonly FakeTimeProvider time = new();
    private readonly List<TimeSpan?> waits = [];

    [Fact]
    public async Task Before_any_reply_is_lost_the_link_waits_its_own_time()
    {
        var patience = new WritePatience(time);
        await Write(patience, answered: true);
        await Write(patience, answered: true);
        waits.ShouldBe([null, null]);
    }

    [Fact]
    public async Task After_a_lost_reply_it_waits_four_times_the_slowest_that_was_heard()
    {
        var patience = new WritePatience(time);
        await Read(patience, TimeSpan.FromMilliseconds(60));
        await Write(patience, answered: false);
        await Write(patience, answered: false);
        await Read(patience, TimeSpan.FromMilliseconds(90));
        await Write(patience, answered: false);
        waits.ShouldBe([null, TimeSpan.FromMilliseconds(240), TimeSpan.FromMilliseconds(360)]);
    }

    [Fact]
    public async Task It_waits_neither_less_than_a_tenth_of_a_second_nor_more_than_one()
    {
        var patience = new WritePatience(time);
        await Write(patience, answered: false);
        await Write(patience, answered: false);
        await Read(patience, TimeSpan.FromMilliseconds(700));
        await Write(patience, answered: false);
        waits.ShouldBe([null, TimeSpan.FromMilliseconds(100), TimeSpan.FromSeconds(1)]);
    }

    [Fact]
    public async Task A_time_that_is_asked_for_is_kept()
    {
        var patience = new WritePatience(time);
        await Write(patience, answered: false);
        await Write(patience, answered: false, asked: TimeSpan.FromSeconds(5));
        waits[1].ShouldBe(TimeSpan.FromSeconds(5));
    }

    private async Task Read(WritePatience patience, TimeSpan takes)
    {
        var reply = new TaskCompletionSource<ModbusOutcome<int>>();
        var heard = patience.Heard(reply.Task);
        time.Advance(takes);
        reply.SetResult(new ModbusOutcome<int>.Answered(1));
        await heard;
    }

    private Task Write(WritePatience patience, bool answered, TimeSpan? asked = null) => patience.Over(asked, wait =>
    {
        waits.Add(wait);
        return Task.FromResult<ModbusOutcome<int>>(answered ? new ModbusOutcome<int>.Answered(1) : new ModbusOutcome<int>.TimedOut(wait ?? TimeSpan.FromSeconds(1)));
    });
}
