using Runup.Settings;

namespace Runup.Profiles.Tests.SheetOfEntry;

public sealed class SheetTests
{
    private static IReadOnlyList<SheetLine> Lines(DriveProfile profile, SettingSet plan) => Sheet.For(profile, Makes.Size, plan, Makes.Defaults(profile));

    private static SheetLine Line(IEnumerable<SheetLine> lines, string number) => lines.Single(l => string.Equals(l.Parameter?.Number, number, StringComparison.Ordinal));

    [Fact]
    public void A_ramp_counted_to_base_frequency_is_shortened_when_the_maximum_is_above_it()
    {
        var lines = Lines(Makes.Plain, SettingSet.Empty.With(Setting.AccelerationTime, 12).With(Setting.MaximumFrequency, 60).With(Setting.BaseFrequency, 50));
        var ramp = Line(lines, "170");
        ramp.Display.ShouldBe("10.00");
        ramp.Raw.ShouldBe(1000);
        ramp.Unit.ShouldBe("s");
        ramp.Mapping.ShouldBe(Mapping.Converted);
        ramp.Fit.ShouldBeOfType<Fit.Exact>();
        ramp.Order.ShouldBeGreaterThan(Line(lines, "150").Order);
        ramp.Order.ShouldBeGreaterThan(Line(lines, "151").Order);
        ramp.Default!.Display.ShouldBe("5.00");
    }

    [Fact]
    public void Power_is_shown_in_the_unit_that_another_parameter_chooses_and_entered_after_it()
    {
        var lines = Lines(Makes.Plain, SettingSet.Empty.With(Setting.MotorRatedPower, 7500).With(Setting.PowerUnit, "hp"));
        var power = Line(lines, "104");
        power.Display.ShouldBe("10.06");
        power.Unit.ShouldBe("hp");
        power.Default!.Display.ShouldBe("7.50");
        power.Order.ShouldBeGreaterThan(Line(lines, "131").Order);
        power.Fit.ShouldBeOfType<Fit.Rounded>();
    }

    [Fact]
    public void A_limit_in_per_cent_is_worked_out_from_the_current_as_the_drive_will_hold_it()
    {
        var lines = Lines(Makes.Plain, SettingSet.Empty.With(Setting.MotorRatedCurrent, 14.4).With(Setting.CurrentLimit, 21.6));
        Line(lines, "190").Raw.ShouldBe(150);
        Line(lines, "190").Changed.ShouldBeFalse();
        Line(lines, "106").Changed.ShouldBeFalse();
    }

    [Fact]
    public void What_lies_outside_the_range_is_never_clamped_in_silence()
    {
        var limit = Line(Lines(Makes.Plain, SettingSet.Empty.With(Setting.MotorRatedCurrent, 10).With(Setting.CurrentLimit, 30)), "190");
        limit.Raw.ShouldBe(200);
        limit.Fit.ShouldBe(new Fit.OutOfRange(30, 20));
        limit.Note.ShouldBe("as a part of parameter 106; differs: 30 A is wanted, the drive goes only to 20 A");
    }

    [Fact]
    public void Half_a_step_beyond_the_end_of_the_range_is_rounding()
    {
        var limit = Line(Lines(Makes.Plain, SettingSet.Empty.With(Setting.MotorRatedCurrent, 10).With(Setting.CurrentLimit, 20.04)), "190");
        limit.Fit.ShouldBe(new Fit.Rounded(20.04, 20));
        limit.Note.ShouldBe("as a part of parameter 106");
    }

    [Fact]
    public void A_rounding_of_more_than_a_hundredth_is_said() =>
        Line(Lines(Makes.Plain, SettingSet.Empty.With(Setting.MotorRatedCurrent, 0.46)), "106").Note.ShouldBe("rounded by the drive from 0.46 A to 0.5 A");

    [Fact]
    public void A_combined_choice_says_both_settings_in_one_line_and_goes_last()
    {
        var lines = Lines(Makes.Plain, SettingSet.Empty.With(Setting.RunCommandSource, "bus").With(Setting.PermittedDirection, "both").With(Setting.FrequencyReferenceSource, "bus"));
        lines.Count.ShouldBe(2);
        lines[^1].Parameter!.Number.ShouldBe("220");
        lines[^1].Display.ShouldBe("bus both");
        lines[^1].Settings.ShouldBe([Setting.RunCommandSource, Setting.PermittedDirection]);
    }

