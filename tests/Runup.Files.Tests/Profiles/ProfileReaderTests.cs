using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Files.Tests.Profiles;

public sealed class ProfileReaderTests
{
    private const string Head = """
        drive-profile: 1
        family: wren
        ratings:
          a:
            supply: {lowest: 380 V, highest: 480 V, phases: 3}
            overload-cycles: {normal: {overload: 110 %, for: 60 s, every: 600 s}}
            peak: {overload: 150 %, of: normal, for: 2 s}
            overcurrent-trip: {overload: 200 %, of: normal}
            overvoltage-trip: 820 V
            overvoltage-control: 780 V
            chopper: 760 V
            undervoltage-trip: 380 V
            switching-derating: {4 kHz: 100 %}
            ambient-derating: {full-up-to: 40 °C, loss: 1 %, per: 1 K, highest: 50 °C}
            altitude-derating: {full-up-to: 1000 m, loss: 1 %, per: 100 m, highest: 4000 m}
        sizes:
          - {size: one, rating: a, power: 4 kW, currents: {normal: 9 A}, bus: 300 µF}
        groups:
          - group: All
            parameters:

        """;

    private static IReadOnlyList<string> Problems(string rows, string tail = "") => ProblemsOf(Head + string.Join('\n', rows.Split('\n').Select(r => "      " + r)) + "\n" + tail);

    private static IReadOnlyList<string> ProblemsOf(string text)
    {
        var problems = new Problems("w.drive.yaml");
        var profile = ProfileReader.Read(text, problems);
        (profile is null).ShouldBe(problems.Any);
        return [.. problems.InOrder().Select(p => p.ToString())];
    }

    [Fact]
    public void A_small_profile_is_read() =>
        Problems("- {number: 5, name: Voltage, unit: V, scale: 1, low: 100, high: 500, default: 400, means: motor-rated-voltage}").ShouldBeEmpty();

    [Fact]
    public void A_newer_format_is_refused_and_nothing_else_is_said() =>
        ProblemsOf("drive-profile: 2\nfamily: wren\nwings: two\n").ShouldBe(["w.drive.yaml:1:16 drive-profile: format version 2, which is newer than this program; a newer Runup reads it; this one reads up to version 1"]);

