using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;

namespace Runup.Commissioning.Tests.Entry.ByHand;

public sealed class EnterByHandTests
{
    private readonly BenchHand hand = new();

    [Fact]
    public async Task A_sheet_is_set_by_hand_and_seen_again_after_the_power_was_gone()
    {
        var report = await hand.Enter();

        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
        report.Failed.ShouldBeEmpty();
        report.Verified.ShouldBeEmpty();
        report.VerifiedByEye.Order().ShouldBe(report.Written.Order());
        report.PowerCycle.ShouldBe(PowerCycleProof.SeenByEye);
        hand.HoldsTheSheet("");
        var ended = hand.Records.Bodies.OfType<RecordBody.EntryEnded>().ShouldHaveSingleItem();
        (ended.Verified, ended.VerifiedByEye, ended.ProvedAfterPowerCycle, ended.SeenAfterPowerCycle).ShouldBe((0, report.VerifiedByEye.Count, false, true));
    }

    [Fact]
    public async Task Nothing_seen_by_eye_is_recorded_as_read_back()
    {
        await hand.Enter();
        hand.Records.Bodies.OfType<RecordBody.WriteEnded>().ShouldAllBe(w => w.Outcome == "verified-by-eye" && w.SeenBy == "A. Person");
        hand.Records.Bodies.OfType<RecordBody.ParametersRead>().ShouldAllBe(r => r.SeenBy == "A. Person");
        hand.Records.Bodies.OfType<RecordBody.PowerCycleSeen>().ShouldAllBe(p => p.SeenBy == "A. Person");
        hand.Records.Bodies.OfType<RecordBody.StoreAsked>().ShouldHaveSingleItem().Outcome.ShouldBe("by-hand");
    }

    [Fact]
    public async Task The_order_is_the_one_over_a_link_but_for_what_changed_with_a_unit()
    {
        await hand.Enter();
        var link = new BenchSite();
        link.Enter();
        Written(hand.Records).ShouldBe(Written(link.Records));
    }

    [Fact]
    public async Task The_record_knows_of_a_line_before_the_person_is_asked_and_of_the_answer_before_the_next()
    {
        RecordBody? before = null;
        hand.Display.Types = q =>
        {
            before = hand.Records.All.LastOrDefault()?.Body;
            if (q is { For: LookFor.Entered, SecondLook: false })
            {
                before.ShouldBeOfType<RecordBody.WriteIntended>().Parameter.ShouldBe(q.Parameter.Number);
            }

            return BenchDisplay.Honest;
        };
        (await hand.Enter()).Failed.ShouldBeEmpty();
        before.ShouldNotBeNull();
    }

    [Fact]
    public async Task What_was_found_is_on_record_before_the_first_is_set_each_and_all()
    {
        var found = hand.Drive.Held.With("105", 231);
        hand.Drive.Held = found;
        await hand.Enter();

        var first = hand.Records.All.First(r => r.Body is RecordBody.WriteIntended).Sequence;
        var all = hand.Records.All.First(r => r.Body is RecordBody.ParametersRead { Moment: "as-found" });
        all.Sequence.ShouldBeLessThan(first);
        ((RecordBody.ParametersRead)all.Body).Values.ShouldAllBe(v => v.Value == found[v.Key]);
        hand.Records.Bodies.OfType<RecordBody.ParameterSeen>().Count(s => s.Moment == "as-found").ShouldBe(((RecordBody.ParametersRead)all.Body).Values.Count);
    }

    [Fact]
    public async Task A_parameter_that_chooses_the_unit_of_others_is_asked_twice_each_time()
    {
        await hand.Enter();
        foreach (var purpose in Enum.GetValues<LookFor>())
        {
            hand.Questions(purpose).Count(q => q.Parameter.Number == "131").ShouldBe(2, purpose.ToString());
            hand.Questions(purpose).Where(q => q.Parameter.Number != "131").GroupBy(q => q.Parameter.Number).ShouldAllBe(g => g.Count() == 1);
        }
    }

