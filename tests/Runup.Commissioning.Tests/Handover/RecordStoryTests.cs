using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Tests.Handover;

public sealed class RecordStoryTests
{
    [Fact]
    public void Of_nothing_there_is_nothing_to_tell()
    {
        var story = RecordStory.Of([]);

        story.Head.ShouldBeNull();
        story.AsLeft.ShouldBeEmpty();
        story.Steps.ShouldBeEmpty();
        story.Entry.Ended.ShouldBeNull();
    }

    [Fact]
    public void What_was_found_stays_what_was_found()
    {
        var story = Told(Read("as-found", ("104", 1)), Read("read", ("104", 2)));

        story.AsFound!.Body.Values["104"].ShouldBe(1);
        story.AsLeft["104"].ShouldBe(2);
    }

    [Fact]
    public void A_verified_write_after_the_last_reading_is_what_was_left() =>
        Told(Read("as-found", ("104", 1)), new RecordBody.WriteIntended("104", 1, 5), new RecordBody.WriteEnded("104", "verified", 5, null)).AsLeft["104"].ShouldBe(5);

    [Fact]
    public void After_a_write_that_was_cut_off_nobody_knows_what_was_left()
    {
        var story = Told(Read("as-found", ("104", 1), ("105", 2)), new RecordBody.WriteIntended("104", 1, 5));

        story.AsLeft.ShouldNotContainKey("104");
        story.AsLeft["105"].ShouldBe(2);
        story.Entry.Writes["104"].Outcome.ShouldBe("unverified");
    }

    [Fact]
    public void After_a_write_without_read_back_nobody_knows_what_was_left() =>
        Told(Read("as-found", ("104", 1)), new RecordBody.WriteIntended("104", 1, 5), new RecordBody.WriteEnded("104", "unverified", null, "no read-back")).AsLeft.ShouldNotContainKey("104");

    [Fact]
    public void Of_a_drive_put_in_anothers_place_the_others_values_are_forgotten()
    {
        var story = Told(Read("as-found", ("104", 1), ("200", 7)), Read("as-found", "Tern 2", ("104", 3)), Read("read", "Tern 2", ("104", 4)));

        story.AsFound!.Body.Values["104"].ShouldBe(3);
        story.AsLeft.ShouldBe(new Dictionary<string, long>(StringComparer.Ordinal) { ["104"] = 4 });
    }

    [Fact]
    public void A_power_cycle_that_was_seen_and_read_after_proves()
    {
        var story = Told(Begun(), new RecordBody.PowerCycleSeen(), Read("after-power-cycle", ("104", 5)), Ended(proved: true));

        story.Entry.Kept!.Body.Values["104"].ShouldBe(5);
        story.Entry.Ended!.Body.Verified.ShouldBe(1);
    }

    [Fact]
    public void A_reading_after_a_power_cycle_that_was_not_seen_proves_nothing() =>
        Told(Begun(), Read("after-power-cycle", ("104", 5)), Ended(proved: false)).Entry.Kept.ShouldBeNull();

    [Fact]
    public void An_entry_that_writes_again_takes_the_proof_away() =>
        Told(Begun(), new RecordBody.PowerCycleSeen(), Read("after-power-cycle", ("104", 5)), Ended(proved: true), Begun(), new RecordBody.WriteIntended("104", 5, 6)).Entry.Kept.ShouldBeNull();

    [Fact]
    public void An_entry_with_nothing_to_write_leaves_the_proof() =>
        Told(Begun(), new RecordBody.PowerCycleSeen(), Read("after-power-cycle", ("104", 5)), Ended(proved: true), Begun(), Ended(proved: false)).Entry.Kept.ShouldNotBeNull();

    [Fact]
    public void What_the_guided_run_writes_for_its_time_leaves_the_proof() =>
        Told(Begun(), new RecordBody.PowerCycleSeen(), Read("after-power-cycle", ("104", 5)), Ended(proved: true),
            new RecordBody.StepBegun("set-up"), new RecordBody.WriteIntended("220", 0, 4), new RecordBody.WriteEnded("220", "verified", 4, null)).Entry.Kept.ShouldNotBeNull();

