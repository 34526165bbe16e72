using FsCheck.Xunit;
using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>The third make of the documentation: regions, ranges and factory values that depend on other rows, bits, slips and wholes that are no parameters.</summary>
public sealed class DependentRowsTests
{
    private static readonly DriveProfile Grebe = Read(DocumentedFormatTests.Examples[2])!;
    private static readonly DriveSize One = Grebe.FindSize("one")!;

    [Theory]
    [InlineData("50-hz", "one", "50.0 50.0 8.5 8500 1450")]
    [InlineData("50-hz", "two", "50.0 50.0 15.0 15000 1450")]
    [InlineData("60-hz", "one", "60.0 60.0 8.5 8500 1750")]
    [InlineData("60-hz", "two", "60.0 60.0 14.0 14000 1750")]
    public void Factory_values_are_those_of_the_size_in_the_region_and_of_what_decides_them(string region, string size, string shown)
    {
        var there = Grebe.In(region)!;
        var factory = ParameterValues.Defaults(there, there.FindSize(size)!);
        string.Join(' ', new[] { "11", "12", "20", "21", "22" }.Select(n => DisplayText.Of(there.Find(n)!, factory[n]!.Value, factory))).ShouldBe(shown);
    }

    [Fact]
    public void The_first_region_is_the_usual_one_and_another_must_exist()
    {
        One.Region!.Name.ShouldBe("50-hz");
        Grebe.In("55-hz").ShouldBeNull();
    }

    [Theory]
    [InlineData("11", 0, 500, "250 1000")]
    [InlineData("11", 1, 500, "250 1200")]
    [InlineData("12", 0, 500, "500 4000")]
    [InlineData("12", 0, 873, "873 4000")]
    public void A_range_follows_the_choice_or_the_number_that_bounds_it(string number, long region, long corner, string range)
    {
        var held = ParameterValues.Defaults(Grebe, One).With("10", region).With("11", corner);
        var found = Grebe.Range(Grebe.Find(number)!, One, held);
        $"{found.Low} {found.High}".ShouldBe(range);
        Grebe.Accepts(Grebe.Find(number)!, found.High, One, held).ShouldBeTrue();
        Grebe.Accepts(Grebe.Find(number)!, found.Low - 1, One, held).ShouldBeFalse();
    }

    [Fact]
    public void A_bound_in_another_unit_is_converted_and_rounded_to_the_step_within()
    {
        // 1.15 × 8.5 A = 9.775 A, of which a step of 10 mA permits 9770 mA.
        var range = Grebe.Range(Grebe.Find("21")!, One, ParameterValues.Defaults(Grebe, One));
        range.High.ShouldBe(977);
        DisplayText.Of(Grebe.Find("21")!, range.High, ParameterValues.Empty).ShouldBe("9770");
    }

    [Fact]
    public void Bounds_that_cross_leave_one_value() =>
        Grebe.Range(Grebe.Find("13")!, One, ParameterValues.Defaults(Grebe, One).With("12", -5)).ShouldBe(new ParameterRange(0, 0));

    [Fact]
    public void What_resets_is_entered_first_and_what_bounds_before_what_it_bounds() =>
        EntryOrder.Of(Grebe).Select(p => p.Number).Where(n => n is "10" or "11" or "12" or "13" or "20" or "21").ShouldBe(["10", "11", "12", "13", "20", "21"]);

    [Fact]
    public void The_sheet_holds_a_value_to_the_range_that_the_lines_before_leave()
    {
        var line = Lines(SettingSet.Empty.With(Setting.MotorRatedCurrent, 4).With(Setting.MotorOverloadCurrent, 6)).Single(l => l.Parameter!.Number is "21");
        (line.Display, line.High!.Display, line.Default!.Text).ShouldBe(("4600", "4600", "4000 mA"));
        FitWords.Of(line.Fit, Setting.MotorOverloadCurrent).ShouldBe("differs: 6 A is wanted, the drive goes only to 4.6 A");
    }

    [Fact]
    public void After_a_row_that_resets_the_others_are_entered_although_they_held_their_value()
    {
        var found = ParameterValues.Defaults(Grebe, One).With("10", 1).With("11", 870);
        var written = Grebe.Written(Grebe.Find("10")!, 0, One, found);
        (written["11"], written["12"]).ShouldBe((500, found["12"]));
        Grebe.Written(Grebe.Find("10")!, 1, One, found)["11"].ShouldBe(870);
    }