    [Fact]
    public async Task Two_answers_that_differ_are_asked_again_until_they_agree()
    {
        hand.TypesOnce(LookFor.Found, "131", "hp", "kW", BenchDisplay.Honest, BenchDisplay.Honest);
        (await hand.Enter()).Failed.ShouldBeEmpty();
        hand.Questions(LookFor.Found).Count(q => q.Parameter.Number == "131").ShouldBe(4);
        hand.Records.Bodies.OfType<RecordBody.ParameterSeen>().Where(s => s.Parameter == "131").ShouldAllBe(s => s.Raw == 0 || s.Moment == "after-power-cycle");
    }

    [Fact]
    public async Task A_unit_is_asked_before_what_stands_in_it_and_the_rest_goes_by_the_makes_menus()
    {
        await hand.Enter();
        var asked = hand.Questions(LookFor.Found).Select(q => q.Parameter).Distinct().ToList();
        asked[0].Number.ShouldBe("131");
        var menu = BenchMake.Profile.Parameters.ToList();
        asked.Skip(1).Select(p => menu.IndexOf(p)).ShouldBeInOrder();
    }

    [Fact]
    public async Task What_shows_another_value_is_on_record_as_differing_and_asked_again()
    {
        hand.TypesOnce(LookFor.Entered, "105", "380");
        var report = await hand.Enter();

        report.Failed.ShouldBeEmpty();
        hand.Records.Bodies.OfType<RecordBody.WriteEnded>().Where(w => w.Parameter == "105").Select(w => (w.Outcome, w.ReadBack))
            .ShouldBe([("differs", 380L), ("verified-by-eye", 400L)]);
        hand.Questions(LookFor.Entered).Last(q => q.Parameter.Number == "105").Trouble!.ShouldContain("380 V");
    }

    [Fact]
    public async Task A_drive_that_will_not_take_a_value_is_left_with_a_reason_and_named()
    {
        hand.Drive.Lies["105"] = raw => Math.Min(raw, 380);
        var looks = 0;
        hand.Display.Types = q => q is { For: LookFor.Entered, Parameter.Number: "105" } && looks++ > 0 ? "s it goes no higher" : BenchDisplay.Honest;
        var failed = (await hand.Enter()).Failed.ShouldHaveSingleItem();
        failed.Parameter.ShouldBe("105");
        failed.Outcome.ShouldBeOfType<WriteOutcome.Differs>().Held.ShouldBe(380);
        failed.Outcome.Why!.ShouldContain("it goes no higher");
    }

    [Fact]
    public async Task A_line_that_is_left_out_was_not_written_and_stands_as_it_was()
    {
        hand.TypesOnce(LookFor.Entered, "105", "s", "s the panel is locked");
        var report = await hand.Enter();
        report.Written.ShouldNotContain("105");
        report.Failed.ShouldHaveSingleItem().Outcome.ShouldBeOfType<WriteOutcome.Differs>().Why!.ShouldContain("the panel is locked");
        hand.Drive.Held["105"].ShouldBe(230);
        hand.Questions(LookFor.Kept).ShouldNotContain(q => q.Parameter.Number == "105");
    }

    [Fact]
    public async Task What_stands_in_a_unit_that_was_not_chosen_is_not_entered()
    {
        hand.TypesOnce(LookFor.Entered, "131", "s it does not know hp");
        var report = await hand.Enter();
        report.Failed.Select(f => f.Parameter).Order().ShouldBe(["104", "131"]);
        hand.Questions(LookFor.Entered).ShouldNotContain(q => q.Parameter.Number == "104");
        hand.Drive.Held["104"].ShouldBe(400);
    }

    [Fact]
    public async Task Back_asks_the_one_before_again()
    {
        hand.TypesOnce(LookFor.Entered, "106", "b");
        (await hand.Enter()).Failed.ShouldBeEmpty();
        var asked = hand.Questions(LookFor.Entered).Select(q => q.Parameter.Number).ToList();
        var at = asked.IndexOf("106");
        asked[(at - 1)..(at + 3)].ShouldBe(["105", "106", "105", "106"]);
        hand.HoldsTheSheet("");
    }

