using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Tests.Entry;

public sealed class EntryHistoryTests
{
    [Fact]
    public void The_first_values_as_found_of_a_drive_are_never_overwritten()
    {
        var history = Fold(Read("A", 230), Read("A", 400), Read("B", 415));
        history.AsFound["A"]["105"].ShouldBe(230);
        history.AsFound["B"]["105"].ShouldBe(415);
    }

    [Fact]
    public void A_write_that_was_begun_and_not_ended_is_under_way()
    {
        var history = Fold(new RecordBody.EntryBegun("x", ["105", "106"], false), Intended("105"), Ended("105", "verified"), Intended("106"));
        history.Open!.UnderWay!.Parameter.ShouldBe("106");
        history.Open.Ended.ShouldContainKeyAndValue("105", "verified");
    }

    [Fact]
    public void An_entry_that_ended_is_not_open()
    {
        Fold(new RecordBody.EntryBegun("x", [], false), new RecordBody.EntryEnded(0, new Dictionary<string, string>(), true)).Open.ShouldBeNull();
    }

    [Fact]
    public void A_resumed_entry_keeps_what_the_cut_off_one_had_done()
    {
        var history = Fold(new RecordBody.EntryBegun("x", ["105"], false), Intended("105"), Ended("105", "verified"), new RecordBody.EntryBegun("y", ["106"], true));
        history.Open!.SheetSha256.ShouldBe("y");
        history.Open.Ended.Keys.ShouldBe(["105"]);
    }

    [Fact]
    public void A_write_after_the_store_is_not_stored_and_one_after_the_power_cycle_not_proved()
    {
        var stored = Fold(new RecordBody.EntryBegun("x", [], false), new RecordBody.StoreAsked("accepted"), new RecordBody.PowerCycleSeen());
        stored.Open!.Stored.ShouldBeTrue();
        stored.Open.PowerCycled.ShouldBeTrue();
        var written = stored.And(Intended("105"));
        written.Open!.Stored.ShouldBeFalse();
        written.Open.PowerCycled.ShouldBeFalse();
    }

    [Fact]
    public void A_store_that_was_refused_or_not_answered_is_none()
    {
        foreach (var outcome in (string[])["refused", "unanswered"])
        {
            Fold(new RecordBody.EntryBegun("x", [], false), new RecordBody.StoreAsked(outcome)).Open!.Stored.ShouldBeFalse();
        }
    }

    [Fact]
    public void Writes_outside_of_an_entry_are_none_of_its_business() => Fold(Intended("105"), Ended("105", "verified")).Open.ShouldBeNull();

    private static EntryHistory Fold(params RecordBody[] bodies) => bodies.Aggregate(EntryHistory.Empty, (history, body) => history.And(body));

    private static RecordBody.ParametersRead Read(string identity, long raw) => new("as-found", identity, new Dictionary<string, long?> { ["105"] = raw, ["106"] = null });

    private static RecordBody.WriteIntended Intended(string number) => new(number, 1, 2);

    private static RecordBody.WriteEnded Ended(string number, string outcome) => new(number, outcome, 2, null);
}