    [Fact]
    public void A_ramp_to_a_fixed_frequency_and_a_part_of_the_size_are_worked_out()
    {
        var lines = Lines(SettingSet.Empty.With(Setting.MaximumFrequency, 60).With(Setting.AccelerationTime, 12).With(Setting.CurrentLimit, 14));
        lines.Single(l => l.Parameter!.Number is "30").Display.ShouldBe("10.0");
        lines.Single(l => l.Parameter!.Number is "30").Note.ShouldBe("12 s to 60 Hz, counted here to the 50 Hz");

        // 14 A of the size's 10 A are 140 %.
        lines.Single(l => l.Parameter!.Number is "31").Display.ShouldBe("140");
        lines.Single(l => l.Parameter!.Number is "31").Note.ShouldBe("as a part of the drive's own normal current");
    }

    [Theory]
    [InlineData("Hz", "0.01", "1.33")]
    [InlineData("rpm", "1", "40")]
    [InlineData("\"%\"", "0.01", "2.67")]
    public void A_rated_slip_says_the_rated_speed_in_each_of_its_units(string unit, string scale, string display)
    {
        // 1460 rpm of a motor of four poles at 50 Hz: 40 rpm below 1500, 2.667 %, 1.333 Hz.
        var text = DocumentedFormatTests.Examples[2].Replace("name: Rated slip, unit: Hz, scale: 0.01, low: 0.00, high: 20.00, default: 1.67", $"name: Rated slip, unit: {unit}, scale: {scale}, low: 0, high: 300, default: 2", StringComparison.Ordinal);
        var profile = Read(text)!;
        var size = profile.FindSize("one")!;
        var plan = SettingSet.Empty.With(Setting.MotorRatedSpeed, 1460 * Math.PI / 30).With(Setting.SlipCompensation, 0.5);
        var factory = ParameterValues.Defaults(profile, size);
        var lines = Sheet.For(profile, size, plan, factory);
        lines.Single(l => l.Parameter!.Number is "24").Display.ShouldBe(display);

        // Half of it, in rpm.
        lines.Single(l => l.Parameter!.Number is "25").Display.ShouldBe("20");
        var read = SettingsReader.Read(profile, size, Sheet.After(profile, size, lines, factory));
        read.Number(Setting.MotorRatedSpeed)!.Value.ShouldBe(1460 * Math.PI / 30, 0.1);
        read.Number(Setting.SlipCompensation)!.Value.ShouldBe(0.5, 0.01);
    }

    [Fact]
    public void Bits_say_each_its_setting_and_leave_the_others_alone()
    {
        // Factory 0111b: supply phase trips, motor phase trips, earth fault trips.
        var read = SettingsReader.Read(Grebe, One, ParameterValues.Defaults(Grebe, One));
        (read.Choice(Setting.PhaseLoss), read.Choice(Setting.OutputPhaseLoss), read.Choice(Setting.EarthFault)).ShouldBe(("trip", "trip", "trip"));
        var line = Lines(SettingSet.Empty.With(Setting.EarthFault, "warn").With(Setting.PhaseLoss, "off")).ShouldHaveSingleItem();
        (line.Display, line.Raw, line.Mapping).ShouldBe(("00001010b", 0b1010, Mapping.Converted));
        line.Note.ShouldBe("bit 0 = 0 for phase-loss, bits 2-3 = 2 for earth-fault; the other bits as from the factory");
        Lines(SettingSet.Empty.With(Setting.PhaseLoss, "warn")).ShouldHaveSingleItem().Note.ShouldBe("Bit 0 cannot say warn for phase-loss.");
    }

    [Theory]
    [InlineData("00001010b")]
    [InlineData("1010")]
    [InlineData(" 1010B ")]
    public void Binary_digits_are_read_with_and_without_their_letter(string text) =>
        DisplayText.Read(Grebe.Find("40")!, text, ParameterValues.Empty).ShouldBe(new DisplayReading.Value(10));

    [Theory]
    [InlineData("12")]
    [InlineData("b")]
    [InlineData("0Ah")]
    public void What_is_no_binary_number_is_not_read(string text) =>
        DisplayText.Read(Grebe.Find("40")!, text, ParameterValues.Empty).ShouldBeOfType<DisplayReading.Unreadable>();

    [Fact]
    public void Losses_and_deratings_stand_in_the_rating() => One.Rating.Losses!.Value.Watts.ShouldBe(130);

