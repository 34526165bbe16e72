using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Sheet;

public sealed class SheetModelTests
{
    private static readonly DriveSize Size = DemoFiles.TernSize("7.5-400");

    [Fact]
    public void The_short_sheet_has_only_what_must_be_and_counts_without_gaps()
    {
        var sheet = Pump(SheetExtent.Must);
        sheet.Entries.ShouldAllBe(e => e.Row.Rank == Rank.Must);
        sheet.Entries.Select(e => e.Line.Order).ShouldBe(Enumerable.Range(1, sheet.Entries.Count));
        sheet.Entries.Count.ShouldBeLessThan(Pump(SheetExtent.Decided).Entries.Count);
    }

    [Fact]
    public void The_whole_sheet_has_every_parameter_that_is_kept_and_says_which_to_leave()
    {
        var sheet = Pump(SheetExtent.Everything);
        sheet.Entries.Count.ShouldBe(DemoFiles.Tern.Parameters.Count(p => p.IsKept));
        var left = sheet.Entries.First(e => e.Row.Rank is null);
        (left.Before, left.Why).ShouldBe(("same", "the job does not decide it; leave it as it is"));
    }

    [Fact]
    public void All_extents_carry_the_checksum_that_the_record_keeps_at_entry()
    {
        var entered = EntrySheet.From(Profiles.Sheet.For(DemoFiles.Tern, Size, Plan().Values, ParameterValues.Defaults(DemoFiles.Tern, Size))).Sha256;
        Enum.GetValues<SheetExtent>().Select(e => Pump(e).Checksum).ShouldAllBe(c => entered.StartsWith(c, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_digits_in_another_unit_are_not_the_same()
    {
        var output = Of(Setting.MotorRatedPower, "7.5 kW", "7.5 hp").Entries.Single(e => e.Line.Parameter!.Number == "104");
        (output.Enter, output.Unit, output.Before, output.Line.Changed).ShouldBe(("7.50", "hp", "7.50 kW", true));
    }

    [Fact]
    public void What_changes_a_unit_names_what_stands_in_it_and_comes_before()
    {
        var sheet = Pump(SheetExtent.Decided);
        var chooser = sheet.Entries.Single(e => e.Line.Parameter!.Number == "131");
        var chosen = sheet.Entries.Single(e => e.Line.Parameter!.Number == "104");
        chooser.Marks.Select(m => m.ToString()).ShouldBe(["CHANGES UNIT of 104"]);
        chosen.Marks.Select(m => m.ToString()).ShouldBe(["UNIT as chosen in 131"]);
        chooser.Line.Order.ShouldBeLessThan(chosen.Line.Order);
    }

    [Fact]
    public void Only_the_last_lines_can_start_the_motor_and_say_so()
    {
        var marked = Pump(SheetExtent.Decided).Entries.Select(e => e.Marks.Any(m => m.Word is "CAN START THE MOTOR")).ToList();
        marked.ShouldContain(true);
        marked.ShouldBe(marked.Order());
    }

    [Fact]
    public void What_the_drive_rounds_or_cannot_reach_is_marked_with_what_becomes_of_it()
    {
        var rounded = Entry(new(Setting.MotorRatedCurrent, new SettingValue.Number(0.46), Rank.Must, "plate", "plate"));
        (rounded.Marks.Single().Word, rounded.Why).ShouldBe(("ROUNDED", "plate; rounded by the drive from 0.46 A to 0.5 A"));
        var beyond = Entry(new(Setting.MotorRatedCurrent, new SettingValue.Number(250), Rank.Must, "plate", "plate"));
        (beyond.Marks.Single().Word, beyond.Enter).ShouldBe(("DIFFERS", "200.0"));
        beyond.Why.ShouldContain("250 A is wanted, the drive goes only to 200 A");
    }

    [Fact]
    public void A_choice_that_the_drive_lacks_is_left_to_a_person()
    {
        var entry = Entry(new(Setting.OverloadTripClass, new SettingValue.Choice("10A"), Rank.Must, "asked for", "job"));
        (entry.Marks.Single().Word, entry.Enter, entry.Unit).ShouldBe(("CHOOSE", "choose", ""));
        entry.Before.ShouldBe("10");
    }

    [Fact]
    public void A_setting_without_counterpart_says_what_to_do_instead()
    {
        var bare = new DriveProfile([DemoFiles.Tern.Find("106")!]) { Family = "bare", Title = "Bare", Sizes = [Size] };
        var job = DemoFiles.Job("swp-101.job.yaml");
        var sheet = SheetModel.Of(job, SettingsPlan.For(JobContext.For(job, Size.Rating)), bare, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch);
        sheet.Entries.ShouldHaveSingleItem();
        sheet.Without.Count.ShouldBeGreaterThan(20);
        sheet.Without.ShouldAllBe(e => e.Marks[0].Word == "NO COUNTERPART" && e.Enter.Length == 0 && e.Why.EndsWith('.'));
        sheet.Without.Single(e => e.Name == "bus-timeout").Why.ShouldEndWith("Watch the link in the control system, and wire a run release that drops when it is lost.");
    }

    [Fact]
    public void No_setting_without_counterpart_is_left_with_the_advice_to_ask()
    {
        var bare = new DriveProfile([DemoFiles.Tern.Find("900")!]) { Family = "bare", Title = "Bare", Sizes = [Size] };
        var all = new SettingsPlan([.. Setting.All.Select(s => new PlannedSetting(s, s.Form is SettingForm.OneOf o ? new SettingValue.Choice(o.Choices[0]) : new SettingValue.Number(1), Rank.May, "asked for", "job"))]);
        var without = SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), all, bare, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch).Without;
        without.Count.ShouldBe(Setting.All.Count);
        without.Where(e => e.Why.Contains("Ask whoever planned", StringComparison.Ordinal)).Select(e => e.Name).ShouldBeEmpty();
    }

    [Fact]
    public void What_has_to_be_turned_stands_apart_from_what_shows_it_already_and_no_number_is_lost()
    {
        var sheet = Pump(SheetExtent.Decided);
        sheet.ToEnter.ShouldAllBe(e => e.Line.Changed);
        sheet.Already.ShouldAllBe(e => e.Before == "same");
        sheet.ToEnter.Concat(sheet.Already).Select(e => e.Line.Order).Order().ShouldBe(Enumerable.Range(1, sheet.Entries.Count));
        Pump(SheetExtent.Everything).Already.ShouldBeEmpty();
        Pump(SheetExtent.Must).Already.ShouldBeEmpty();
    }

    [Fact]
    public void Of_a_drive_that_was_read_the_sheet_shows_what_was_found_beside_the_factorys()
    {
        var factory = ParameterValues.Defaults(DemoFiles.Tern, Size);
        var found = factory.With("190", 120).With("109", 6).With("230", 1).With("150", 500).With("372", 3).Without("111");
        var sheet = SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), Plan(), DemoFiles.Tern, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch, new SheetFound(found, DateTimeOffset.UnixEpoch));
        string Row(string number) => sheet.Entries.Single(e => e.Line.Parameter!.Number == number) is var e ? $"{e.Enter} {e.Unit}|{e.Before}|{e.Default}|{(e.IsOpen ? "enter" : "look")}" : "";
        Row("190").ShouldBe("129 %|120 %|150 %|enter");

