using System.Globalization;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Store;

namespace Runup.Cli.Checks;

/// <summary><c>--accept ID --by NAME --because TEXT</c>: a person takes responsibility for findings as they are.</summary>
internal static class AcceptedFindings
{
    private const int LongestName = 200;
    private const int LongestReason = 2000;

    /// <summary>Puts the acceptances into the site's record.</summary>
    /// <exception cref="Complaint">A name or reason is missing, or an id has nothing to accept.</exception>
    internal static async Task<IReadOnlyList<RecordBody.FindingAccepted>> Keep(
        LoadedJob job, CheckReport report, IReadOnlyList<string> ids, string? by, string? because, CancellationToken cancellation)
    {
        var name = Words(by, "--by", LongestName, "the name of the person who takes responsibility, such as --by \"N. Ostre\", would do");
        var reason = Words(because, "--because", LongestReason, "the reason, in a sentence, would do");
        var accepted = ids.Distinct(StringComparer.Ordinal).Select(id => Accepted(job, report, id, name, reason)).ToList();
        using var records = SiteRecords.Open(job.Folder);
        foreach (var acceptance in accepted)
        {
            await records.Append(job.Job.Tag, acceptance, cancellation);
        }

        return accepted;
    }

    /// <summary>What the site's record tells of a set; nothing where there is no record yet, and none is made.</summary>
    internal static async Task<RecordStory> Known(LoadedJob job, CancellationToken cancellation)
    {
        switch (SqliteRecords.Open(job.Folder, TimeProvider.System, StoreUse.ReadOnly))
        {
            case StoreOpening.Opened opened:
                using (opened.Records)
                {
                    return RecordStory.Of(await opened.Records.Of(job.Job.Tag, cancellation));
                }

            case StoreOpening.Absent or StoreOpening.UnfitFolder:
                return new();
            case var not:
                // The checks ask nothing of the record: they are told all the same.
                await Console.Error.WriteLineAsync($"runup: what was accepted earlier is not shown: {not.What}");
                return new();
        }
    }

    /// <summary>Says what was accepted before now, and whether it is still what the checks find.</summary>
    internal static void Earlier(Page page, CheckReport report, RecordStory story, IReadOnlyList<RecordBody.FindingAccepted> now)
    {
        var earlier = story.Accepted.Where(a => now.All(n => !string.Equals(n.Finding, a.Body.Finding, StringComparison.Ordinal))).ToList();
        if (earlier.Count == 0)
        {
            return;
        }

        page.Heading("Accepted earlier");
        page.Table(
            [new("finding"), new("by", Whole: false), new("on"), new("because", Whole: false), new("now", Whole: false)],
            earlier.Select(a => (IReadOnlyList<string>)
            [
                a.Body.Finding, a.Body.By, a.Time.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture), a.Body.Because, Now(report, a.Body),
            ]));
    }

    private static string Now(CheckReport report, RecordBody.FindingAccepted accepted) =>
        report.Results.FirstOrDefault(r => r is not CheckResult.Satisfied && string.Equals(r.Id, accepted.Finding, StringComparison.Ordinal)) is not { } result ? "no longer found"
        : accepted.Covers(result) ? "as it was accepted"
        : "CHANGED SINCE: nobody has accepted it as it is now";

    /// <summary>Says what was accepted, and that nothing is unlocked by it.</summary>
    internal static void Write(Page page, IReadOnlyList<RecordBody.FindingAccepted> accepted)
    {
        page.Line();
        foreach (var acceptance in accepted)
        {
            page.Line($"{acceptance.Finding} ({acceptance.Weight}) is accepted by {acceptance.By} as it is now. The record and the handover say so; the verdict above stays as it is.");
        }
    }

    private static RecordBody.FindingAccepted Accepted(LoadedJob job, CheckReport report, string id, string by, string because)
    {
        var open = report.Results.Where(r => r is not CheckResult.Satisfied).ToList();
        return open.Find(r => string.Equals(r.Id, id, StringComparison.Ordinal)) is { } result && FindingAcceptance.Of(result, by, because, JobTaken.Of(job).Sha256) is { } accepted
            ? accepted
            : throw new Complaint(ExitStatus.BadInput, $"runup: --accept: {(FindingIds.All.Contains(id, StringComparer.Ordinal) ? $"there is nothing to accept of {id}" : $"'{id}' is no finding")}; {(open.Count == 0 ? "this job has no open finding" : $"one of these would do: {string.Join(", ", open.Select(r => r.Id))}")}");
    }

    private static string Words(string? text, string option, int longest, string wouldDo) => text?.Trim() switch
    {
        null or "" => throw new Complaint(ExitStatus.BadInput, $"runup: {option}: it is missing; {wouldDo}"),
        { Length: var length } when length > longest => throw new Complaint(ExitStatus.BadInput, $"runup: {option}: {length} characters; at most {longest} would do"),
        var words => words,
    };
}