    [Property(MaxTest = 300)]
    public void Entered_in_its_order_no_line_is_ever_refused_for_what_stands_before_it(int seed, bool second, bool american)
    {
        var random = new Random(seed);
        var profile = Grebe.In(american ? "60-hz" : "50-hz")!;
        var size = profile.FindSize(second ? "two" : "one")!;
        var said = SettingsReader.Read(profile, size, ParameterValues.From(profile.Parameters.Select(p => KeyValuePair.Create(p.Number, p.Form switch
        {
            ParameterForm.Numeric n => random.NextInt64(n.Low, n.High + 1),
            ParameterForm.Choices c => c.Values[random.Next(c.Values.Count)].Raw,
            _ => 0,
        }))));
        var held = ParameterValues.Defaults(profile, size);
        foreach (var line in Sheet.For(profile, size, said, held))
        {
            if (line is { Parameter: { } parameter, Raw: { } raw })
            {
                profile.Accepts(parameter, raw, size, held).ShouldBeTrue($"{parameter} = {raw}, range {profile.Range(parameter, size, held)}");
                held = profile.Written(parameter, raw, size, held);
            }
        }
    }

    [Fact]
    public void Every_value_comes_back_on_every_size_in_every_region() => RoundTrip.Check(Grebe).ShouldBeEmpty();

