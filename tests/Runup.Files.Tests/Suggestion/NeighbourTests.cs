using Runup.Files.Tests.Listings;

namespace Runup.Files.Tests.Suggestion;

/// <summary>A row that no name tells is offered by what stands around it; choices that no other parameter has tell it alone; a remark is a name, too.</summary>
public sealed class NeighbourTests
{
    private const string Nameplate = """
        No.;Name;Range;Unit;Default
        1;Motor power;0.1 - 90.0;kW;4.0
        2;Motor voltage;100 - 500;V;400
        3;Wibble;0.1 - 180.0;A;8.1
        4;Motor frequency;20 - 200;Hz;50
        """;

    [Fact]
    public void A_row_among_its_family_is_offered_by_its_figures() => Offered(Nameplate, 2).ShouldBe("motor-rated-current 0.3 it stands among the rows of the nameplate, and its figures fit");

    [Theory]
    [InlineData("Wibble;0.1 - 180.0;A", "Wibble warning;0.1 - 180.0;A")]
    [InlineData("Wibble;0.1 - 180.0;A", "Wibble;0.1 - 180.0;s")]
    [InlineData("Wibble;0.1 - 180.0;A", "Wibble 2;0.1 - 180.0;A")]
    public void What_its_name_or_unit_speaks_against_is_not(string from, string to) => Offered(Nameplate.Replace(from, to, StringComparison.Ordinal), 2).ShouldStartWith("- 0");

    [Theory]
    [InlineData("0 = star, 1 = delta", "motor-connection")]
    [InlineData("0 = none, 1 = even, 2 = odd", "parity")]
    [InlineData("0 = 9600, 1 = 19200, 2 = 38400", "baud-rate")]
    [InlineData("0 = off, 1 = on", "-")]
    public void Choices_that_no_other_parameter_has_tell_a_setting(string choices, string expected) =>
        Offered($"No.;Name;Range;Unit;Default\n1;Wibble;\"{choices}\";;0\n2;Wobble;0 - 5;;0\n3;Wubble;0 - 5;;0\n", 0).ShouldMatch($"^{expected} 0(?:\\.[0-7]\\d*)? ");

    [Fact]
    public void A_remark_names_what_the_label_does_not() =>
        Offered("No.;Name;Range;Unit;Default;Remarks\n1;VX;0.0 - 50.0;Hz;5.0;fixed speed 2\n2;VY 2;0.1 - 60.0;s;5.0;acceleration time\n", 0).ShouldStartWith("fixed-frequency-2 ");

    [Fact]
    public void A_remark_does_not_hide_that_the_label_says_something_else() =>
        Offered("No.;Name;Range;Unit;Default;Remarks\n1;Jog;0.1 - 60.0;s;5.0;acceleration time\n2;Wobble;0 - 5;;0;\n", 0).ShouldNotStartWith("acceleration-time");

    [Theory]
    [InlineData("Control mode", "0 = V/f, 1 = vector, no encoder, 2 = vector, encoder", "vf, sensorless-vector, encoder-vector")]
    [InlineData("Motor ventilation", "0 = own fan, 1 = foreign fan", "shaft-fan, separate-fan")]
    [InlineData("Mains phase loss", "0 = disturbance, 1 = warning, 2 = nothing", "trip, warn, off")]
    [InlineData("Flying start", "0 = locked, 1 = released", "off, on")]
    [InlineData("Sense of rotation", "0 = only right, 1 = right and left", "forward, both")]
    public void Each_choice_stands_for_what_its_words_say(string name, string choices, string expected)
    {
        var row = Reading.Rows($"No.;Name;Range;Unit;Default\n1;{name};\"{choices}\";;0\n2;Wobble;0 - 5;;0\n3;Wubble;0 - 5;;0\n")[0];
        var setting = Bars.Scorer.Suggest([row])[0].Setting.ShouldNotBeNull();
        string.Join(", ", Bars.Scorer.Counterparts(row, setting)).ShouldBe(expected);
    }

    private static string Offered(string table, int row)
    {
        var suggestion = Bars.Scorer.Suggest(Reading.Rows(table))[row];
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{suggestion.Setting?.Name ?? "-"} {suggestion.Certainty} {suggestion.Reason}");
    }
}