    [Fact]
    public void All_that_is_wrong_is_said_at_once_with_the_nearest_that_would_do() =>
        Problems("""
            - {number: 5, name: Voltage, unit: V, scale: 1, low: 100, high: 500, default: 400, means: motor-rated-voltag}
            - {number: 6, name: Curve, choices: {0: {label: straight, is: linea}, 1: {label: bent}}, default: 0, means: vf-characteristic}
            - {number: 7, name: Time, unit: s, scale: 0.1, low: 0.05, high: 600, defualt: 5, means: s-curve}
            """).Select(p => p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..]).ShouldBe([
                "groups[1].parameters[1].means: there is no setting `motor-rated-voltag`; `motor-rated-voltage` would do",
                "groups[1].parameters[2].choices.0.is: `vf-characteristic` has no value `linea`; `linear` would do",
                "groups[1].parameters[2].choices.1: it is not said what `bent` stands for; `is:` with one of `linear`, `quadratic`, `points` or `no-counterpart` would do",
                "groups[1].parameters[3].default: it is missing; the factory value, or `by-size`, would do",
                "groups[1].parameters[3].low: `0.05` is finer than the scale; a multiple of 0.1 would do",
                "groups[1].parameters[3].defualt: there is no such key here; `default` would do",
            ]);

    [Fact]
    public void Two_rows_of_one_number_are_both_named() =>
        Problems("""
            - {number: 5, name: A, scale: 1, low: 0, high: 1, default: 0}
            - {number: 5, name: B, scale: 1, low: 0, high: 1, default: 0, register: 9}
            """).ShouldBe(["w.drive.yaml:22:18 groups[1].parameters[2].number: `5` stands twice, first in line 21; each number once"]);

    [Fact]
    public void Registers_that_overlap_are_found_at_the_row() =>
        Problems("""
            - {number: 5, name: A, width: 32, scale: 1, low: 0, high: 1, default: 0}
            - {number: 6, name: B, scale: 1, low: 0, high: 1, default: 0}
            """).ShouldBe(["w.drive.yaml:22:9 parameter 6.register: register 6 belongs to parameter `5`, too; check `register` and `width` of both"]);

    // The arrow stands before the character that the message must point at.
    [Theory]
    [InlineData("- {number: 5, name: A, scale: 0.1, low: 0, high: 1, default: →1.1}", "parameter 5.default: the default 1.1 is not one of its values (size `one`); a default within the range, on a step, or one of the choices")]
    [InlineData("- {number: 5, name: A, scale: 0.01, low: 0, high: →700, default: 1}", "parameter 5.high: 700.00 is 70000 counts, which 16 bits do not hold; check `scale`, `width` and `signed`")]
    [InlineData("- {number: 5, name: A, scale: 1, low: →-5, high: 7, default: 1}", "parameter 5.low: -5 is -5 counts, which 16 bits do not hold; check `scale`, `width` and `signed`")]
    [InlineData("- {number: 5, name: A, scale: 1, low: →5, high: 3, default: 4}", "parameter 5.low: the lowest value 5 lies above the highest 3; exchange `low` and `high`")]
    [InlineData("- {number: 5, name: A, unit: →V, scale: 1, low: 5, high: 30, default: 5, means: motor-rated-current}", "parameter 5.unit: `V` is a unit of voltage, but `motor-rated-current` needs current here; check `unit` and `means`, or declare the conversion")]
    [InlineData("- {number: 5, name: A, unit: →gills, scale: 1, low: 5, high: 30, default: 5, means: motor-rated-current}", "parameter 5.unit: the unit `gills` is not known; a unit of the trade, such as A, mA, Hz, rpm, %, kW or hp")]
    [InlineData("- {number: 5, name: A, unit: \"%\", scale: 1, low: 5, high: 30, default: 5, means: current-limit, part-of: →6}", "parameter 5.part-of: there is no parameter `6`; give the number of a parameter of this profile")]
    [InlineData("- {number: 5, name: A, unit: s, scale: 1, low: 5, high: 30, default: 5, means: acceleration-time, counted-over: →50 Hz}", "parameter 5.counted-over: no parameter means `maximum-frequency`, to which our ramps count; add the row of the highest frequency")]
    [InlineData("- {number: 5, name: A, scale: 1, low: 5, high: 30, default: 5, means: →stopping-method}", "groups[1].parameters[1].means: `stopping-method` is chosen, not counted; `choices` would do, with `is` for each")]
    [InlineData("- →{number: 5h, name: A, scale: 1, low: 5, high: 30, default: 5}", "groups[1].parameters[1].register: it is missing; the PDU address from 0 would do; only where the number is the register may it be left out")]
    [InlineData("- {number: 5, name: A, choices: →{0: a, 1: A}, default: 0}", "parameter 5.choices: two choices show \"a\"; choices that a person can tell apart on the display")]
    [InlineData("- {number: 5, name: A, choices: →flags, default: 0}", "groups[1].parameters[1].choices: there is no list `flags`; add it under `lists`")]
    public void One_row_with_one_fault(string row, string expected)
    {
        var column = row.IndexOf('→', StringComparison.Ordinal) + 7;
        Problems(row.Replace("→", "", StringComparison.Ordinal)).ShouldBe([$"w.drive.yaml:21:{column} {expected}"]);
    }

    [Fact]
    public void Two_parameters_for_one_meaning_name_the_first() =>
        Problems("""
            - {number: 5, name: A, unit: A, scale: 1, low: 1, high: 9, default: 5, means: motor-rated-current}
            - {number: 6, name: Second A, unit: A, scale: 1, low: 1, high: 9, default: 5, means: motor-rated-current}
            """).ShouldBe(["w.drive.yaml:22:92 parameter 6.means: `motor-rated-current` is what parameter `5` means; one parameter for a setting; is this a second motor's, a warning or a reading?"]);

    [Fact]
    public void A_circle_in_the_order_of_entry_is_named_where_it_is_and_not_where_it_is_waited_for() =>
        Problems("""
            - {number: 5, name: A, scale: 1, low: 1, high: 9, default: 5, after: [6]}
            - {number: 6, name: B, scale: 1, low: 1, high: 9, default: 5, after: [5]}
            - {number: 7, name: C, scale: 1, low: 1, high: 9, default: 5, after: [5]}
            """).Select(p => p.Split(' ')[2].TrimEnd(':')).ShouldBe(["5", "6"]);

    [Fact]
    public void A_wrong_row_is_not_complained_of_a_second_time_where_it_is_named() =>
        Problems("- {number: 5, name: A, scale: 1, low: 0, high: 1, default: zero, access: action}", "store: {parameter: 5, write: 1}\n").Count.ShouldBe(1);

    [Fact]
    public void A_store_signature_may_be_hexadecimal()
    {
        var problems = new Problems("w");
        var profile = ProfileReader.Read(Head + "      - {number: \"1010h:1\", register: 8, name: Store, width: 32, scale: 1, low: 0, high: 4294967295, default: 0, access: action}\nstore: {parameter: \"1010h:1\", write: 65766173h}\n", problems);
        problems.InOrder().ShouldBeEmpty();
        profile!.Store.ShouldBe(new StoreProcedure("1010h:1", 0x65766173));
    }

    [Fact]
    public void What_cannot_be_done_without_an_essential_row_is_a_caution_and_no_problem()
    {
        var cautions = new Problems("w");
        ProfileReader.Read(Head + "      - {number: 5, name: Voltage, unit: V, scale: 1, low: 100, high: 500, default: 400, means: motor-rated-voltage}\n", new Problems("w"), cautions).ShouldNotBeNull();
        cautions.InOrder().ShouldContain(c => c.Found.Contains("`bus-timeout`: the motor can't be run over the bus"));
    }

    [Theory]
    [InlineData("overload: 150 %, of: normal", "overload: -1 %, of: normal", "ratings.a.peak.overload: not more than zero; per cent of a continuous current would do")]
    [InlineData("bus: 300 µF", "bus: 0 µF", "sizes[1].bus: not more than zero; the capacitance of the DC bus would do")]
    [InlineData("of: normal, for", "of: nomal, for", "ratings.a.peak.of: there is no overload cycle `nomal`; one of `normal` would do")]
    [InlineData("{4 kHz: 100 %}", "{4 kHz: 100 %, 2 kHz: 100 %}", "ratings.a.switching-derating.2 kHz: a frequency that is not above the one before; from the lowest to the highest, each once")]
    [InlineData("{4 kHz: 100 %}", "{4 kHz: 120 %}", "ratings.a.switching-derating.4 kHz: `120 %`; more than 0 % and at most 100 % of the continuous current would do")]
    [InlineData("chopper: 760 V", "chopper: 860 V", "ratings.a.overvoltage-trip: 820 V, which is not above `chopper`, 860 V; the DC bus trips low below, and high above, where it is controlled")]
    [InlineData("rating: a", "rating: b", "sizes[1].rating: there is no rating `b`; add it under `ratings`")]
    [InlineData("phases: 3", "phases: 2", "ratings.a.supply.phases: `2`; `1` or `3` would do")]
    public void A_rating_that_no_drive_can_have_is_refused(string right, string wrong, string expected)
    {
        var text = Head.Replace(right, wrong, StringComparison.Ordinal) + "      - {number: 5, name: Voltage, unit: V, scale: 1, low: 100, high: 500, default: 400}\n";
        ProblemsOf(text).Select(p => p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..]).ShouldBe([expected]);
    }

    [Theory]
    [InlineData("70000: overcurrent", "trips.70000: the register of 1010 does not hold the code `70000`; the code as the drive gives it would do")]
    [InlineData("0: overcurrent", "trips.0: the code 0, which is no trip; the code as the drive gives it would do")]
    [InlineData("1: overcurrent, 01h: overvoltage", "trips.01h: the code `01h` stands twice, the other time written otherwise; keep one of the two")]
    public void A_trip_code_that_the_drive_cannot_give_is_named(string codes, string expected) =>
        Problems(
            "- {number: 1010, name: Last trip, scale: 1, low: 0, high: 18, default: 0, access: read-only}",
            $"readings: {{last-trip: 1010}}\ntrips: {{{codes}}}\n").Select(p => p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..]).ShouldBe([expected]);
}
