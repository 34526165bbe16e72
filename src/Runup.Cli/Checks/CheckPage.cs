using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;

namespace Runup.Cli.Checks;

/// <summary>What checking says, for people: the verdict first, then what is wrong, then what is not known.</summary>
internal static class CheckPage
{
    internal static void Write(Page page, LoadedJob job, CheckReport report)
    {
        page.Heading($"{job.Job.Tag}  {job.Job.Title}");
        Verdict(page, report);
        Findings(page, report);
        page.Line();
        page.Line($"{report.SatisfiedCount} checks satisfied, {report.Findings.Count} violated, {report.Undecided.Count} undecided.");
    }

    internal static void Findings(Page page, CheckReport report)
    {
        foreach (var finding in report.Findings)
        {
            page.Line();
            page.Line($"{finding.Severity.Word().ToUpperInvariant()}  {finding.Title}  [{finding.Id}]");
            page.Line($"  {finding.Explanation}");
            page.Line($"  What to do: {finding.Remedy}");
            page.Line($"  Held against: {Against(finding)}");
        }

        if (report.Undecided.Count > 0)
        {
            page.Heading("Not decided, for want of data");
            page.Table(
                [new("check"), new("missing", Whole: false), new("would decide", Whole: false)],
                report.Undecided.Select(u => u.Missing).Distinct(StringComparer.Ordinal).Select(missing => Row([.. report.Undecided.Where(u => u.Missing == missing)])));
        }

        if (report.Assumptions.Count > 0)
        {
            page.Heading("Assumed");
            page.Table(
                [new("what", Whole: false), new("value", Whole: false), new("source", Whole: false)],
                report.Assumptions.Select(a => (IReadOnlyList<string>)[a.What, a.Value, a.Source]));
        }
    }

    /// <summary>All that wait for the same datum in one row: twelve lines that say the same hide the thirteenth.</summary>
    private static IReadOnlyList<string> Row(IReadOnlyList<CheckResult.Undecided> same) => same.Count == 1
        ? [same[0].Id, same[0].Missing, same[0].WouldChange]
        : [$"{same.Count} checks", same[0].Missing, string.Join(", ", same.Select(u => u.Id))];

    private static void Verdict(Page page, CheckReport report)
    {
        var verdict = report.Verdict;
        page.Line($"Settings may be entered:   {Answer(verdict.EntryBlockedBy)}");
        page.Line($"Motor may be bumped:       {Answer(verdict.BumpBlockedBy)}");
        page.Line($"Machine may run coupled:   {Answer(verdict.CoupledBlockedBy)}");
    }

    private static string Answer(IReadOnlyList<string> blockers) =>
        blockers.Count == 0 ? "nothing found against it" : $"NO, because of {string.Join(", ", blockers)}";

    private static string Against(CheckResult.Violated finding)
    {
        var unit = finding.Unit is null or "1" ? "" : $" {finding.Unit}";
        var numbers = (finding.Value, finding.Limit) switch
        {
            ({ } value, { } limit) => $"{value:G4}{unit} against {limit:G4}{unit}; ",
            ({ } value, null) => $"{value:G4}{unit}; ",
            _ => "",
        };
        return numbers + finding.Basis.Text;
    }
}
