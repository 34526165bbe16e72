using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Entry;

public sealed class EntryTests
{
    private readonly BenchSite site = new();

    [Fact]
    public void A_sheet_is_entered_and_proved_after_the_power_was_gone()
    {
        var report = site.Enter();

        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
        report.Failed.ShouldBeEmpty();
        report.PowerCycle.ShouldBe(PowerCycleProof.Proved);
        report.Written.Order().ShouldBe(report.Verified.Order());
        report.Resumed.ShouldBeNull();
        foreach (var line in BenchSite.Sheet().Lines)
        {
            site.Drive.Held[line.Number].ShouldBe(line.Raw, line.Number);
            site.Drive.Kept[line.Number].ShouldBe(line.Raw, line.Number);
        }

        var ended = site.Records.Bodies.OfType<RecordBody.EntryEnded>().ShouldHaveSingleItem();
        ended.Verified.ShouldBe(report.Verified.Count);
        ended.ProvedAfterPowerCycle.ShouldBeTrue();
    }

    [Fact]
    public void Only_what_differs_is_written_and_the_rest_is_skipped()
    {
        site.Drive.Held = site.Drive.Held.With("105", 400).With("150", 500);
        var report = site.Enter();

        report.Skipped.ShouldContain("105");
        report.Skipped.ShouldContain("150");
        site.Sent("write").ShouldNotContain(o => o.What == "105" || o.What == "150");
        (report.Verified.Count + report.Skipped.Count).ShouldBe(BenchSite.Sheet().Lines.Count);
    }

    [Fact]
    public void A_drive_that_holds_the_sheet_already_is_left_alone()
    {
        site.Enter();
        site.Log.Clear();
        var report = site.Enter();

        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
        report.PowerCycle.ShouldBe(PowerCycleProof.NotNeeded);
        report.Skipped.Count.ShouldBe(BenchSite.Sheet().Lines.Count);
        report.Written.ShouldBeEmpty();
        site.Sent("write").ShouldBeEmpty();
        site.Sent("store").ShouldBeEmpty();
    }

    [Fact]
    public void The_lines_are_written_in_the_sheets_order_each_with_its_journal_around_it()
    {
        site.Enter();

        var order = BenchSite.Sheet().Lines.Select(l => l.Number).ToList();
        var written = site.Sent("write").Select(o => o.What).ToList();
        written.ShouldBe(order.Where(written.Contains).ToList());
        var journal = site.Records.Bodies.Where(b => b is RecordBody.WriteIntended or RecordBody.WriteEnded).ToList();
        for (var i = 0; i < journal.Count; i += 2)
        {
            var intended = journal[i].ShouldBeOfType<RecordBody.WriteIntended>();
            var ended = journal[i + 1].ShouldBeOfType<RecordBody.WriteEnded>();
            ended.Parameter.ShouldBe(intended.Parameter);
            ended.Outcome.ShouldBe("verified");
            ended.ReadBack.ShouldBe(intended.Raw);
        }
    }

    [Fact]
    public void All_parameters_as_found_are_kept_before_the_first_write()
    {
        var found = site.Drive.Held;
        long? first = null;
        site.Script = op =>
        {
            first ??= op.Kind == "write" ? site.Records.All.Count : null;
            return Mishap.None;
        };
        site.Enter();

        var read = site.Records.All.First(r => r.Body is RecordBody.ParametersRead { Moment: "as-found" });
        read.Sequence.ShouldBeLessThanOrEqualTo(first!.Value);
        var values = ((RecordBody.ParametersRead)read.Body).Values;
        values.Keys.Order().ShouldBe(BenchMake.Profile.Parameters.Where(p => p.IsKept).Select(p => p.Number).Order());
        values.ShouldAllBe(v => v.Value == found[v.Key]);
    }

    [Fact]
    public void A_later_entry_keeps_its_values_beside_those_as_found()
    {
        var found = site.Drive.Held;
        site.Enter();
        site.Drive.Held = site.Drive.Held.With("105", 230);
        site.Enter();

        site.Records.Bodies.OfType<RecordBody.ParametersRead>().Count(r => r.Moment == "as-found").ShouldBe(1);
        site.Records.Bodies.OfType<RecordBody.ParametersRead>().Count(r => r.Moment == "before-entry").ShouldBe(1);
        EntryHistory.Of(site.Records.All).AsFound[site.Drive.Identity]["105"].ShouldBe(found["105"]);
    }

    [Fact]
    public void Another_drive_under_the_same_tag_has_its_own_values_as_found()
    {
        site.Enter();
        site.Drive.Identity = "Bench B-2 1.0";
        site.Drive.Held = ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size).With("105", 415);
        site.Enter();

