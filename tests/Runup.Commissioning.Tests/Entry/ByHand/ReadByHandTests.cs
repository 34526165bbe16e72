using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;

namespace Runup.Commissioning.Tests.Entry.ByHand;

public sealed class ReadByHandTests
{
    private readonly BenchHand hand = new();

    [Fact]
    public async Task What_the_sheet_sets_and_what_matters_is_asked_and_with_all_everything()
    {
        hand.Drive.Held = hand.Drive.Held.With("106", 96);
        var read = (await hand.Read()).ShouldBeOfType<DriveRead.Read>();
        read.Moment.ShouldBe("as-found");
        read.Values["106"].ShouldBe(96);
        read.Values.Keys.ShouldNotContain("180");
        hand.Display.Asked.ShouldAllBe(q => q.For == LookFor.Found);

        var all = (await hand.Read(all: true)).ShouldBeOfType<DriveRead.Read>();
        all.Moment.ShouldBe("read");
        all.Values.Keys.Order().ShouldBe(BenchMake.Profile.Parameters.Where(p => p.IsKept).Select(p => p.Number).Order());
    }

    [Fact]
    public async Task What_was_left_out_is_not_known_and_its_reason_is_on_record()
    {
        hand.TypesOnce(LookFor.Found, "106", "s display is broken there");
        (await hand.Read()).ShouldBeOfType<DriveRead.Read>().Values["106"].ShouldBeNull();
        hand.Records.Bodies.OfType<RecordBody.ParameterSeen>().Single(s => s.Parameter == "106").Why.ShouldBe("display is broken there");
    }

    [Fact]
    public async Task A_value_is_read_in_the_unit_that_the_display_stands_in()
    {
        hand.Drive.Write("131", 1);
        (await hand.Read()).ShouldBeOfType<DriveRead.Read>().Values["104"].ShouldBe(hand.Drive.Held["104"]);
        hand.Display.Asked.First(q => q.Parameter.Number == "104").Expected.Unit.ShouldBe("hp");
    }

    [Fact]
    public async Task An_entry_after_it_does_not_ask_what_was_seen()
    {
        await hand.Read();
        hand.Display.Asked.Clear();
        (await hand.Enter()).Failed.ShouldBeEmpty();
        hand.Questions(LookFor.Found).ShouldBeEmpty();
    }

    [Fact]
    public async Task An_entry_that_ended_is_followed_by_a_new_look()
    {
        await hand.Enter();
        hand.Display.Asked.Clear();
        (await hand.Enter()).PowerCycle.ShouldBe(PowerCycleProof.NotNeeded);
        hand.Questions(LookFor.Found).ShouldNotBeEmpty();
        hand.Questions(LookFor.Found).ShouldAllBe(q => q.Now != null && q.Expected == q.Now);
        hand.Questions(LookFor.Entered).ShouldBeEmpty();
    }

    [Fact]
    public async Task What_is_looked_at_later_is_still_as_found_until_something_is_written()
    {
        hand.Drive.Held = hand.Drive.Held.With("180", 7).With("105", 231);
        await hand.Read();
        hand.Drive.Held = hand.Drive.Held.With("105", 232);
        await hand.Read(all: true);
        await hand.Enter();
        hand.Drive.Held = hand.Drive.Held.With("180", 9);
        await hand.Read(all: true);

        var found = EntryHistory.Of(hand.Records.All).AsFound.Single().Value;
        (found["105"], found["180"]).ShouldBe((231, 7));
        var told = RecordStory.Of(hand.Records.All).AsFound!.Body.Values;
        (told["105"], told["180"]).ShouldBe((231, 7));
    }

    [Fact]
    public void What_chooses_units_what_can_start_the_motor_and_a_lock_are_looked_at_whatever_is_entered()
    {
        var few = ToLookAt.Of(BenchMake.Profile, EntrySheet.Of([new EntryLine(BenchMake.Of("105"), 400)]), all: false);
        few.Select(p => p.Number).ShouldBe(["131", "105", "220", "240"]);
    }

    [Fact]
    public void By_hand_a_drive_has_the_name_that_it_gives_itself_over_a_link() => HandHistory.Identity(BenchMake.Profile).ShouldBe(new BenchHand().Drive.Identity);
}
