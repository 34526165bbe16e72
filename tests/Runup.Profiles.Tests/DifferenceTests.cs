namespace Runup.Profiles.Tests;

public sealed class DifferenceTests
{
    private static readonly ParameterValues Factory = Makes.Defaults(Makes.Plain);

    [Fact]
    public void Two_equal_states_do_not_differ() => Difference.Between(Makes.Plain, Factory, Makes.Defaults(Makes.Plain)).ShouldBeEmpty();

    [Fact]
    public void What_differs_is_shown_as_each_display_shows_it_in_the_order_of_the_menu()
    {
        var other = Factory.With("220", 5).With("104", 1006).With("131", 1);
        Difference.Between(Makes.Plain, Factory, other).Select(d => $"{d.Parameter.Number}: {d.Left!.Display} {d.Left.Unit} | {d.Right!.Display} {d.Right.Unit}").ShouldBe(
            ["104: 7.50 kW | 10.06 hp", "131: kW  | hp ", "220: panel forward  | bus both "]);
    }

    [Fact]
    public void A_value_that_one_side_does_not_know_differs()
    {
        var difference = Difference.Between(Makes.Plain, Factory, Factory.Without("106")).ShouldHaveSingleItem();
        difference.Left!.Display.ShouldBe("14.4");
        difference.Right.ShouldBeNull();
    }

    [Fact]
    public void Readings_commands_and_actions_are_no_part_of_a_state() =>
        Difference.Between(Makes.Plain, Factory, Factory.With("1001", 2500).With("1008", -5).With("900", 1)).ShouldBeEmpty();
}
