using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Spectre.Console.Cli;

namespace Runup.Cli.Handover;

/// <summary><c>runup handover JOB</c>: the report and the file that restores the drive.</summary>
internal sealed class HandoverCommand : AsyncCommand<JobSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, JobSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        using var records = SiteRecords.Open(job.Folder);
        var files = await HandoverFiles.Write(job, records, TimeProvider.System, cancellationToken);
        if (settings.Json)
        {
            HandoverPage.WriteJson(files);
            return (int)ExitStatus.Fine;
        }

        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}: handover");
        HandoverPage.Write(page, files);
        page.Line("To have it on paper or as PDF, open the report in a browser and print it.");
        return (int)ExitStatus.Fine;
    }
}
