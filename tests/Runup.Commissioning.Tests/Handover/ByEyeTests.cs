using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;

namespace Runup.Commissioning.Tests.Handover;

/// <summary>What stands on a look at the display is told from what was read back, as long as it stands on nothing else.</summary>
public sealed class ByEyeTests
{
    private static readonly RecordBody Looked = new RecordBody.ParametersRead("as-found", "Bench", Values(("105", 230), ("106", null)), "A. Person");

    [Fact]
    public void A_value_that_was_seen_stands_on_who_saw_it() => Told(Looked).ByEye.ShouldHaveSingleItem().ShouldBe(new("105", "A. Person"));

    [Fact]
    public void A_later_reading_over_a_link_takes_the_place_of_the_look() =>
        Told(Looked, Set("105", 400), new RecordBody.ParametersRead("read", "Bench", Values(("105", 400)))).ByEye.ShouldBeEmpty();

    [Fact]
    public void What_was_set_by_hand_stands_on_the_look_after_it() => Told(Looked, Set("106", 144)).ByEye["106"].ShouldBe("B. Person");

    [Fact]
    public void Nothing_stands_on_a_look_that_a_unit_made_worthless() =>
        Told(Looked, new RecordBody.ParameterSeen("after-write", "105", null, "A. Person", "its unit changed")).AsLeft.ShouldNotContainKey("105");

    [Fact]
    public void A_row_tells_who_saw_it_what_nobody_looked_at_and_what_was_seen_again()
    {
        var story = Told(
            Looked,
            new RecordBody.EntryBegun("x", ["105"], false),
            Set("105", 400),
            new RecordBody.PowerCycleSeen("B. Person"),
            new RecordBody.ParametersRead("after-power-cycle", "Bench", Values(("105", 400)), "B. Person"));
        var rows = ParameterTable.Of(BenchMake.Profile, BenchMake.Size, story, BenchLines()).ToDictionary(r => r.Number);

        (rows["105"].SeenBy, rows["105"].Written, rows["105"].Why, rows["105"].IsKept).ShouldBe(("B. Person", "verified-by-eye", null, true));
        rows["150"].IsNotLookedAt.ShouldBeTrue();
        rows["106"].IsNotLookedAt.ShouldBeFalse("it was left out, and that is known");
        rows["106"].IsKept.ShouldBeNull("it was not entered, and so not looked at again");
    }

    private static IReadOnlyList<Profiles.SheetLine> BenchLines() =>
        Profiles.Sheet.For(BenchMake.Profile, BenchMake.Size, BenchSite.Plan, Profiles.ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size));

    private static RecordBody.WriteEnded Set(string number, long raw) => new(number, "verified-by-eye", raw, null, "B. Person");

    private static Dictionary<string, long?> Values(params (string Number, long? Raw)[] values) => values.ToDictionary(v => v.Number, v => v.Raw);

    private static RecordStory Told(params RecordBody[] bodies) =>
        RecordStory.Of([.. bodies.Select((b, i) => new Recorded(i + 1, DateTimeOffset.UnixEpoch.AddMinutes(i), "BNC-1", b, $"{i}"))]);
}
