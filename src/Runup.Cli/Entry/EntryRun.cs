using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;

namespace Runup.Cli.Entry;

/// <summary>An entry over a link, as <c>enter</c> and <c>restore</c> do it.</summary>
internal static class EntryRun
{
    internal static async Task<int> Of(LoadedJob job, EntrySheet sheet, Verdict verdict, LinkSettings settings, CancellationToken cancellation, bool restoring = false)
    {
        var links = settings.LinksFor(job);
        using var records = SiteRecords.Open(job.Folder);
        using var interrupted = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        ConsoleCancelEventHandler onCancel = (_, e) =>
        {
            e.Cancel = true;
            interrupted.Cancel();
        };
        Console.CancelKeyPress += onCancel;
        try
        {
            var task = new EntryTask { Tag = job.Job.Tag, Profile = job.Profile, Size = job.Size, Sheet = sheet, Verdict = verdict };
            await records.Append(job.Job.Tag, JobTaken.Of(job), CancellationToken.None);
            var report = await new EnterSheet(task, links, records, settings.AtTerminal(), TimeProvider.System, new EntryProgress(Console.Error)).Run(interrupted.Token);
            Show(job, report, settings.Json, restoring);
            return (int)Status(report);
        }
        finally
        {
            Console.CancelKeyPress -= onCancel;
        }
    }

    internal static ExitStatus Status(EntryReport report) => report.Ending switch
    {
        EntryEnding.RefusedForSafety => ExitStatus.RefusedForSafety,
        EntryEnding.LinkFailed => ExitStatus.LinkFailed,
        // Nothing failed to be entered; that the proof after power-off is open is said in words and in JSON.
        EntryEnding.Finished or EntryEnding.AwaitsPowerCycle when report.Failed.Count == 0 => ExitStatus.Fine,
        _ => ExitStatus.Blocked,
    };

    private static void Show(LoadedJob job, EntryReport report, bool json, bool restoring)
    {
        if (json)
        {
            EntryJson.Write(report);
        }
        else
        {
            EntryPage.Write(new Page(Console.Out), job.Job.Tag, job.Profile, report, restoring);
        }

        if (EntryPage.WhyNotFinished(report) is { } why)
        {
            Console.Error.WriteLine($"runup: {job.Job.Tag}: {why}");
        }
    }
}