        // As from the factory, and yet to be turned, since somebody had changed it.
        Row("109").ShouldBe("4 |6|4|enter");
        Row("230").ShouldBe("ramp |coast|ramp|enter");
        Row("150").ShouldBe("50.0 Hz|same|50.0 Hz|look");
        Row("111").ShouldBe("delta |not known|star|enter");
        sheet.FoundOtherwise.ShouldBe(["372"]);
        sheet.Checksum.ShouldBe(Pump(SheetExtent.Decided).Checksum);
    }

    [Fact]
    public void Of_what_the_job_leaves_alone_the_whole_sheet_marks_what_somebody_changed()
    {
        var found = ParameterValues.Defaults(DemoFiles.Tern, Size).With("372", 3);
        var sheet = SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), Plan(), DemoFiles.Tern, Size, SheetExtent.Everything, DateTimeOffset.UnixEpoch, new SheetFound(found, DateTimeOffset.UnixEpoch));
        var step = sheet.Entries.Single(e => e.Line.Parameter!.Number == "372");
        (step.Enter, step.Before, step.Marks.Single().ToString()).ShouldBe(("0.3", "same", "OTHER than from the factory: 0.1 Hz"));
    }

    [Fact]
    public void What_rests_on_a_row_that_the_job_leaves_alone_and_somebody_changed_says_so()
    {
        var found = new SheetFound(ParameterValues.Defaults(DemoFiles.Tern, Size).With("150", 870), DateTimeOffset.UnixEpoch);
        var ramps = new SettingsPlan([.. Plan().Lines.Where(l => l.Setting == Setting.AccelerationTime)]);
        var sheet = SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), ramps, DemoFiles.Tern, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch, found);
        sheet.Entries.ShouldHaveSingleItem().Marks.Select(m => m.ToString()).ShouldBe(["RESTS ON 150, worked out with the factory value and found otherwise"]);
    }

    [Fact]
    public void A_word_on_the_display_has_no_unit() =>
        Pump(SheetExtent.Decided).Entries.Single(e => e.Line.Parameter!.Number == "157").Before.ShouldBe("as motor");

    [Theory]
    [InlineData("1.60", "1.60")]
    [InlineData("-0.5", "-0.5")]
    [InlineData("1460", "1460")]
    [InlineData("0", "0")]
    public void Digits_stay_as_the_display_shows_them(string display, string text) => SheetCell.OfDisplay(display).ShouldBeOfType<SheetCell.Number>().Text.ShouldBe(text);

    [Theory]
    [InlineData("off")]
    [InlineData("1,460")]
    [InlineData("")]
    [InlineData(null)]
    public void Other_words_are_no_number(string? display) => SheetCell.OfDisplay(display).ShouldBeOfType<SheetCell.Words>().Text.ShouldBe(display ?? "");

    private static SheetEntry Entry(PlannedSetting setting) =>
        SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), new([setting]), DemoFiles.Tern, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch).Entries.ShouldHaveSingleItem();

    private static SettingsPlan Plan() => SettingsPlan.For(JobContext.For(DemoFiles.Job("swp-101.job.yaml"), Size.Rating));

    private static SheetModel Pump(SheetExtent extent) => SheetModel.Of(DemoFiles.Job("swp-101.job.yaml"), Plan(), DemoFiles.Tern, Size, extent, DateTimeOffset.UnixEpoch);

    private static SheetModel Of(Setting setting, string before, string after)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "demo", "ostrevad", "swp-101.job.yaml"));
        text.ShouldContain(before, Case.Sensitive, setting.Name);
        var job = DemoFiles.Text(text.Replace(before, after, StringComparison.Ordinal));
        return SheetModel.Of(job, SettingsPlan.For(JobContext.For(job, Size.Rating)), DemoFiles.Tern, Size, SheetExtent.Decided, DateTimeOffset.UnixEpoch);
    }
}