    [Fact]
    public void An_entry_that_was_cut_off_has_no_end_until_it_went_on()
    {
        Told(Begun()).Entry.Ended.ShouldBeNull();
        var story = Told(Begun(), Begun(resumed: true), Ended(proved: true));
        story.Entry.Ended.ShouldNotBeNull();
        story.Entry.Resumed.ShouldBe(1);
    }

    [Fact]
    public void Of_a_step_that_was_done_again_the_last_attempt_counts()
    {
        var story = Told(
            new RecordBody.StepBegun("a"), Taken("a", 1), new RecordBody.StepEnded("a", "failed", "why"),
            new RecordBody.StepBegun("b"),
            new RecordBody.StepBegun("a"), Taken("a", 2), new RecordBody.StepEnded("a", "passed", null));

        story.Steps.Select(s => s.Step).ShouldBe(["a", "b"]);
        story.Steps[0].Attempts.ShouldBe(2);
        story.Steps[0].Readings.ShouldHaveSingleItem().Measured.ShouldBe(2);
        story.Steps[0].IsPassed.ShouldBeTrue();
        story.Steps[1].Ended.ShouldBeNull();
    }

    [Fact]
    public void Measured_and_predicted_trends_are_told_apart()
    {
        var story = Told(new RecordBody.StepBegun("a"), Trend(predicted: false, 1), Trend(predicted: true, 2));

        story.Steps[0].Measured!.Rows[0][0].ShouldBe(1);
        story.Steps[0].Predicted!.Rows[0][0].ShouldBe(2);
    }

    [Fact]
    public void The_head_is_that_of_the_last_entry()
    {
        var head = Told(new RecordBody.StepBegun("a"), new RecordBody.StepBegun("b")).Head!;

        head.ShouldSatisfyAllConditions(h => h.Hash.ShouldBe("hash 2"), h => h.Entries.ShouldBe(2), h => h.Sequence.ShouldBe(2), h => h.First.ShouldBe(Time(1)));
    }

    [Property]
    public Property What_was_left_is_never_older_than_the_last_word_on_it() => Prop.ForAll(
        Gen.Choose(0, 3).Two().ListOf().ToArbitrary(),
        words =>
        {
            long? last = null;
            var bodies = new List<RecordBody>();
            foreach (var (what, raw) in words)
            {
                bodies.Add(what switch
                {
                    0 => Read("read", ("104", raw)),
                    1 => new RecordBody.WriteIntended("104", null, raw),
                    2 => new RecordBody.WriteEnded("104", "differs", raw, "why"),
                    _ => new RecordBody.WriteEnded("104", "unverified", null, "why"),
                });
                last = what is 0 or 2 ? raw : null;
            }

            return Told([.. bodies]).AsLeft.TryGetValue("104", out var left) ? left == last : last is null;
        });

    private static RecordStory Told(params RecordBody[] bodies) => RecordStory.Of([.. bodies.Select((b, i) => new Recorded(i + 1, Time(i + 1), "P-101", b, $"hash {i + 1}"))]);

    private static DateTimeOffset Time(int minutes) => new(2026, 5, 4, 8, minutes % 60, 0, TimeSpan.FromHours(2));

    private static RecordBody.ParametersRead Read(string moment, params (string Number, long? Raw)[] values) => Read(moment, "Tern 1", values);

    private static RecordBody.ParametersRead Read(string moment, string identity, params (string Number, long? Raw)[] values) =>
        new(moment, identity, values.ToDictionary(v => v.Number, v => v.Raw, StringComparer.Ordinal));

    private static RecordBody.EntryBegun Begun(bool resumed = false) => new("sha", ["104"], resumed);

    private static RecordBody.EntryEnded Ended(bool proved) => new(1, new Dictionary<string, string>(StringComparer.Ordinal), proved);

    private static RecordBody.ReadingTaken Taken(string step, double measured) => new(step, "output current", "A", null, null, null, measured, null);

    private static RecordBody.Trend Trend(bool predicted, double value) => new("a", ["time_s"], [[value]], predicted);
}
