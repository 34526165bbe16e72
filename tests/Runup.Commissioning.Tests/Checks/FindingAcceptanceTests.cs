using Runup.Commissioning.Checks;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Tests.Checks;

public sealed class FindingAcceptanceTests
{
    [Fact]
    public void What_was_accepted_is_covered_as_long_as_it_stays_so() => Accepted(Peaks()).Covers(Peaks()).ShouldBeTrue();

    [Fact]
    public void Another_value_is_not_covered() => Accepted(Peaks()).Covers(Peaks(value: 1140)).ShouldBeFalse();

    [Fact]
    public void Another_limit_is_not_covered() => Accepted(Peaks()).Covers(Peaks(limit: 1300)).ShouldBeFalse();

    [Fact]
    public void A_fifth_digit_is_no_other_value() => Accepted(Peaks()).Covers(Peaks(value: 1130.4)).ShouldBeTrue();

    [Fact]
    public void A_caution_that_became_a_blocker_is_not_covered() => Accepted(Peaks()).Covers(Peaks(Severity.Blocker)).ShouldBeFalse();

    [Fact]
    public void Another_wording_of_the_same_figures_is_covered() => Accepted(Peaks()).Covers(Peaks(explanation: "said otherwise")).ShouldBeTrue();

    [Fact]
    public void Without_figures_another_sentence_is_another_finding() =>
        Accepted(Peaks(value: null, limit: null)).Covers(Peaks(value: null, limit: null, explanation: "said otherwise")).ShouldBeFalse();

    [Fact]
    public void An_undecided_check_that_was_accepted_is_not_covered_once_it_decides()
    {
        var undecided = new CheckResult.Undecided("cable.peak-voltage", "length (cable.length)", "whether the insulation bears the peaks");

        Accepted(undecided).Covers(undecided).ShouldBeTrue();
        Accepted(undecided).Covers(Peaks()).ShouldBeFalse();
    }

    [Fact]
    public void Of_a_satisfied_check_there_is_nothing_to_accept() =>
        FindingAcceptance.Of(new CheckResult.Satisfied("cable.peak-voltage", "5 m"), "N. Ostre", "why not", "00").ShouldBeNull();

    [Fact]
    public void Nothing_is_covered_that_no_check_finds() => Accepted(Peaks()).Covers(new CheckResult.Satisfied("cable.peak-voltage", "5 m")).ShouldBeFalse();

    private static RecordBody.FindingAccepted Accepted(CheckResult result) => FindingAcceptance.Of(result, "N. Ostre", "the maker's figure is 1600 V", "00").ShouldNotBeNull();

    private static CheckResult.Violated Peaks(Severity severity = Severity.Caution, double? value = 1130, double? limit = 1350, string explanation = "On 65 m of cable the edges are reflected.") =>
        new("cable.peak-voltage", severity, Stage.Coupled, new Basis.Physics("U = 2·U_dc"))
        {
            Title = "Voltage peaks",
            Explanation = explanation,
            Remedy = "Fit a filter.",
            Value = value,
            Limit = limit,
            Unit = value is null ? null : "V",
        };
}
