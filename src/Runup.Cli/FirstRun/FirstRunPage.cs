using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover;

namespace Runup.Cli.FirstRun;

/// <summary>What is said before a first run that a person does, and what it came to.</summary>
internal static class FirstRunPage
{
    internal static string Opening(LoadedJob job, FirstRunPlan plan, bool overLink)
    {
        var who = plan.OwnControlOnly is { } why ? $"{why} You run it there" : "You run the motor, at the drive's panel or wherever you stand beside the machine";
        var readings = overLink ? "Runup only reads" : "you type in what it shows; Runup sends nothing";
        return $"""
            {job.Job.Tag}, first run with {job.Profile.Title}, size {job.Size.Name}: see that its name plate says so.
            {who}, and {readings}: it does not run the motor from this terminal, where nobody could hold it with a deadline of 0.3 s, and so it need not be proved that the drive stops when the bus is lost.
            {SafetyWords.WhoDecides}
            {SafetyWords.BeforeTerminals}
            {(overLink ? "q at any question stops: stop the motor first. All so far is kept, and the next call goes on." : $"Answer each question for a reading with\n{PersonAtPanel.Answers}")}
            """;
    }

    internal static void Write(Page page, string tag, FirstRunPlan plan, FirstRunReport report, RecordStory story)
    {
        page.Heading($"{tag}: first run, run by a person");
        page.Table(
            [new("step"), new("ended"), new("within", Digits: true), new("outside", Digits: true), new("not read", Digits: true), new("remark", Whole: false)],
            StoriesOf(plan, story).Select(s => (IReadOnlyList<string>)
            [
                s.Step.Id,
                s.Story switch { null => "not done", { Ended: null } => "cut off", { Ended.Outcome: var outcome } => outcome },
                Count(s.Story, true),
                Count(s.Story, false),
                s.Story?.Readings.Count(r => r.Measured is null) is > 0 and var blank ? blank.ToString(CultureInfo.InvariantCulture) : "",
                s.Story?.Ended?.Remark ?? "",
            ]));
        foreach (var (_, step) in StoriesOf(plan, story).Where(s => s.Story?.Readings.Any(r => r.Within == false) == true))
        {
            page.Line();
            page.Line($"Outside in {step!.Step}:");
            StepPage.Readings(page, [.. step.Readings.Where(r => r.Within == false)]);
        }

        page.Line($"All readings stand in the handover, beside what was expected. {SafetyWords.WhoDecides}");
        if (report.RunSource is { } source)
        {
            page.Line($"Run commands now come from: {source}.");
        }

        if (WhyNotFinished(report) is { } why)
        {
            page.Line($"NOT FINISHED: {why}.");
        }
    }

    internal static string? WhyNotFinished(FirstRunReport report) => StepPage.WhyNotFinished(report) is { } why ? $"{why}; all so far is kept, call again to go on" : null;

    /// <summary>The steps of a plan, each with its last attempt, or null.</summary>
    internal static IReadOnlyList<(FirstRunStep Step, StepStory? Story)> StoriesOf(FirstRunPlan plan, RecordStory story) =>
        [.. plan.Steps.Select(p => (p, story.Steps.FirstOrDefault(s => string.Equals(s.Step, p.Id, StringComparison.Ordinal))))];

    private static string Count(StepStory? story, bool within) =>
        story?.Readings.Count(r => r.Within == within) is > 0 and var count ? count.ToString(CultureInfo.InvariantCulture) : "";
}
