using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>What an import guessed is kept apart from what a person confirmed: nothing is ever entered for it.</summary>
public sealed class GuessedMeaningTests
{
    private const string Rows = """
        groups:
          - group: All
            parameters:
              - {number: 5, name: Voltage, unit: V, scale: 1, low: 100, high: 500, default: 400, means: motor-rated-voltage}
              - {number: 6, name: Current, unit: A, scale: 0.1, low: 0.1, high: 50.0, default: 8.0, perhaps: motor-rated-current}
              - {number: 7, name: Winding, choices: {0: {label: star, is: star}, 1: {label: delta, is: delta}}, default: 0, perhaps: motor-connection}
              - {number: 8, name: Limit, unit: "%", scale: 1, low: 20, high: 200, default: 150, perhaps: current-limit, part-of: 6}
        """;

    // Ratings and sizes of the page of the format.
    private static readonly string Head = "drive-profile: 1\nfamily: wren\n" + Between(File.ReadAllText(Path.Combine(Drives.Root, "docs", "formats", "drive-profile.md")), "ratings:", "lists:").Replace(", defaults: {106: 8.0}", "", StringComparison.Ordinal).Replace(", defaults: {106: 14.2}", "", StringComparison.Ordinal);

    [Fact]
    public void A_guess_carries_no_setting_and_reaches_no_sheet()
    {
        var profile = Read(Rows, out _)!;
        var size = profile.Sizes[0];
        profile.Carrying(Setting.MotorRatedCurrent).ShouldBeEmpty();
        profile.Find("6")!.Meaning.ShouldBeNull();
        profile.Find("6")!.Perhaps.ShouldBe([Setting.MotorRatedCurrent]);
        var plan = SettingSet.Empty.With(Setting.MotorRatedVoltage, 380).With(Setting.MotorRatedCurrent, 7).With(Setting.CurrentLimit, 9).With(Setting.MotorConnection, "delta");
        var lines = Sheet.For(profile, size, plan, ParameterValues.Defaults(profile, size));
        lines.Single(l => l.Parameter is not null).Parameter!.Number.ShouldBe("5");
        lines.Where(l => l.Parameter is null).ShouldAllBe(l => l.Mapping == Mapping.NotOffered);
        lines.Count.ShouldBe(4);
    }

    [Fact]
    public void Calling_it_means_confirms_it_with_its_choices_and_conversion()
    {
        var profile = Read(Rows.Replace("perhaps:", "means:", StringComparison.Ordinal), out _)!;
        var size = profile.Sizes[0];
        var lines = Sheet.For(profile, size, SettingSet.Empty.With(Setting.MotorConnection, "delta").With(Setting.CurrentLimit, 12), ParameterValues.Defaults(profile, size));
        lines.Select(l => $"{l.Parameter!.Number} {l.Display}").ShouldBe(["7 delta", "8 150"]);
    }

    [Fact]
    public void The_lint_says_how_many_are_open_and_where_the_first_stands()
    {
        var profile = Read(Rows, out var cautions);
        profile.ShouldNotBeNull();
        var line = (Head + Rows).Split('\n').ToList().FindIndex(l => l.Contains("number: 6", StringComparison.Ordinal)) + 1;
        cautions.ShouldContain(c => c.Contains($"w:{line}:", StringComparison.Ordinal) && c.Contains("what 3 rows mean is guessed and not confirmed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("perhaps: motor-rated-current", "perhaps: motor-rated-curent", "`motor-rated-current` would do")]
    [InlineData("perhaps: motor-rated-current", "means: motor-rated-current, perhaps: motor-overload-current", "a guess beside what is confirmed")]
    public void A_guess_must_be_a_setting_and_stand_alone(string right, string wrong, string expected)
    {
        var problems = new Problems("w");
        ProfileReader.Read(Head + Rows.Replace(right, wrong, StringComparison.Ordinal), problems).ShouldBeNull();
        problems.InOrder().Single().ToString().ShouldContain(expected);
    }

    [Fact]
    public void A_size_may_not_widen_the_range_of_its_row()
    {
        var problems = new Problems("w");
        var head = Head.Replace("lowest-resistor: 60 ohm", "lowest-resistor: 60 ohm, ranges: {5: {low: 50, high: 500}}", StringComparison.Ordinal);
        ProfileReader.Read(head + Rows, problems).ShouldBeNull();
        problems.InOrder().Single().ToString().ShouldContain("parameter 5: the range 50 to 500 of size `small` goes beyond its own, 100 to 500; a size may narrow a range; widen the row's");
    }

    private static DriveProfile? Read(string rows, out IReadOnlyList<string> said)
    {
        var problems = new Problems("w");
        var cautions = new Problems("w");
        var profile = ProfileReader.Read(Head + rows, problems, cautions);
        problems.InOrder().ShouldBeEmpty();
        said = [.. cautions.InOrder().Select(c => c.ToString())];
        return profile;
    }

    private static string Between(string text, string from, string to)
    {
        var at = text.IndexOf("\n" + from, StringComparison.Ordinal) + 1;
        return text[at..text.IndexOf("\n" + to, at, StringComparison.Ordinal)] + "\n";
    }
}
