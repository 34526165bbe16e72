using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Figures of starting, marks in letters, and the duty.</summary>
public sealed class MarkCases
{
    private static PlateSurvey Sound => Plates.Of("7.5 kW", 400, 14.4, 50, 1460, 4, 0.83, 90.4);

    [Theory]
    [InlineData(72, null, null, "Most likely it is 7.2 with a decimal point lost")]
    [InlineData(104, null, null, "7.22: 104 A over the rated 14.4 A")]
    [InlineData(0.72, null, null, "Most likely it is 7.2 with a decimal point too many")]
    [InlineData(2.3, 7.2, null, "usual only the other way round")]
    [InlineData(7.2, 230.0, null, "2.3, put down in per cent")]
    [InlineData(7.2, 2.3, 142.0, "2.89: 142 N·m over the rated 49.1 N·m")]
    [InlineData(7.2, 2.3, 1.1, "1.6 to 5 is what cage motors have")]
    [InlineData(7.2, 3.1, 2.3, "probably interchanged")]
    public void A_figure_of_starting_that_is_unusual(double current, double? starting, double? breakdown, string said)
    {
        var finding = PlateFindings.Of(Started(current, starting, breakdown), "plate.starting-figures").ShouldBeOfType<CheckResult.Violated>();
        finding.Severity.ShouldBe(Severity.Caution);
        finding.Explanation.ShouldContain(said);
    }

    [Fact]
    public void Usual_figures_of_starting_are_no_finding() => PlateFindings.Ids(Started(7.2, 2.3, 2.9)).ShouldBeEmpty();

    [Fact]
    public void A_code_letter_that_is_not_that_of_the_current()
    {
        var plate = Started(7.2, null, null) with { CodeLetter = new("F") };
        var finding = PlateFindings.Of(plate, "plate.starting-figures").ShouldBeOfType<CheckResult.Violated>();
        finding.Severity.ShouldBe(Severity.Note);
        finding.Explanation.ShouldContain("code letter J");
        PlateFindings.Ids(plate with { CodeLetter = new("J") }).ShouldBeEmpty();
    }

    [Fact]
    public void A_breakdown_torque_that_cannot_be_gives_way_and_is_said()
    {
        var report = Jobs.Pump().With((PlateSurvey plate) => plate with { BreakdownTorque = new(Ratio.FromValue(1.1)) }).Judge();
        report.Findings.Select(finding => finding.Id).ShouldBe(["plate.starting-figures"]);
        report.Assumptions.ShouldContain(assumption => assumption.What.StartsWith("breakdown torque of the plate gave way: 1.1 is printed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("S1", "IC411", "F", "IE3", "N")]
    [InlineData("S3-40%", "IC 416", "155 (F)", "IE3-90.4%", "NE")]
    [InlineData("CONT", "TEFC", "F/B", "NEMA Premium", "B")]
    [InlineData("60 MIN", "IC86W", "h", "ie 2", "d")]
    [InlineData("s10", "IC4A1A1", "Class H", "Energy Efficient", "HY")]
    public void Marks_as_plates_have_them_are_read(string duty, string cooling, string insulation, string efficiencyClass, string design) =>
        PlateFindings.Of(Marked(duty, cooling, insulation, efficiencyClass, design), "plate.marks").ShouldBeOfType<CheckResult.Satisfied>();

    [Theory]
    [InlineData("S11", "IC411", "F", "IE3", "N", "`S11` is no duty")]
    [InlineData("S1", "IC9999", "F", "IE3", "N", "`IC9999` is no way of cooling")]
    [InlineData("S1", "IP55", "F", "IE3", "N", "`IP55` is no way of cooling")]
    [InlineData("S1", "IC411", "X", "IE3", "N", "`X` is no thermal class")]
    [InlineData("S1", "IC411", "F", "IE30", "N", "`IE30` is no efficiency class")]
    [InlineData("S1", "IC411", "F", "IE3", "Q", "`Q` is no design letter")]
    public void A_mark_that_is_none_is_named(string duty, string cooling, string insulation, string efficiencyClass, string design, string said)
    {
        var finding = PlateFindings.Of(Marked(duty, cooling, insulation, efficiencyClass, design), "plate.marks").ShouldBeOfType<CheckResult.Violated>();
        finding.Severity.ShouldBe(Severity.Note);
        finding.Explanation.ShouldContain(said);
    }

    [Fact]
    public void An_output_for_a_part_of_the_time_on_a_machine_without_rest()
    {
        Duty("S1", []).ShouldBeOfType<CheckResult.Satisfied>();
        Duty("S2 30 min", []).ShouldBeOfType<CheckResult.Violated>().Title.ShouldBe("The plate's output is not a continuous one");
        Duty("S3 40 %", []).ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        Duty("S3 40 %", [], stopsPerHour: 30).ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("operation.cycle");
    }

    [Fact]
    public void A_cycle_against_the_duty()
    {
        Duty("S3 40 %", [(180, 1450), (300, 0)]).ShouldBeOfType<CheckResult.Satisfied>();
        Duty("S3 40 %", [(300, 1450), (300, 0)]).ShouldBeOfType<CheckResult.Violated>().Value!.Value.ShouldBe(50, 1e-9);
        Duty("S3 40 %", [(600, 1450), (1800, 0)]).ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("ten minutes");
        Duty("S3", [(180, 1450), (300, 0)]).ShouldBeOfType<CheckResult.Undecided>();
        Duty("S2 30 min", [(2400, 1450), (7200, 0)]).ShouldBeOfType<CheckResult.Violated>().Value!.Value.ShouldBe(40, 1e-9);
        Duty("S2 30 min", [(900, 1450), (7200, 0), (900, 1450)]).ShouldBeOfType<CheckResult.Undecided>();
    }

    private static CheckResult Duty(string mark, IReadOnlyList<(double Seconds, double Rpm)> cycle, double? stopsPerHour = null) =>
        Jobs.Pump()
            .With((PlateSurvey plate) => plate with { Duty = new(mark) })
            .With((OperationSurvey operation) => operation with
            {
                StopsPerHour = stopsPerHour is { } stops ? new(Ratio.FromValue(stops)) : null,
                Cycle = [.. cycle.Select(part => new CyclePart(new(Duration.FromSeconds(part.Seconds)), new(ShaftSpeed.FromRpm(part.Rpm)), new(Torque.FromNewtonMetres(part.Rpm > 0 ? 30 : 0))))],
            })
            .Judge().Results.Single(result => result.Id == "motor.duty");

    private static PlateSurvey Started(double current, double? starting, double? breakdown) => Sound with
    {
        LockedRotorCurrent = new(Ratio.FromValue(current)),
        LockedRotorTorque = starting is { } torque ? new(Ratio.FromValue(torque)) : null,
        BreakdownTorque = breakdown is { } largest ? new(Ratio.FromValue(largest)) : null,
    };

    private static PlateSurvey Marked(string duty, string cooling, string insulation, string efficiencyClass, string design) => Sound with
    {
        Duty = new(duty),
        Cooling = new(cooling),
        InsulationClass = new(insulation),
        EfficiencyClass = new(efficiencyClass),
        DesignLetter = new(design),
    };
}
