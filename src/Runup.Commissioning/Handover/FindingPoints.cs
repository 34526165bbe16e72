using System.Globalization;
using Runup.Commissioning.Checks;

namespace Runup.Commissioning.Handover;

/// <summary>What is open because of findings, and who stands for it.</summary>
internal static class FindingPoints
{
    // A row of a table holds no more; all of them stand in the words.
    private const int FewToName = 3;

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
        var missing = checks.Undecided.Select(u => u.Missing).Distinct(StringComparer.Ordinal);
        yield return new($"Undecided: {Named(checks.Undecided)}", string.Create(CultureInfo.InvariantCulture,
            $"For want of data {checks.Undecided.Count} of {checks.Results.Count} checks {(checks.Undecided.Count == 1 ? "says" : "say")} nothing: {string.Join(", ", checks.Undecided.Select(u => u.Id))}. Find out: {string.Join("; ", missing)}.{string.Concat(accepted.Select(a => $" {a.Id}: {Who(a.Standing)}"))}"));
    }

    private static string Named(IReadOnlyList<CheckResult.Undecided> undecided)
    {
        var names = string.Join(", ", undecided.Take(FewToName).Select(u => FindingIds.Words(u.Id)));
        return undecided.Count <= FewToName ? names : string.Create(CultureInfo.InvariantCulture, $"{names} and {undecided.Count - FewToName} more");
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
