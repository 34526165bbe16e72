using FsCheck.Xunit;
using Runup.Settings;

namespace Runup.Profiles.Tests.Comparing;

public sealed class StateComparisonTests
{
    private static readonly ParameterValues Factory = Makes.Defaults(Makes.Plain);

    [Property(MaxTest = 100)]
    public void A_state_does_not_differ_from_itself(bool plain, int seed) =>
        StateComparison.Of(Any(plain, seed), Any(plain, seed)).Differences.ShouldBeEmpty();

    [Property(MaxTest = 200)]
    public void Every_parameter_whose_display_differs_is_named_and_no_other_but_by_its_meaning(bool plain, int one, int other)
    {
        var (a, b) = (Any(plain, one), Any(plain, other));
        var comparison = StateComparison.Of(a, b);
        var named = comparison.Differences.SelectMany(d => d.Left.Parameters).Select(p => p.Number).ToHashSet(StringComparer.Ordinal);
        foreach (var parameter in a.Profile.Parameters.Where(p => p.IsKept && a.Values[p.Number] != b.Values[p.Number]))
        {
            named.ShouldContain(parameter.Number);
        }

        foreach (var difference in comparison.Differences.Where(d => d.Left.Parameters.All(p => a.Values[p.Number] == b.Values[p.Number])))
        {
            // Equal digits that mean something else: what they are counted with differs.
            difference.Setting.ShouldNotBeNull();
            difference.Left.Value.ShouldNotBe(difference.Right.Value);
        }
    }

    [Property(MaxTest = 200)]
    public void Sides_may_be_exchanged(bool plain, bool otherPlain, int one, int other)
    {
        var there = StateComparison.Of(Any(plain, one), Any(otherPlain, other)).Differences.Select(d => (d.Setting, d.Left.Text, d.Right.Text));
        var back = StateComparison.Of(Any(otherPlain, other), Any(plain, one)).Differences.Select(d => (d.Setting, d.Right.Text, d.Left.Text));
        there.ShouldBe(back);
    }

    [Fact]
    public void What_differs_is_shown_as_each_display_shows_it_in_the_order_of_the_menu() =>
        Of(Factory, Factory.With("220", 5).With("104", 1010)).Differences.Select(Words).ShouldBe(
            ["motor-rated-power 104: 7.50 kW | 10.10 kW", "permitted-direction 220: panel forward | bus both", "run-command-source 220: panel forward | bus both"]);

    [Fact]
    public void The_same_output_in_another_unit_says_the_same()
    {
        // 7.5 kW are 10.0577 hp: the nearest that the display shows is told apart, for it is another output.
        var inHp = Of(Factory.With("104", 746), Factory.With("104", 1000).With("131", 1));
        inHp.Differences.Single(d => d.Left.Parameters[0].Number == "104").Left.Text.ShouldBe("7.46 kW");
        inHp.Differences.Select(d => d.Left.Parameters[0].Number).ShouldBe(["104", "131"]);
    }

    [Fact]
    public void Equal_digits_that_are_counted_to_another_frequency_differ_by_what_they_mean()
    {
        var ramp = Of(Factory, Factory.With("151", 1000)).Differences.Single(d => d.Setting == Setting.AccelerationTime);
        (ramp.Left.Text, ramp.Right.Text).ShouldBe(("5 s", "10 s"));
    }

    [Fact]
    public void A_value_without_counterpart_is_told_by_its_number()
    {
        var voltage = Of(Factory, Factory.With("157", 400)).Differences.ShouldHaveSingleItem();
        (voltage.Left.Text, voltage.Right.Text, voltage.Left.Value, voltage.SaysTheSame).ShouldBe(("as motor", "400 V", null, false));
    }

    [Fact]
    public void What_only_one_side_knows_is_no_difference_and_is_counted()
    {
        var comparison = Of(Factory.With("151", 600), ParameterValues.Empty.With("106", 150));
        comparison.Differences.Select(d => d.Left.Parameters[0].Number).ShouldBe(["106"]);
        comparison.Compared.ShouldBe(1);
        comparison.OnlyLeft.Select(p => p.Number).ShouldContain("151");
        comparison.OnlyRight.ShouldBeEmpty();
        comparison.Right.Values["151"].ShouldBe(600, "what it does not say is as on the other side");
    }

    [Fact]
    public void Readings_commands_and_actions_are_no_part_of_a_state() =>
        Of(Factory, Factory.With("1001", 2500).With("1008", -5).With("900", 1)).Differences.ShouldBeEmpty();

    [Fact]
    public void Of_two_makes_only_meaning_is_compared_and_what_one_cannot_say_finer_is_no_difference()
    {
        var factory = Factory.With("109", 4);
        var plain = State(Makes.Plain, factory);
        var indexed = State(Makes.Indexed, Makes.Defaults(Makes.Indexed));
        StateComparison.Of(plain, indexed).Differences.ShouldBeEmpty("both makes come with the same motor");
        StateComparison.Of(plain with { Values = factory.With("151", 501) }, indexed).Differences.Select(d => d.Setting).ShouldContain(Setting.MaximumFrequency);

        // 14.4 A on the one, 14.43 A on the other, which alone can tell them apart.
        StateComparison.Of(plain, indexed with { Values = indexed.Values.With("6075h", 14430) }).Differences.Select(d => d.Setting).ShouldNotContain(Setting.MotorRatedCurrent);
        StateComparison.Of(plain, indexed with { Values = indexed.Values.With("6075h", 14480) }).Differences.Select(d => d.Setting).ShouldContain(Setting.MotorRatedCurrent);
    }

    private static string Words(StateDifference d) => $"{d.Setting?.Name} {string.Join(",", d.Left.Parameters.Select(p => p.Number))}: {d.Left.Text} | {d.Right.Text}";

    private static StateComparison Of(ParameterValues left, ParameterValues right) => StateComparison.Of(State(Makes.Plain, left), State(Makes.Plain, right));

    private static HeldState State(DriveProfile profile, ParameterValues values) => new(profile, Makes.Size, values);

    private static HeldState Any(bool plain, int seed)
    {
        var profile = plain ? Makes.Plain : Makes.Indexed;
        return State(profile, AnyValues.Of(profile, seed));
    }
}
