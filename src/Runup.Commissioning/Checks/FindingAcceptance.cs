using Runup.Commissioning.Records;

namespace Runup.Commissioning.Checks;

/// <summary>A person takes responsibility for a finding, by name and with a reason. What the checks say of the set stays as it is.</summary>
public static class FindingAcceptance
{
    // Less than this is no other finding: nobody reads a fifth digit.
    private const double Hair = 0.001;

    /// <summary>The acceptance of what a check says now; null where it has nothing to accept.</summary>
    /// <param name="result">What the check says.</param>
    /// <param name="by">Who accepts it.</param>
    /// <param name="because">Why.</param>
    /// <param name="jobSha256">Checksum of the job file that was checked, in hex.</param>
    public static RecordBody.FindingAccepted? Of(CheckResult result, string by, string because, string jobSha256)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        ArgumentException.ThrowIfNullOrWhiteSpace(because);
        return result switch
        {
            CheckResult.Violated v => new(v.Id, Word(v.Severity), v.Title, v.Explanation, v.Value, v.Limit, v.Unit, by, because, jobSha256),
            CheckResult.Undecided u => new(u.Id, Undecided, u.Missing, u.WouldChange, null, null, null, by, because, jobSha256),
            _ => null,
        };
    }

    /// <summary>Whether an acceptance is of what the check says now: of the same weight, and of the same figures where there are any.</summary>
    public static bool Covers(this RecordBody.FindingAccepted accepted, CheckResult result)
    {
        ArgumentNullException.ThrowIfNull(accepted);
        return Of(result, accepted.By, accepted.Because, accepted.JobSha256) is { } now
            && Same(now.Finding, accepted.Finding) && Same(now.Weight, accepted.Weight) && Same(now.Unit, accepted.Unit)
            && Same(now.Value, accepted.Value) && Same(now.Limit, accepted.Limit)
            && (now.Value is not null || Same(now.Title, accepted.Title) && Same(now.Explanation, accepted.Explanation));
    }

    private const string Undecided = "undecided";

    private static string Word(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Caution => "caution",
        Severity.Blocker => "blocker",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, null),
    };

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.Ordinal);

    private static bool Same(double? a, double? b) => (a, b) switch
    {
        (null, null) => true,
        ({ } x, { } y) => x.Equals(y) || Math.Abs(x - y) <= Hair * Math.Max(Math.Abs(x), Math.Abs(y)),
        _ => false,
    };
}
