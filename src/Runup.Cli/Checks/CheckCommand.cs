using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Spectre.Console.Cli;

namespace Runup.Cli.Checks;

/// <summary><c>runup check JOB...</c>: does it all fit?</summary>
internal sealed class CheckCommand : Command<CheckCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var jobs = LoadedJob.All(settings.Jobs);
        var reports = jobs.Select(j => (Job: j, Report: CheckList.Judge(j.Context))).ToList();
        if (settings.Json)
        {
            JsonOut.OneOrMany(reports, (json, r) => CheckJson.Write(json, r.Job, r.Report));
        }
        else
        {
            var page = new Page(Console.Out);
            foreach (var (job, report) in reports)
            {
                CheckPage.Write(page, job, report);
            }
        }

        return (int)reports.Select(r => r.Report.Verdict.BlockedBy.Count > 0 ? ExitStatus.Blocked : ExitStatus.Fine).Worst();
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB>")]
        [Description("Job files")]
        public string[] Jobs { get; set; } = [];

        [CommandOption("--json")]
        [Description("One JSON document on standard output; of several jobs an array in their order")]
        public bool Json { get; set; }
    }
}
