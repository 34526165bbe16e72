using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Cli.Entry;

/// <summary>What an entry came to, for people.</summary>
internal static class EntryPage
{
    internal static void Write(Page page, string tag, DriveProfile profile, EntryReport report, bool restoring = false, bool byHand = false)
    {
        page.Heading(restoring ? $"{tag}: {profile.Title}, put back to as found" : $"{tag}: entry into {profile.Title}");
        if (report.Resumed is { } cut)
        {
            page.Line($"An earlier entry had been cut off: {cut.Verified.Count} {(cut.Verified.Count == 1 ? "parameter was" : "parameters were")} proved by then{(cut.UnderWay is { } number ? $", {Named(profile, number)} was under way" : "")}.");
        }

        page.Line(byHand
            ? $"{report.Written.Count} set by hand{Before(report)}, {report.VerifiedByEye.Count} verified by eye on the display{ReadBack(report)}, {report.Skipped.Count} showed their value already, {report.Failed.Count} not proved."
            : $"{report.Written.Count} written{Refused(report)}{Before(report)}, {report.Verified.Count} verified by read-back, {report.Skipped.Count} held their value already, {report.Failed.Count} not proved.");
        page.Line(report.PowerCycle switch
        {
            PowerCycleProof.Proved or PowerCycleProof.SeenByEye when report.Failed.Count > 0 => $"Looked at again after the drive had been off and on: {report.Failed.Count} of the sheet {(report.Failed.Count == 1 ? "is" : "are")} NOT PROVED to stand there.",
            PowerCycleProof.Proved => "All were read again after the drive had been off and on: it keeps them.",
            PowerCycleProof.SeenByEye => "After the drive had been off and on, what was set was seen on its display again: by eye, not read back.",
            PowerCycleProof.NotNeeded => "Nothing had to be written.",
            PowerCycleProof.NotSeen => "NOT PROVED after power-off: the drive was not seen to lose power.",
            _ => "NOT PROVED after power-off.",
        });
        if (report.Failed.Count > 0)
        {
            // Often one reason holds for all: then it is said once.
            page.Table(
                [new("not proved", Whole: false), new("outcome"), new("why", Whole: false)],
                from failed in report.Failed
                group failed.Parameter by (failed.Outcome.Name, failed.Outcome.Why) into alike
                select (IReadOnlyList<string>)[string.Join(", ", alike.Select(number => Named(profile, number))), alike.Key.Name, alike.Key.Why ?? ""]);
        }

        if (report.Left.Count > 0)
        {
            page.Table(
                [new("left to a person"), new("why", Whole: false)],
                report.Left.Select(l => (IReadOnlyList<string>)[Named(profile, l.Parameter), l.Why]));
        }

        page.Line($"Run commands now come from: {report.RunSource ?? "not known; look at the drive"}.");
        if (WhyNotFinished(report) is { } why)
        {
            page.Line($"NOT FINISHED: {why}.");
        }
    }

    internal static string? WhyNotFinished(EntryReport report) => report.Ending switch
    {
        EntryEnding.Finished => null,
        EntryEnding.RefusedForSafety refused => $"refused: {refused.Why}",
        EntryEnding.LinkFailed failed => $"the link failed: {failed.Why}; call again to go on",
        EntryEnding.AwaitsPowerCycle awaits when report.Failed.Count > 0 => $"{report.Failed.Count} of the sheet {(report.Failed.Count == 1 ? "is" : "are")} NOT PROVED to be in the drive, and the rest is not yet proved after power-off: {awaits.Why}; call again to go on",
        EntryEnding.AwaitsPowerCycle awaits => $"all is in the drive, and not yet proved after power-off: {awaits.Why}; call again to go on",
        EntryEnding.Interrupted => "stopped before its end; all so far is kept, call again to go on",
        _ => throw new InvalidOperationException("The set of endings is closed."),
    };

    private static string Before(EntryReport report) => report.WrittenBefore.Count > 0 ? $" now and {report.WrittenBefore.Count} before the cut" : "";

    private static string Refused(EntryReport report) =>
        report.Failed.Count(f => f.Outcome is WriteOutcome.Refused) is > 0 and var refused ? $", {refused} of them refused by the drive" : "";

    private static string ReadBack(EntryReport report) => report.Verified.Count > 0 ? $", {report.Verified.Count} by an earlier read-back" : "";

    internal static string Named(DriveProfile profile, string number) => $"{number} {profile.Find(number)?.Name}".TrimEnd();
}