        var asFound = EntryHistory.Of(site.Records.All).AsFound;
        asFound["Bench B-1 1.0"]["105"].ShouldBe(230);
        asFound["Bench B-2 1.0"]["105"].ShouldBe(415);
    }

    [Fact]
    public void A_lying_drive_is_named_with_what_it_holds()
    {
        site.Drive.Lies["105"] = raw => Math.Min(raw, 380);
        var report = site.Enter();

        var failed = report.Failed.ShouldHaveSingleItem();
        failed.Parameter.ShouldBe("105");
        failed.Outcome.ShouldBeOfType<WriteOutcome.Differs>().Held.ShouldBe(380);
        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
    }

    [Fact]
    public void A_refused_parameter_is_named_with_the_exception()
    {
        site.Drive.RefusesToWrite.Add("151");
        var failed = site.Enter().Failed.ShouldHaveSingleItem();
        failed.Parameter.ShouldBe("151");
        failed.Outcome.ShouldBeOfType<WriteOutcome.Refused>().Reason.ShouldContain("03");
    }

    [Fact]
    public void A_parameter_that_the_drive_does_not_give_back_is_unverified()
    {
        site.Drive.RefusesToRead.Add("105");
        var report = site.Enter();
        var failed = report.Failed.ShouldHaveSingleItem();
        failed.Parameter.ShouldBe("105");
        failed.Outcome.ShouldBeOfType<WriteOutcome.Unverified>();
        site.Records.Bodies.OfType<RecordBody.ParametersRead>().First().Values["105"].ShouldBeNull();
    }

    [Fact]
    public async Task A_drive_that_gives_nothing_leaves_no_record_of_how_it_was_found()
    {
        foreach (var parameter in BenchMake.Profile.Parameters)
        {
            site.Drive.RefusesToRead.Add(parameter.Number);
        }

        site.Enter().Ending.ShouldBeOfType<EntryEnding.LinkFailed>();
        (await ReadDrive.Run(BenchSite.Tag, BenchMake.Profile, site, site.Records, TestContext.Current.CancellationToken)).ShouldBeOfType<DriveRead.NoLink>();
        site.Records.Bodies.OfType<RecordBody.ParametersRead>().ShouldBeEmpty();
        site.Sent("write").ShouldBeEmpty();
    }

    [Fact]
    public void A_write_whose_reply_is_lost_is_settled_by_reading()
    {
        site.Script = Once("write", "105", Mishap.ReplyLost);
        var report = site.Enter();
        report.Failed.ShouldBeEmpty();
        site.Sent("write").Count(o => o.What == "105").ShouldBe(1);
    }

    [Fact]
    public void A_write_that_was_lost_is_sent_once_more()
    {
        site.Script = Once("write", "105", Mishap.RequestLost);
        var report = site.Enter();
        report.Failed.ShouldBeEmpty();
        site.Sent("write").Count(o => o.What == "105").ShouldBe(2);
    }

    [Fact]
    public void A_pulled_cable_leaves_every_line_named_and_the_next_entry_finishes()
    {
        site.Script = op => op is { Kind: "write", What: "151" } ? Mishap.CablePulled : Mishap.None;
        var cut = site.Enter();

        cut.Ending.ShouldBeOfType<EntryEnding.LinkFailed>();
        cut.Failed.Single(f => f.Parameter == "151").Outcome.ShouldBeOfType<WriteOutcome.Unverified>();
        cut.Failed.Single(f => f.Parameter == "220").Outcome.ShouldBeOfType<WriteOutcome.Differs>().Reason.ShouldContain("not written");
        Lists(cut).ShouldBe(BenchSite.Sheet().Lines.Select(l => l.Number).Order());
        site.Records.Bodies.OfType<RecordBody.EntryEnded>().ShouldBeEmpty();

        site.Script = _ => Mishap.None;
        var next = site.Enter();
        next.Ending.ShouldBeOfType<EntryEnding.Finished>();
        next.Failed.ShouldBeEmpty();
        next.Resumed!.Verified.ShouldBe(cut.Verified, ignoreOrder: true);
        next.WrittenBefore.ShouldContain("105");
        next.PowerCycle.ShouldBe(PowerCycleProof.Proved);
    }

    [Fact]
    public void A_value_in_a_unit_that_another_parameter_chooses_is_written_after_it_and_read_in_it()
    {
        // The drive states the output anew when the unit changes; the sheet's line is proved in the new unit.
        var report = site.Enter();
        report.Failed.ShouldBeEmpty();
        var written = site.Sent("write").Select(o => o.What).ToList();
        written.IndexOf("131").ShouldBeLessThan(written.IndexOf("104"));
        site.Drive.Held["104"].ShouldBe(1000);
    }

    [Fact]
    public void A_value_in_a_unit_that_was_not_taken_is_not_written_in_another()
    {
        site.Drive.RefusesToWrite.Add("131");
        var report = site.Enter();
        report.Failed.Select(f => f.Parameter).Order().ShouldBe(["104", "131"]);
        report.Written.ShouldNotContain("104");
        site.Sent("write").ShouldNotContain(o => o.What == "104");
        site.Drive.Held["104"].ShouldBe(400);
    }

    [Fact]
    public void A_value_that_reads_otherwise_after_a_unit_changed_is_written_although_it_seemed_right_before()
    {
        site.Drive.Held = site.Drive.Held.With("104", 1000);
        var report = site.Enter();
        report.Failed.ShouldBeEmpty();
        report.Written.ShouldContain("104");
        site.Drive.Held["104"].ShouldBe(1000);
    }

    [Fact]
    public void What_a_parameter_resets_is_written_although_the_drive_held_the_sheets_value()
    {
        site.Drive.Held["108"].ShouldBe(80);
        var report = site.Enter();
        report.Written.ShouldContain("108");
        site.Drive.Held["108"].ShouldBe(80);
        BenchMake.Profile.Default(BenchMake.Of("108"), BenchMake.Size, site.Drive.Held).ShouldBe(84);
    }

    [Fact]
    public void A_drive_that_forgets_is_found_out_by_the_power_cycle()
    {
        site.Drive.ForgetsAtPowerOff = true;
        var report = site.Enter();
        report.PowerCycle.ShouldBe(PowerCycleProof.Proved);

        // Of this the factory value is the one that the sheet asks for.
        report.Verified.ShouldBe(["108"]);
        report.Failed.Count.ShouldBe(report.Written.Count - 1);
        report.Failed.ShouldAllBe(f => f.Outcome is WriteOutcome.Differs);
    }

    [Fact]
    public void A_power_cycle_that_was_not_seen_proves_nothing_and_is_asked_for_again()
    {
        var properly = site.Person.CyclesPower;
        site.Person.CyclesPower = () => Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person"));
        var report = site.Enter();
        report.Ending.ShouldBeOfType<EntryEnding.AwaitsPowerCycle>();
        report.PowerCycle.ShouldBe(PowerCycleProof.NotSeen);

        site.Person.CyclesPower = properly;
        site.Log.Clear();
        var next = site.Enter();
        next.Ending.ShouldBeOfType<EntryEnding.Finished>();
        next.PowerCycle.ShouldBe(PowerCycleProof.Proved);
        site.Sent("write").ShouldBeEmpty();
        site.Sent("store").ShouldBeEmpty();
    }

    [Fact]
    public void A_drive_with_another_supply_for_its_electronics_is_seen_by_its_empty_bus()
    {
        site.Person.CyclesPower = async () =>
        {
            site.Drive.DcBusV = 3;
            await Task.Delay(TimeSpan.FromSeconds(2), site.Time);
            site.Drive.PowerCycle();
            site.Drive.DcBusV = 561;
            return new PersonSays.Yes("A. Person");
        };
        site.Enter().PowerCycle.ShouldBe(PowerCycleProof.Proved);
    }

    [Fact]
    public void A_link_that_does_not_open_after_the_power_cycle_is_tried_once_for_each_word_of_the_person()
    {
        var properly = site.Person.CyclesPower;
        site.Person.CyclesPower = () =>
        {
            site.OpeningsThatFail = 2;
            return properly();
        };
        site.Enter().PowerCycle.ShouldBe(PowerCycleProof.Proved);
        site.Person.Asked.Count(a => a.What == "drive-is-on-again").ShouldBe(2);
    }

    [Fact]
    public void An_entry_that_is_cancelled_ends_between_two_writes_and_goes_on_later()
    {
        using var stop = new CancellationTokenSource();
        site.Script = op =>
        {
            if (op is { Kind: "write", What: "151" })
            {
                stop.Cancel();
            }

            return Mishap.None;
        };
        var report = site.Enter(cancellation: stop.Token);
        report.Ending.ShouldBeOfType<EntryEnding.Interrupted>();
        report.Verified.ShouldContain("151");
        EntryHistory.Of(site.Records.All).Open!.UnderWay.ShouldBeNull();
        site.Enter().Failed.ShouldBeEmpty();
    }

    [Fact]
    public void Restoring_brings_back_what_was_found()
    {
        var found = site.Drive.Held.With("105", 415).With("170", 70_000);
        site.Drive.Held = site.Drive.Kept = found;
        site.Enter();
        var held = EntryHistory.Of(site.Records.All).AsFound[site.Drive.Identity];
        var report = site.Enter(BenchSite.Job(EntrySheet.Restoring(BenchMake.Profile, held)));

        report.Failed.ShouldBeEmpty();
        foreach (var parameter in BenchMake.Profile.Parameters.Where(p => p.IsKept))
        {
            site.Drive.Held[parameter.Number].ShouldBe(found[parameter.Number], parameter.Number);
        }

        site.Person.Asked.Count(a => a.What == "no-run-command-pending").ShouldBe(4);
    }

    [Fact]
    public void Who_has_control_is_said_and_recorded()
    {
        site.Enter().RunSource.ShouldBe("terminals");
        site.Records.Bodies.OfType<RecordBody.ControlLeft>().ShouldHaveSingleItem().RunSource.ShouldBe("terminals");
    }

    internal static IEnumerable<string> Lists(EntryReport report) =>
        report.Verified.Concat(report.Skipped).Concat(report.Failed.Select(f => f.Parameter)).Order();

    internal static Func<BenchOp, Mishap> Once(string kind, string what, Mishap mishap)
    {
        var done = false;
        return op =>
        {
            var now = !done && op.Kind == kind && op.What == what;
            done |= now;
            return now ? mishap : Mishap.None;
        };
    }
}
