using Runup.Settings;

namespace Runup.Profiles.Tests.Suggestion;

/// <summary>What a table says of the way in which its rows count is proposed; what it leaves open is asked.</summary>
public sealed class ConversionAdvisorTests
{
    private static readonly ListedParameter Rated = Row("11", "Motor current", "A");
    private static readonly ListedParameter Base = Row("24", "Frequency at full voltage", "Hz");
    private static readonly ListedParameter Highest = Row("23", "Highest frequency", "Hz");
    private static readonly ListedParameter Poles = Row("17", "Poles", "");
    private static readonly ListedParameter RatedFrequency = Row("14", "Motor frequency", "Hz");

    [Theory]
    [InlineData("Ramp-up time (0 to base frequency)", "", "counted-over: 24")]
    [InlineData("Run-up", "0 to corner frequency", "counted-over: 24")]
    [InlineData("Ramp-up", "from 0 to the motor's rated frequency", "counted-over: 14")]
    [InlineData("Ramp-up", "time from 0 to maximum frequency", "")]
    [InlineData("Ramp-up", "0 to f_max", "")]
    [InlineData("Ramp-up", "0 to 50 Hz", "counted-over: 50 Hz")]
    [InlineData("Ramp-up", "0 to 00 Hz", "to ask")]
    [InlineData("Ramp-down", "50 Hz to 0", "counted-over: 50 Hz")]
    [InlineData("Ramp-up", "", "to ask")]
    [InlineData("Ramp-up", "at most 3600 s", "to ask")]
    public void A_ramp_is_counted_over_what_the_table_says(string name, string remark, string expected) =>
        Advice(Row("20", name, "s") with { Remark = remark }, Setting.AccelerationTime).ShouldBe(expected);

    [Theory]
    [InlineData("% of FLC", "part-of: 11")]
    [InlineData("% In", "part-of: 11")]
    [InlineData("%", "part-of: 11 (to ask)")]
    [InlineData("% of drive rated current", "part-of: {current: normal}")]
    public void Per_cent_is_of_what_the_table_says(string unit, string expected) =>
        Advice(Row("25", "Current limit", "%") with { UnitText = unit }, Setting.CurrentLimit).ShouldBe(expected);

    [Fact]
    public void Per_cent_of_the_drives_current_names_the_row_that_holds_it() =>
        Advice(Row("25", "Current limit", "%") with { UnitText = "% of drive rated current" }, Setting.CurrentLimit, Row("90", "Rated current of the drive", "A")).ShouldBe("part-of: 90");

    [Theory]
    [InlineData("rpm", "at-no-slip: yes")]
    [InlineData("Hz", "")]
    [InlineData("%", "part-of: 23 (to ask)")]
    public void A_frequency_may_count_in_something_else(string unit, string expected) =>
        Advice(Row("26", "Lowest speed", unit), Setting.MinimumFrequency).ShouldBe(expected);

    [Fact]
    public void A_current_may_be_stated_where_the_setting_is_a_part() =>
        Advice(Row("40", "DC braking current", "A"), Setting.DcBrakingCurrent).ShouldBe("absolute-of: 11");

    [Fact]
    public void A_rate_is_no_time() => Advice(Row("20", "Ramp-up", "Hz/s"), Setting.AccelerationTime).ShouldBe("to ask");

    [Theory]
    [InlineData("6048h:1", "speed-change-in: 6048h:2")]
    [InlineData("6049h:2", "change-of: 6049h:1")]
    public void Ramps_of_the_standard_are_of_two_objects(string number, string expected) =>
        Advice(Row(number, "Delta", "s"), number[3] == '8' ? Setting.AccelerationTime : Setting.DecelerationTime).ShouldBe(expected);

    [Fact]
    public void Nothing_is_proposed_for_a_row_that_means_nothing() => Advice(Row("20", "Ramp-up", "s"), null).ShouldBe("");

    private static string Advice(ListedParameter row, Setting? setting, params ListedParameter[] more)
    {
        ListedParameter[] rows = [Rated, Base, Highest, Poles, RatedFrequency, row, .. more];
        Setting?[] meant = [Setting.MotorRatedCurrent, Setting.BaseFrequency, Setting.MaximumFrequency, Setting.MotorPoleCount, Setting.MotorRatedFrequency, setting, .. more.Select(_ => (Setting?)null)];
        return new ConversionAdvisor(rows, [.. meant.Select(m => new Runup.Profiles.Suggestion(m, 0.9, ""))]).Of(5) switch
        {
            ConversionAdvice.Declared declared => $"{declared.Key}: {declared.Value}{(declared.IsSaid ? "" : " (to ask)")}",
            ConversionAdvice.Asked => "to ask",
            _ => "",
        };
    }

    private static ListedParameter Row(string number, string name, string unit) => new() { Number = number, Name = name, Unit = unit, UnitText = unit, Low = 0, High = 100 };
}
