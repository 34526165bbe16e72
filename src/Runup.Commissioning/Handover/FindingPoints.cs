using System.Globalization;
using Runup.Commissioning.Checks;

namespace Runup.Commissioning.Handover;

/// <summary>What is open because of findings, and who stands for it.</summary>
internal static class FindingPoints
{
    /// <summary>Blockers, then cautions.</summary>
    public static IEnumerable<OpenPoint> Of(CheckReport checks, RecordStory story) =>
        from finding in checks.Findings
        where finding.Severity is Severity.Blocker or Severity.Caution
        select new OpenPoint(finding.Title.TrimEnd('.'), $"{Stage(finding)}{OpenPoints.Sentence(finding.Remedy)} {Who(FindingStanding.Of(finding, story))} ({finding.Id})");

    /// <summary>Checks that say nothing.</summary>
    public static IEnumerable<OpenPoint> OfUndecided(CheckReport checks, RecordStory story)
    {
        if (checks.Undecided.Count == 0)
        {
            yield break;
        }

        var accepted = checks.Undecided.Select(u => (u.Id, Standing: FindingStanding.Of(u, story))).Where(u => u.Standing is not FindingStanding.Open).ToList();
        yield return new("Undecided", string.Create(CultureInfo.InvariantCulture,
            $"For want of data {checks.Undecided.Count} of {checks.Results.Count} checks say nothing: {string.Join(", ", checks.Undecided.Select(u => u.Id))}.{string.Concat(accepted.Select(a => $" {a.Id}: {Who(a.Standing)}"))}"));
    }

    private static string Who(FindingStanding standing) => standing switch
    {
        FindingStanding.Open => "Nobody has accepted it.",
        FindingStanding.Accepted { By.Body: var by } => $"Accepted by {by.By}, because: {OpenPoints.Sentence(by.Because)}",
        FindingStanding.Outdated { Then.Body: var then } => $"It has changed since {then.By} accepted it; nobody has accepted it as it is now.",
        _ => throw new InvalidOperationException("The ways in which a finding stands are all named."),
    };

    private static string Stage(CheckResult.Violated finding) => finding.Severity == Severity.Blocker ? $"Holds up {Named(finding.Blocks)} and all after it. " : string.Empty;

    private static string Named(Stage stage) => stage switch
    {
        Checks.Stage.Entry => "entry",
        Checks.Stage.Bump => "the first turn",
        Checks.Stage.Coupled => "running coupled",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, null),
    };
}
