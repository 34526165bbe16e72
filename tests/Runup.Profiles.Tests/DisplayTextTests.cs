namespace Runup.Profiles.Tests;

public sealed class DisplayTextTests
{
    private static readonly ParameterValues Held = Makes.Defaults(Makes.Plain);

    private static DisplayReading Read(string number, string text) => DisplayText.Read(Makes.Plain.Find(number)!, text, Held);

    [Theory]
    [InlineData("106", 144, "14.4")]
    [InlineData("106", 5, "0.5")]
    [InlineData("170", 60000, "600.00")]
    [InlineData("190", 150, "150")]
    [InlineData("157", 0, "as motor")]
    [InlineData("220", 5, "bus both")]
    [InlineData("220", 77, "<77>")]
    public void A_value_is_shown_with_the_digits_of_its_scale_or_as_its_choice(string number, long raw, string shown) =>
        DisplayText.Of(Makes.Plain.Find(number)!, raw, Held).ShouldBe(shown);

    [Theory]
    [InlineData("106", "14.4", 144)]
    [InlineData("106", " 14,4 ", 144)]
    [InlineData("106", "14", 140)]
    [InlineData("157", "as motor", 0)]
    [InlineData("157", "0", 0)]
    [InlineData("220", "BUS BOTH", 5)]
    [InlineData("220", "5", 5)]
    [InlineData("109", "4", 4)]
    public void What_a_person_reads_off_the_display_is_understood(string number, string text, long raw) =>
        Read(number, text).ShouldBe(new DisplayReading.Value(raw));

    [Theory]
    [InlineData("106", "14.45", "\"14.45\" is finer than the display, which counts in 0.1.")]
    [InlineData("106", "fourteen", "\"fourteen\" is not a number as the display shows it.")]
    [InlineData("106", "", "\"\" is not a number as the display shows it.")]
    [InlineData("109", "5", "\"5\" is none of its choices: 2, 4, 6.")]
    public void What_the_display_cannot_show_is_not_understood(string number, string text, string why) =>
        Read(number, text).ShouldBe(new DisplayReading.Unreadable(why));

    [Fact]
    public void The_unit_may_be_chosen_by_another_parameter()
    {
        DisplayText.Unit(Makes.Plain.Find("104")!, Held).ShouldBe("kW");
        DisplayText.Unit(Makes.Plain.Find("104")!, Held.With("131", 1)).ShouldBe("hp");
        DisplayText.Unit(Makes.Plain.Find("220")!, Held).ShouldBeNull();
        DisplayText.Of(Makes.Indexed.Find("2101h")!, 10000, Makes.Defaults(Makes.Indexed).With("2110h", 1)).ShouldBe("10.000");
    }

    [Fact]
    public void A_number_beyond_all_registers_is_not_understood() =>
        Read("106", new string('9', 28)).ShouldBeOfType<DisplayReading.Unreadable>();
}