    [Fact]
    public async Task Back_at_the_first_asks_it_again()
    {
        hand.TypesOnce(LookFor.Found, "131", "b");
        (await hand.Enter()).Failed.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_drive_that_forgets_is_found_out_by_eye()
    {
        hand.Drive.ForgetsAtPowerOff = true;
        var report = await hand.Enter();
        report.PowerCycle.ShouldBe(PowerCycleProof.SeenByEye);

        // Of this the factory value is the one that the sheet asks for.
        report.VerifiedByEye.ShouldBe(["108"]);
        report.Failed.Select(f => f.Parameter).Append("108").Order().ShouldBe(report.Written.Order());
        hand.Questions(LookFor.Kept).Where(q => q.SecondLook).ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("safe-torque-off-open-or-motor-isolated")]
    [InlineData("no-run-command-pending")]
    public async Task Without_what_safety_asks_for_nothing_is_asked_to_be_set(string what)
    {
        hand.Person.Declines.Add(what);
        (await hand.Enter()).Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain(what);
        hand.Questions(LookFor.Entered).ShouldBeEmpty();
        hand.Records.Bodies.OfType<RecordBody.WriteIntended>().ShouldBeEmpty();
    }

    [Fact]
    public async Task What_the_checks_forbid_is_not_even_looked_at()
    {
        (await hand.Enter(BenchSite.Job() with { Verdict = new Verdict(["plate.power-unit"], [], []) })).Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        hand.Display.Asked.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_power_cycle_that_is_put_off_leaves_the_proof_open_and_the_next_call_asks_for_it_alone()
    {
        hand.Person.CyclesPower = () => Task.FromResult<PersonSays>(new PersonSays.No("the line runs until six"));
        (await hand.Enter()).Ending.ShouldBeOfType<EntryEnding.AwaitsPowerCycle>();
        hand.Display.Asked.Clear();
        hand.Person.CyclesPower = () => Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person"));
        var next = await hand.Enter();
        next.PowerCycle.ShouldBe(PowerCycleProof.SeenByEye);
        next.Failed.ShouldBeEmpty();
        hand.Display.Asked.ShouldAllBe(q => q.For == LookFor.Kept);
    }

    [Fact]
    public async Task Where_nothing_was_set_no_power_cycle_is_asked_for()
    {
        foreach (var line in BenchSite.Sheet().Lines)
        {
            hand.Drive.Write(line.Number, line.Raw);
        }

        var report = await hand.Enter();
        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
        report.PowerCycle.ShouldBe(PowerCycleProof.NotNeeded);
        report.Skipped.Count.ShouldBe(BenchSite.Sheet().Lines.Count);
        hand.Person.Asked.ShouldBeEmpty();
    }

    [Fact]
    public async Task What_was_set_by_hand_is_read_back_by_a_later_entry_over_a_link_of_the_same_drive()
    {
        hand.TypesOnce(LookFor.Entered, "170", (string?)null);
        await hand.Enter();
        var link = new BenchSite();
        link.Drive.Held = hand.Drive.Held;
        link.Records.All.AddRange(hand.Records.All);
        var report = link.Enter();
        report.Failed.ShouldBeEmpty();
        report.VerifiedByEye.ShouldBeEmpty();
        report.Verified.ShouldContain("105");
        EntryHistory.Of(link.Records.All).AsFound.ShouldHaveSingleItem().Value["105"].ShouldBe(230);
    }

    [Fact]
    public async Task Restoring_by_hand_brings_back_what_was_seen()
    {
        var found = hand.Drive.Held.With("105", 415).With("170", 70_000);
        hand.Drive.Held = hand.Drive.Kept = found;
        await hand.Enter();
        var held = EntryHistory.Of(hand.Records.All).AsFound.Single().Value;
        var report = await hand.Enter(BenchSite.Job(EntrySheet.Restoring(BenchMake.Profile, held)));

        report.Failed.ShouldBeEmpty();
        foreach (var line in BenchSite.Sheet().Lines)
        {
            hand.Drive.Held[line.Number].ShouldBe(found[line.Number], line.Number);
        }
    }

    [Fact]
    public async Task Who_has_control_is_said_and_recorded()
    {
        (await hand.Enter()).RunSource.ShouldBe("terminals");
        hand.Records.Bodies.OfType<RecordBody.ControlLeft>().ShouldHaveSingleItem().RunSource.ShouldBe("terminals");
    }

    private static List<string> Written(BenchRecords records) => [.. records.Bodies.OfType<RecordBody.WriteIntended>().Select(w => w.Parameter)];
}