    [Theory]
    [InlineData("not-below: 11, means: maximum", "not-below: 99, means: maximum", "parameter 12.not-below: there is no parameter `99`; give the number of a parameter of this profile")]
    [InlineData("not-below: 11, means: maximum", "not-below: 12, means: maximum", "parameter 12.not-below: it depends on itself; give the number of another parameter")]
    [InlineData("not-below: 11, means: maximum", "not-below: 20, means: maximum", "parameter 12.not-below: it is frequency, parameter `20` current; a parameter of the same kind")]
    [InlineData("not-below: 11, means: maximum", "not-below: 10, means: maximum", "parameter 12.not-below: this and parameter `10` must both be numbers in units that are known; say it for each choice with `chosen-by`, or check the units")]
    [InlineData("{chosen-by: 10, 0: 50.0, 1: 60.0}", "{chosen-by: 10, 0: 50.0}", "parameter 11.default: no value for the choice 1 (\"60 Hz\") of parameter `10`; give a value for each of its choices")]
    [InlineData("{chosen-by: 10, 0: 50.0, 1: 60.0}", "{chosen-by: 10, 0: 50.0, 1: 60.0, 2: 70.0}", "parameter 11.default: a value for 2, which parameter `10` does not offer; leave it out")]
    [InlineData("{chosen-by: 10, 0: 50.0, 1: 60.0}", "{chosen-by: 10, 0: 50.0, 1: 600.0}", "parameter 11.default: the value 600.0 for 1 is not one of its values; a value within `low` and `high`, on a step, or one of the choices|parameter 12.default: the default 600.0 is not one of its values (size `one`, region `60-hz`); a default within the range, on a step, or one of the choices")]
    [InlineData("{chosen-by: 10, 0: 50.0, 1: 60.0}", "{chosen-by: 20, 0: 50.0, 1: 60.0}", "parameter 11.default: parameter `20` has no choices; `{of: ..., times: ...}` for a number that another number decides")]
    [InlineData("{chosen-by: 10, 0: 50.0, 1: 60.0}", "{chosen-by: 10, of: 20}", "groups[1].parameters[2].default: it is not said on which parameter it depends, and how; `{of: number, times: 1.5}`, or `{chosen-by: number, 0: value, 1: value}` for a parameter with choices, would do")]
    [InlineData("default: {of: 20}, not-above: {of: 20, times: 1.15}", "default: {of: 20, times: 1.5}, not-above: {of: 20, times: 1.15}", "parameter 21.default: the default 12750 is not one of its values (size `one`, region `50-hz`); a default within the range, on a step, or one of the choices|parameter 21.default: the default 22500 is not one of its values (size `two`, region `50-hz`); a default within the range, on a step, or one of the choices|parameter 21.default: the default 21000 is not one of its values (size `two`, region `60-hz`); a default within the range, on a step, or one of the choices")]
    [InlineData("default: {of: 20}, not-above: {of: 20, times: 1.15}", "default: {of: 20}, not-above: {of: 20, times: 0}", "groups[1].parameters[6].not-above.times: not more than zero; how many times it is what the other parameter says")]
    [InlineData("part-of: {current: normal}", "part-of: {current: heavy}", "parameter 31.part-of: size `one` has no overload cycle `heavy`; the name of a cycle that all sizes have")]
    [InlineData("part-of: {current: normal}", "part-of: 400 V", "parameter 31.part-of: 400 V is voltage, but `current-limit` needs current here; another parameter, or another conversion")]
    [InlineData("counted-over: 50 Hz", "counted-over: 20", "parameter 30.counted-over: parameter 20 is current, but `acceleration-time` needs frequency here; another parameter, or another conversion")]
    [InlineData("unit: pole pairs, scale: 1, low: 1, high: 6, default: 2, means: motor-pole-count", "unit: pole pairs, scale: 1, low: 1, high: 6, default: 2", "parameter 24.below-synchronous: no parameter means `motor-pole-count`, without which a slip says no speed; add its row|parameter 25.of-rated-slip: no parameter means `motor-pole-count`, without which a slip says no speed; add its row")]
    [InlineData("name: Rated slip, unit: Hz", "name: Rated slip, unit: A", "parameter 24.unit: `A` is a unit of current, but `motor-rated-speed` needs frequency or speed or fraction here; check `unit` and `means`, or declare the conversion")]
    [InlineData("2-3: {means: earth-fault", "1-2: {means: earth-fault", "parameter 40.bits: bits 1-2 for `earth-fault` are taken by another setting, too; each bit once")]
    [InlineData("2-3: {means: earth-fault", "2: {means: earth-fault", "parameter 40.bits: bit 2 can't hold 2; from 0 to 1")]
    [InlineData("2-3: {means: earth-fault", "9-10: {means: earth-fault", "parameter 40.bits: a value of bits counts from 0 in ones, and its `high` has room for all of them; `scale: 1`, `low: 0`, no `step`, no `special`, and as `high` all bits set")]
    [InlineData("2-3: {means: earth-fault", "3-2: {means: earth-fault", "groups[2].parameters[3].bits.3-2: `3-2` names no bits; a bit from `0` to `31`, or several such as `4-5`, would do")]
    [InlineData("1: trip, 2: warn}", "1: trap, 2: warn}", "groups[2].parameters[3].bits.2-3.1: `earth-fault` has no value `trap`; `trip` would do")]
    [InlineData("shown-in: binary", "shown-in: octal", "groups[2].parameters[3].shown-in: `octal`; one of `binary`, `hexadecimal` would do", "default: 07h", "default: 7")]
    [InlineData("sizes: {two: {20: 14.0}}", "sizes: {tow: {20: 14.0}}", "regions.60-hz.sizes.tow: there is no size `tow`; `two` would do")]
    [InlineData("sizes: {two: {20: 14.0}}", "sizes: {two: {20: 44.0}}", "parameter 20.default: the default 44.0 is not one of its values (size `two`, region `60-hz`); a default within the range, on a step, or one of the choices|parameter 21.default: the default 44000 is not one of its values (size `two`, region `60-hz`); a default within the range, on a step, or one of the choices")]
    [InlineData("default: {of: 11}, not-below: 11", "default: {of: 13}, not-below: 11", "parameter 12.default: its factory value depends on `13`, and that in the end on it; a factory value that is given somewhere|parameter 13.default: its factory value depends on `12`, and that in the end on it; a factory value that is given somewhere", "default: 0.0, not-above: 12", "default: {of: 12}, not-above: 12")]
    [InlineData("default: {of: 11}, not-below: 11", "default: {of: 11}, not-below: 13", "parameter 12: it must come after `13`, and `13` in the end after it; an order of entry without a circle|parameter 13: it must come after `12`, and `12` in the end after it; an order of entry without a circle")]
    public void What_does_not_fit_is_named_at_its_row(string right, string wrong, string expected, string right2 = "", string wrong2 = "")
    {
        var text = DocumentedFormatTests.Examples[2];
        text.ShouldContain(right);
        text = text.Replace(right, wrong, StringComparison.Ordinal);
        var problems = new Problems("g");
        ProfileReader.Read(right2.Length == 0 ? text : text.Replace(right2, wrong2, StringComparison.Ordinal), problems).ShouldBeNull();
        problems.InOrder().Select(p => p.ToString()).ShouldAllBe(p => p.StartsWith("g:", StringComparison.Ordinal) && !p.StartsWith("g:1:1 ", StringComparison.Ordinal));
        string.Join('|', problems.InOrder().Select(p => p.ToString()).Select(p => p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..])).ShouldBe(expected);
    }

    [Fact]
    public void A_row_that_resets_nothing_is_a_caution()
    {
        var cautions = new Problems("g");
        ProfileReader.Read(DocumentedFormatTests.Examples[2].Replace("default: {chosen-by: 10, 0: 50.0, 1: 60.0}", "default: 50.0", StringComparison.Ordinal), new Problems("g"), cautions).ShouldNotBeNull();
        cautions.InOrder().ShouldContain(c => c.Found.Contains("resets nothing", StringComparison.Ordinal));
    }

    private static IReadOnlyList<SheetLine> Lines(SettingSet plan) => Sheet.For(Grebe, One, plan, ParameterValues.Defaults(Grebe, One));

    private static DriveProfile? Read(string text)
    {
        var problems = new Problems("g");
        var profile = ProfileReader.Read(text, problems);
        problems.InOrder().ShouldBeEmpty();
        return profile;
    }
}