    [Fact]
    public void Half_of_a_combined_choice_keeps_what_the_drive_holds_of_the_other_half()
    {
        var before = Makes.Defaults(Makes.Plain).With("220", 1);
        var lines = Sheet.For(Makes.Plain, Makes.Size, SettingSet.Empty.With(Setting.RunCommandSource, "bus"), before);
        lines.ShouldHaveSingleItem().Display.ShouldBe("bus both");
    }

    [Fact]
    public void A_choice_that_the_drive_lacks_needs_a_person()
    {
        var line = Lines(Makes.Plain, SettingSet.Empty.With(Setting.OverloadTripClass, "10A")).ShouldHaveSingleItem();
        line.Mapping.ShouldBe(Mapping.NeedsChoice);
        line.Raw.ShouldBeNull();
        line.Note!.ShouldContain("\"20\"");
    }

    [Fact]
    public void A_setting_without_parameter_is_listed_as_not_offered()
    {
        var line = Lines(Makes.Plain, SettingSet.Empty.With(Setting.FlyingRestart, "on")).ShouldHaveSingleItem();
        line.Parameter.ShouldBeNull();
        line.Mapping.ShouldBe(Mapping.NotOffered);
    }

    [Fact]
    public void A_special_value_is_shown_by_its_label_and_says_nothing_where_it_has_no_counterpart()
    {
        var profile = Makes.Plain;
        DisplayText.Of(profile.Find("157")!, 0, Makes.Defaults(profile)).ShouldBe("as motor");
        SettingsReader.Read(profile, Makes.Size, Makes.Defaults(profile))[Setting.MaximumOutputVoltage].ShouldBeNull();
        Line(Lines(profile, SettingSet.Empty.With(Setting.MaximumOutputVoltage, 400)), "157").Raw.ShouldBe(400);
    }

    [Theory]
    [InlineData(12.0, 12, 1500)]
    [InlineData(7.5, 8, 1600)]
    [InlineData(0.5, 1, 3000)]
    public void A_ramp_as_speed_change_over_time_finds_a_pair_that_says_it_exactly(double seconds, long time, long speed)
    {
        var lines = Lines(Makes.Indexed, SettingSet.Empty.With(Setting.AccelerationTime, seconds).With(Setting.MaximumFrequency, 50));
        Line(lines, "6048h:2").Raw.ShouldBe(time);
        Line(lines, "6048h:1").Raw.ShouldBe(speed);
        Line(lines, "6048h:1").Fit.ShouldBeOfType<Fit.Exact>();
        var after = Sheet.After(Makes.Indexed, Makes.Size, lines, Makes.Defaults(Makes.Indexed));
        SettingsReader.Read(Makes.Indexed, Makes.Size, after).Number(Setting.AccelerationTime)!.Value.ShouldBe(seconds, 1e-9);
    }

    [Fact]
    public void Frequencies_become_speeds_at_no_slip_with_the_pole_pairs_entered_before()
    {
        var lines = Lines(Makes.Indexed, SettingSet.Empty.With(Setting.MaximumFrequency, 50).With(Setting.MotorPoleCount, 6));
        Line(lines, "2106h").Raw.ShouldBe(3);
        Line(lines, "6046h:2").Raw.ShouldBe(1000);
        Line(lines, "6046h:2").Order.ShouldBe(2);
    }

    [Fact]
    public void Another_unit_may_bring_another_scale()
    {
        var lines = Lines(Makes.Indexed, SettingSet.Empty.With(Setting.MotorRatedPower, 7456.998715822702).With(Setting.PowerUnit, "hp"));
        Line(lines, "2101h").Raw.ShouldBe(10000);
        Line(lines, "2101h").Display.ShouldBe("10.000");
    }

    [Fact]
    public void Per_mille_of_milliamperes()
    {
        var lines = Lines(Makes.Indexed, SettingSet.Empty.With(Setting.MotorRatedCurrent, 14.4).With(Setting.CurrentLimit, 21.6));
        Line(lines, "6075h").Raw.ShouldBe(14400);
        Line(lines, "6073h").Raw.ShouldBe(1500);
    }

    [Fact]
    public void The_whole_sheet_has_every_kept_parameter_once_and_no_command_or_reading()
    {
        var lines = Sheet.Whole(Makes.Plain, Makes.Size, SettingSet.Empty.With(Setting.BaseFrequency, 60), Makes.Defaults(Makes.Plain));
        lines.Count.ShouldBe(12);
        lines.Count(l => l.Changed).ShouldBe(1);
        lines.Select(l => l.Order).ShouldBe(Enumerable.Range(1, 12));
    }
}
