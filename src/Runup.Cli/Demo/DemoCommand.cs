using System.ComponentModel;
using System.Net;
using Runup.Cli.Checks;
using Runup.Cli.Entry;
using Runup.Cli.Handover;
using Runup.Cli.Rehearsal;
using Runup.Cli.Simulate;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.DriveLink;
using Runup.Profiles;
using Runup.SimulatedDrive.Clock;
using Spectre.Console.Cli;

namespace Runup.Cli.Demo;

/// <summary><c>runup demo [DIR]</c>: the whole job once, against a simulated drive over Modbus TCP, to the handover's files.</summary>
internal sealed class DemoCommand : AsyncCommand<DemoCommand.Settings>
{
    private const double Rate = 30;

    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var folder = DemoFolder.Prepare(settings.Folder);
        var page = new Page(Console.Out);
        page.Line("The whole job once, on invented data: the seawater pump of a fish hatchery, with a drive that is simulated and a person");
        page.Line($"whom this program plays. The drive's seconds run {Rate:0} times as fast as yours. Nothing real turns.");

        Surveyed(page, Path.Combine(folder, "as-surveyed", "swp-101.job.yaml"));
        var job = LoadedJob.From(Path.Combine(folder, "swp-101.job.yaml"));
        var report = Corrected(page, job);
        var plan = SettingsPlan.For(job.Context);
        var lines = Profiles.Sheet.For(job.Profile, job.Size, plan.Values, ParameterValues.Defaults(job.Profile, job.Size));
        DemoPages.Plan(page, job, plan, lines);
        DemoPages.Rehearsal(page, RehearseCommand.Result(job, JobRehearsal.Of(job.Context, plan, job.Profile, job.Size, cancellation: cancellationToken)));

        using var time = new PacedTime(Rate, TimeProvider.System);
        await using var host = SimulateCommand.Serve(job, time, IPAddress.Loopback, 0);
        host.Drive.Couple(DemoPerson.Alone(RehearsalSystem.Of(job.Context)!.Machine));
        var person = new DemoPerson(host, RehearsalSystem.Of(job.Context)!.Machine, time);
        var links = new ModbusDriveLinks(new LinkAddress(IPAddress.Loopback.ToString(), host.Endpoint.Port, 1), job.Profile, time, new ExchangeHold(time, TimeProvider.System).Tap);
        using var records = SiteRecords.Open(folder);
        await records.Append(job.Job.Tag, JobTaken.Of(job), cancellationToken);

        page.Heading($"4. Entry over Modbus TCP, {SimulateCommand.Link(host, job)}");
        var sheet = EntrySheet.From(lines);
        var entry = await new EnterSheet(
            new EntryTask { Tag = job.Job.Tag, Profile = job.Profile, Size = job.Size, Sheet = sheet, Verdict = report.Verdict }, links, records, person, time).Run(cancellationToken);
        EntryPage.Write(page, job.Job.Tag, job.Profile, entry);
        if (EntryRun.Status(entry) != ExitStatus.Fine)
        {
            throw new Complaint(EntryRun.Status(entry), $"runup: the demo's entry did not finish: {EntryPage.WhyNotFinished(entry) ?? "a parameter is not proved"}");
        }

        page.Heading("5. First run, step by step");
        page.Line($"{SafetyWords.BesideRunControl("there is no machine here")} {SafetyWords.WhoDecides}");
        var run = await new GuidedFirstRun(
            new FirstRunTask
            {
                Job = job.Job,
                Profile = job.Profile,
                Size = job.Size,
                Plan = plan.Values,
                Sheet = sheet,
                Predictions = FirstRunPredictions.Of(job.Context, plan, job.Profile, job.Size)!,
                Verdict = report.Verdict,
            },
            links,
            records,
            person,
            time,
            new DemoProgress(page)).Run(cancellationToken);
        if (run.Ending is not FirstRunEnding.Finished)
        {
            throw new Complaint(ExitStatus.Blocked, $"runup: the demo's first run did not finish: {run.Ending}; not put back: {string.Join(", ", run.NotPutBack.Select(n => $"{n.Key} ({n.Value})"))}");
        }

        page.Line($"Run commands now come from: {run.RunSource}. {person.Confirmations} things were confirmed by name in all.");

        page.Heading("6. Handover");
        HandoverPage.Write(page, await HandoverFiles.Write(job, records, TimeProvider.System, cancellationToken));
        return (int)ExitStatus.Fine;
    }

    private static void Surveyed(Page page, string path)
    {
        page.Heading("1. The survey as first written, checked");
        var surveyed = LoadedJob.From(path);
        var report = CheckList.Judge(surveyed.Context);
        foreach (var finding in report.Findings.Where(f => f.Id.StartsWith("plate.", StringComparison.Ordinal)))
        {
            page.Line($"{finding.Severity.Word().ToUpperInvariant()}  {finding.Title}  [{finding.Id}]");
            page.Line($"  {finding.Explanation}");
            page.Line($"  What to do: {finding.Remedy}");
        }

        page.Line(report.Verdict.MayBeEntered ? "Nothing was found against entering it." : $"Settings may be entered: NO, because of {string.Join(", ", report.Verdict.EntryBlockedBy)}.");
    }

    private static CheckReport Corrected(Page page, LoadedJob job)
    {
        page.Heading("2. After a second look at the plate: kW, not hp; the 50 Hz column");
        var report = CheckList.Judge(job.Context);
        CheckPage.Write(page, job, report);
        return report.Verdict.MayRunCoupled
            ? report
            : throw new Complaint(ExitStatus.Blocked, $"runup: the demo's corrected job is blocked by {string.Join(", ", report.Verdict.BlockedBy)}");
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[DIR]")]
        [Description("A new or empty folder; runup-demo where none is named")]
        public string? Folder { get; set; }
    }
}
