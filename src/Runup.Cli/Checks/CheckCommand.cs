using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Spectre.Console.Cli;

namespace Runup.Cli.Checks;

/// <summary><c>runup check JOB...</c>: does it all fit? And who takes responsibility for what does not.</summary>
internal sealed class CheckCommand : AsyncCommand<CheckCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var jobs = LoadedJob.All(settings.Jobs);
        var reports = jobs.Select(j => (Job: j, Report: CheckList.Judge(j.Context))).ToList();
        var accepted = await Accept(settings, reports, cancellationToken);
        var told = new List<(LoadedJob Job, CheckReport Report, RecordStory Story)>();
        foreach (var (job, report) in reports)
        {
            told.Add((job, report, await AcceptedFindings.Known(job, cancellationToken)));
        }

        if (settings.Json)
        {
            JsonOut.OneOrMany(told, (json, t) => CheckJson.Write(json, t.Job, t.Report, t.Story));
        }
        else
        {
            var page = new Page(Console.Out);
            foreach (var (job, report, story) in told)
            {
                CheckPage.Write(page, job, report);
                AcceptedFindings.Earlier(page, report, story, accepted);
            }

            AcceptedFindings.Write(page, accepted);
        }

        return (int)reports.Select(r => r.Report.Verdict.BlockedBy.Count > 0 ? ExitStatus.Blocked : ExitStatus.Fine).Worst();
    }

    private static async Task<IReadOnlyList<RecordBody.FindingAccepted>> Accept(Settings settings, IReadOnlyList<(LoadedJob Job, CheckReport Report)> reports, CancellationToken cancellation)
    {
        if (settings.Accept.Length == 0)
        {
            return settings.By is null && settings.Because is null
                ? []
                : throw new Complaint(ExitStatus.BadInput, "runup: --by and --because go with --accept ID, which is missing");
        }

        return reports is [var (job, report)]
            ? await AcceptedFindings.Keep(job, report, settings.Accept, settings.By, settings.Because, cancellation)
            : throw new Complaint(ExitStatus.BadInput, "runup: --accept: findings are accepted of one job at a time");
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB>")]
        [Description("Job files")]
        public string[] Jobs { get; set; } = [];

        [CommandOption("--accept <ID>")]
        [Description("Accept this finding as it is now, by name and with a reason; it is kept in the record and printed in the handover. The verdict stays")]
        public string[] Accept { get; set; } = [];

        [CommandOption("--by <NAME>")]
        [Description("Who accepts it")]
        public string? By { get; set; }

        [CommandOption("--because <TEXT>")]
        [Description("Why")]
        public string? Because { get; set; }

        [CommandOption("--json")]
        [Description("One JSON document on standard output; of several jobs an array in their order")]
        public bool Json { get; set; }
    }
}
