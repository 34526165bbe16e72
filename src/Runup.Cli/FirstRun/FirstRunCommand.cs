using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.FirstRun.AtPanel;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.FirstRun;

/// <summary><c>runup first-run JOB [--link LINK]</c>: a person runs the motor, and each reading is held against what was predicted.</summary>
internal sealed class FirstRunCommand : AsyncCommand<FirstRunSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, FirstRunSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        var sheet = Profiles.Sheet.For(job.Profile, job.Size, plan.Values, ParameterValues.Defaults(job.Profile, job.Size));
        IFirstRunPredictions predictions = FirstRunPredictions.Of(job.Context, plan, job.Profile, job.Size) is { } known ? known : new NothingPredicted();
        var task = JobFirstRun.Of(job, plan, sheet, CheckList.Judge(job.Context), predictions);
        var steps = FirstRunPlan.RunByPerson(task);
        var again = settings.AgainOf(steps);

        var links = settings.Link is null ? null : settings.LinksFor(job);
        using var records = SiteRecords.Open(job.Folder);
        using var interruption = new Interruption(cancellationToken);
        var person = settings.AtPanel(interruption.Now);
        person.Tell(FirstRunPage.Opening(job, steps, overLink: links is not null));
        await records.Append(job.Job.Tag, JobTaken.Of(job), CancellationToken.None);
        var run = new FirstRunByPerson(task, records, person, again, new Steps(person, links is not null));
        var report = links is null ? await run.Typed(interruption.Token) : await run.Read(links, TimeProvider.System, interruption.Token);
        var story = RecordStory.Of(await records.Of(job.Job.Tag, CancellationToken.None));
        Show(job, steps, report, story, settings);
        return (int)Status(report, steps, story);
    }

    private static ExitStatus Status(FirstRunReport report, FirstRunPlan plan, RecordStory story) => report.Ending switch
    {
        FirstRunEnding.RefusedForSafety => ExitStatus.RefusedForSafety,
        FirstRunEnding.LinkFailed or FirstRunEnding.FellSilent => ExitStatus.LinkFailed,
        FirstRunEnding.Finished when FirstRunPage.StoriesOf(plan, story).All(s => s.Story?.Ended is { Outcome: "passed" or "skipped" }) => ExitStatus.Fine,
        _ => ExitStatus.Blocked,
    };

    private static void Show(LoadedJob job, FirstRunPlan plan, FirstRunReport report, RecordStory story, FirstRunSettings settings)
    {
        if (settings.Json)
        {
            FirstRunJson.Write(job.Job.Tag, plan, report, story);
        }
        else
        {
            FirstRunPage.Write(new Page(Console.Out), job.Job.Tag, plan, report, story);
        }

        if (FirstRunPage.WhyNotFinished(report) is { } why)
        {
            Console.Error.WriteLine($"runup: {job.Job.Tag}: NOT FINISHED: {why}");
        }
    }

    /// <summary>A step has ended, and the person is told how.</summary>
    private sealed class Steps(PersonAtPanel person, bool showsReadings) : IProgress<StepReport>
    {
        public void Report(StepReport value)
        {
            if (showsReadings && value.Readings.Count > 0)
            {
                StepPage.Readings(new Page(Console.Error), value.Readings);
            }

            person.Tell($"{value.Outcome.ToUpperInvariant()}: {value.Title}{(value.Remark is null ? "" : $" {value.Remark}.")}");
        }
    }
}
