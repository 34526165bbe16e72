using System.Net;
using Runup.Cli.Entry;
using Runup.Cli.FirstRun;
using Runup.Cli.Handover;
using Runup.Cli.Rehearsal;
using Runup.Cli.Simulate;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Survey;
using Runup.DriveLink;
using Runup.Profiles;

namespace Runup.Cli.Demo;

/// <summary>One set of the demo: its simulated drive on a clock of its own, and the whole job on it.</summary>
internal sealed class DemoSet : IAsyncDisposable
{
    internal const double LowestRate = 30;
    internal const double HighestRate = 60;

    private readonly ServedDrive served;
    private volatile bool stands = true;

    internal DemoSet(LoadedJob job)
    {
        Job = job;
        served = ServedDrive.Of(job, RateOf(job.Job.Operation), IPAddress.Loopback, 0);
        served.Time.HoldWhile(() => stands || ProgramIsBehind);
        Pace = new DemoPace(served.Time, TimeProvider.System);
    }

    /// <summary>Work that is due waits for a processor: many times as fast as real time, that must not look like a slow person or a slow link.</summary>
    private static bool ProgramIsBehind => ThreadPool.PendingWorkItemCount > 0;

    internal LoadedJob Job { get; }

    internal string Link => served.Link;

    internal DemoPace Pace { get; }

    public ValueTask DisposeAsync() => served.DisposeAsync();

    /// <summary>From the survey to the handover. What holds it up on the way is told and is in the handover; null where nothing did.</summary>
    internal async Task<(HandoverFiles Files, string? HeldUp)> Run(IRecords records, IDemoStory story, CancellationToken cancellation)
    {
        Surveyed(story);
        var report = CheckList.Judge(Job.Context);
        story.Checked(Job, report);
        var plan = SettingsPlan.For(Job.Context);
        var lines = Profiles.Sheet.For(Job.Profile, Job.Size, plan.Values, ParameterValues.Defaults(Job.Profile, Job.Size));
        story.Planned(Job, plan, lines);
        story.Rehearsed(Job, RehearseCommand.Result(Job, JobRehearsal.Of(Job.Context, plan, Job.Profile, Job.Size, cancellation: cancellation)));

        var heldUp = await OnTheDrive(report, plan, lines, records, story, cancellation);
        if (heldUp is not null)
        {
            story.Failed(heldUp);
        }

        Pace.HandsOver();
        var files = await HandoverFiles.Write(Job, records, TimeProvider.System, cancellation);
        story.HandedOver(files);
        Pace.Ends();
        return (files, heldUp);
    }

    /// <summary>Long ramps run faster, so that no set keeps the others waiting.</summary>
    private static double RateOf(OperationSurvey operation)
    {
        var ramps = (operation.Acceleration?.Value.Seconds ?? 0) + (operation.Deceleration?.Value.Seconds ?? 0);
        return Math.Clamp(ramps, LowestRate, HighestRate);
    }

    private void Surveyed(IDemoStory story)
    {
        var path = Path.Combine(Job.Folder, "as-surveyed", Path.GetFileName(Job.Path));
        if (File.Exists(path))
        {
            story.Surveyed(CheckList.Judge(LoadedJob.From(path).Context));
        }
    }

    private async Task<string?> OnTheDrive(CheckReport report, SettingsPlan plan, IReadOnlyList<SheetLine> lines, IRecords records, IDemoStory story, CancellationToken cancellation)
    {
        var (host, time) = (served.Host, served.Time);
        var system = RehearsalSystem.Of(Job.Context)!;
        var task = JobFirstRun.Of(Job, plan, lines, report, FirstRunPredictions.Of(Job.Context, plan, Job.Profile, Job.Size)!);
        var address = new LinkAddress(IPAddress.Loopback.ToString(), host.Endpoint.Port, SimulateCommand.UnitOf(Job).Value);
        var hold = new ExchangeHold(time, TimeProvider.System);
        var links = hold.Around(new ModbusDriveLinks(address, Job.Profile, time, hold.Tap));
        var person = new DemoPerson(host, system.Machine, time);
        var run = new GuidedFirstRun(task, links, records, person, time, new Steps(story, Pace));
        if (run.Plan.OwnControlOnly is null)
        {
            host.Drive.Couple(RehearsalSystem.Uncoupled(system.Machine));
        }

        person.Plan = run.Plan;
        Pace.Knows(run.Plan, Job.Job.Operation.Acceleration?.Value.Seconds ?? 0, Job.Job.Operation.Deceleration?.Value.Seconds ?? 0);
        await records.Append(Job.Job.Tag, JobTaken.Of(Job), cancellation);

        stands = false;
        Pace.Enters();
        var entry = await new EnterSheet(
            new EntryTask { Tag = Job.Job.Tag, Profile = Job.Profile, Size = Job.Size, Sheet = task.Sheet, Verdict = report.Verdict }, links, records, person, time, Pace).Run(cancellation);
        story.Entered(Job, Link, entry);
        if (EntryRun.Status(entry) != ExitStatus.Fine)
        {
            return $"the entry: {EntryPage.WhyNotFinished(entry) ?? "a parameter is not proved"}";
        }

        story.Runs(run.Plan);
        Pace.Steps();
        var ran = await run.Run(cancellation);
        await person.Leaves(cancellation);
        story.Ran(ran, person.Confirmations, host.Drive.EnableWordsSeen);
        return StepPage.WhyNotFinished(ran) is { } why ? $"the first run: {why}" : null;
    }

    /// <summary>A step has ended: it is told, and the next is under way.</summary>
    private sealed class Steps(IDemoStory story, DemoPace pace) : IProgress<StepReport>
    {
        public void Report(StepReport value)
        {
            story.Report(value);
            pace.Steps();
        }
    }
}
