using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Records;

namespace Runup.Store.Tests.Contract;

/// <summary>What every implementation of the record must do.</summary>
public abstract class RecordsContract
{
    protected FakeTimeProvider Time { get; } = AtOffset();

    protected abstract IRecords Records { get; }

    public static TheoryData<string> Kinds => [.. EveryBody.All.Select(b => b.GetType().Name)];

    [Fact]
    public async Task An_entry_comes_back_as_it_was_appended()
    {
        var appended = await Records.Append("P-101", new RecordBody.Confirmed("shaft-turns-by-hand", "N. Ostre", "quietly"), default);

        var read = (await Records.Of("P-101", default)).ShouldHaveSingleItem();
        read.ShouldBe(appended);
        read.Sequence.ShouldBe(1);
    }

    [Fact]
    public async Task The_time_keeps_its_offset()
    {
        var appended = await Records.Append("P-101", new RecordBody.PowerCycleSeen(), default);

        appended.At.Offset.ShouldBe(TimeSpan.FromMinutes(345));
        (await Records.Of("P-101", default))[0].At.EqualsExact(appended.At).ShouldBeTrue();
        appended.At.UtcDateTime.ShouldBe(new DateTime(2026, 3, 1, 22, 15, 7, DateTimeKind.Utc));
    }

    [Fact]
    public async Task Entries_of_one_set_come_oldest_first_and_without_those_of_another()
    {
        await Records.Append("P-101", new RecordBody.StepBegun("a"), default);
        await Records.Append("B-2", new RecordBody.StepBegun("b"), default);
        await Records.Append("P-101", new RecordBody.StepBegun("c"), default);

        var read = await Records.Of("P-101", default);
        read.Select(e => ((RecordBody.StepBegun)e.Body).Step).ShouldBe(["a", "c"]);
        read.Select(e => e.Sequence).ShouldBe([1, 3]);
        (await Records.Of("B-2", default)).Count.ShouldBe(1);
    }

    [Fact]
    public async Task A_set_that_was_never_recorded_has_no_entries() =>
        (await Records.Of("nothing", default)).ShouldBeEmpty();

    [Fact]
    public async Task Tags_that_differ_in_case_are_different_sets()
    {
        await Records.Append("p-101", new RecordBody.StepBegun("a"), default);

        (await Records.Of("P-101", default)).ShouldBeEmpty();
    }

    [Fact]
    public async Task Each_hash_covers_the_entry_before_it()
    {
        var first = await Records.Append("P-101", new RecordBody.StepBegun("a"), default);
        Time.Advance(TimeSpan.FromSeconds(3));
        var second = await Records.Append("B-2", new RecordBody.StepBegun("b"), default);

        first.Hash.ShouldBe(HashOf(RecordChain.Origin, first));
        second.Hash.ShouldBe(HashOf(first.Hash, second));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Every_kind_of_body_survives(string kind)
    {
        var body = EveryBody.All.Single(b => string.Equals(b.GetType().Name, kind, StringComparison.Ordinal));

        await Records.Append("P-101", body, default);

        var read = (await Records.Of("P-101", default)).ShouldHaveSingleItem().Body;
        read.ShouldBeOfType(body.GetType());
        RecordText.Write(read).ShouldBe(RecordText.Write(body));
    }

    [Fact]
    public async Task Many_at_once_are_recorded_one_after_another()
    {
        var appended = await Task.WhenAll(Enumerable.Range(0, 50).Select(i => Records.Append("P-101", new RecordBody.WriteIntended("104", null, i), default)));

        var read = await Records.Of("P-101", default);
        read.Select(e => e.Sequence).ShouldBe(Enumerable.Range(1, 50).Select(i => (long)i));
        read.Select(e => e.Hash).ShouldBe(appended.OrderBy(e => e.Sequence).Select(e => e.Hash));
        read.Select(e => ((RecordBody.WriteIntended)e.Body).Raw).Order().ShouldBe(Enumerable.Range(0, 50).Select(i => (long)i));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("P\n101")]
    [InlineData("P\0")]
    [InlineData("P\ud800")]
    public async Task A_tag_that_could_blur_the_chain_is_the_callers_mistake(string tag) =>
        await Should.ThrowAsync<ArgumentException>(() => Records.Append(tag, new RecordBody.PowerCycleSeen(), default));

    [Fact]
    public async Task What_was_called_off_before_it_began_is_not_recorded()
    {
        await Should.ThrowAsync<OperationCanceledException>(() => Records.Append("P-101", new RecordBody.PowerCycleSeen(), new CancellationToken(canceled: true)));

        (await Records.Of("P-101", default)).ShouldBeEmpty();
    }

    // The offset of Nepal, which is no whole hour.
    private static FakeTimeProvider AtOffset()
    {
        var time = new FakeTimeProvider(new DateTimeOffset(2026, 3, 1, 22, 15, 7, TimeSpan.Zero));
        time.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("site", TimeSpan.FromMinutes(345), "site", "site"));
        return time;
    }

    private static string HashOf(string previous, Recorded e) =>
        RecordChain.Hash(previous, e.Sequence, RecordChain.TimeText(e.At), e.Tag, RecordText.Write(e.Body));
}
