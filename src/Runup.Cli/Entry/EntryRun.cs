using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Records;

namespace Runup.Cli.Entry;

/// <summary>An entry over a link or by hand, as <c>enter</c> and <c>restore</c> do it.</summary>
internal static class EntryRun
{
    internal static async Task<int> Of(
        LoadedJob job, EntrySheet sheet, Verdict verdict, IReadOnlyDictionary<string, string> why, LinkSettings settings, CancellationToken cancellation, bool restoring = false)
    {
        var task = new EntryTask { Tag = job.Job.Tag, Profile = job.Profile, Size = job.Size, Sheet = sheet, Verdict = verdict };
        var links = settings.ByHand ? null : settings.LinksFor(job);
        using var records = SiteRecords.Open(job.Folder);
        using var interruption = new Interruption(cancellation);
        await records.Append(job.Job.Tag, JobTaken.Of(job), CancellationToken.None);
        var report = links is null
            ? await ByHand(job, task, why, settings, records, interruption.Token)
            : await new EnterSheet(task, links, records, settings.AtTerminal(), TimeProvider.System, new EntryProgress(Console.Error)).Run(interruption.Token);
        Show(job, report, settings, restoring);
        return (int)Status(report);
    }

    internal static ExitStatus Status(EntryReport report) => report.Ending switch
    {
        EntryEnding.RefusedForSafety => ExitStatus.RefusedForSafety,
        EntryEnding.LinkFailed => ExitStatus.LinkFailed,
        // Nothing failed to be entered; that the proof after power-off is open is said in words and in JSON.
        EntryEnding.Finished or EntryEnding.AwaitsPowerCycle when report.Failed.Count == 0 => ExitStatus.Fine,
        _ => ExitStatus.Blocked,
    };

    private static Task<EntryReport> ByHand(
        LoadedJob job, EntryTask task, IReadOnlyDictionary<string, string> why, LinkSettings settings, IRecords records, CancellationToken cancellation)
    {
        var person = settings.AtDisplay();
        person.Tell($"{job.Job.Tag} by hand at the display of {job.Profile.Title}, size {job.Size.Name}: see that its name plate says so. Answer each question with\n{PersonAtDisplay.Answers}");
        return new EnterByHand(task, ToLookAt.Of(job.Profile, task.Sheet, settings.All), why, person, records).Run(cancellation);
    }

    private static void Show(LoadedJob job, EntryReport report, LinkSettings settings, bool restoring)
    {
        var why = EntryPage.WhyNotFinished(report);
        if (settings.Json)
        {
            EntryJson.Write(report, settings.ByHand);
        }
        else
        {
            EntryPage.Write(new Page(Console.Out), job.Job.Tag, job.Profile, report, restoring, settings.ByHand);
        }

        if (why is not null)
        {
            Console.Error.WriteLine($"runup: {job.Job.Tag}: NOT FINISHED: {why}");
        }
    }
}
