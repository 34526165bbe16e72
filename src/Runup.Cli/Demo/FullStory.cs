using Runup.Cli.Checks;
using Runup.Cli.Entry;
using Runup.Cli.FirstRun;
using Runup.Cli.Handover;
using Runup.Cli.Survey;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;

namespace Runup.Cli.Demo;

/// <summary>A set's job told in full, part by part as it is done.</summary>
internal sealed class FullStory(DemoScreen screen, string tag) : IDemoStory
{
    public void Surveyed(CheckReport report) => screen.Say(page =>
    {
        page.Heading($"{tag} 1. The survey as first written, checked");
        foreach (var finding in report.Findings.Where(f => f.Id.StartsWith("plate.", StringComparison.Ordinal)))
        {
            page.Line($"{finding.Severity.Word().ToUpperInvariant()}  {finding.Title}  [{finding.Id}]");
            page.Line($"  {finding.Explanation}");
            page.Line($"  What to do: {finding.Remedy}");
        }

        page.Line(report.Verdict.MayBeEntered ? "Nothing was found against entering it." : $"Settings may be entered: NO, because of {string.Join(", ", report.Verdict.EntryBlockedBy)}.");
    });

    public void Checked(LoadedJob job, CheckReport report) => screen.Say(page =>
    {
        page.Heading($"{tag} 2. After a second look at the plate: kW, not hp; the 50 Hz column");
        CheckPage.Write(page, job, report);
    });

    public void Planned(LoadedJob job, SettingsPlan plan, IReadOnlyList<SheetLine> lines) => screen.Say(page =>
    {
        page.Heading($"{tag} 3. Settings with their reasons, in {job.Profile.Title}'s own numbers, in order of entry");
        DemoPages.Plan(page, plan, lines);
    });

    public void Rehearsed(LoadedJob job, RehearsalResult result) => screen.Say(page =>
    {
        page.Heading($"{tag} Rehearsed before power (an estimate, never a permission)");
        page.Line($"{DemoPages.Rehearsal(job, result)}.");
    });

    public void Entered(LoadedJob job, string link, EntryReport report) => screen.Say(page =>
    {
        page.Heading($"{tag} 4. Entry over Modbus TCP, {link}");
        EntryPage.Write(page, tag, job.Profile, report);
        if (EntryPage.WhyNotFinished(report) is { } why)
        {
            page.Line($"NOT FINISHED: {why}");
        }
    });

    public void Runs(FirstRunPlan plan) => screen.Say(page =>
    {
        page.Heading($"{tag} 5. First run, step by step");
        page.Line($"{SafetyWords.BesideRunControl("simulated, as the machine is")} {SafetyWords.WhoDecides}");
    });

    public void Report(StepReport value) => screen.Say(page => StepPage.Step(page, value));

    public void Ran(FirstRunReport report, int confirmations, int enableWords) => screen.Say(page =>
    {
        if (StepPage.WhyNotFinished(report) is { } why)
        {
            page.Line($"NOT FINISHED: {why}");
        }

        page.Line($"Run commands now come from: {report.RunSource ?? "not known; look at the drive"}. {confirmations} things were confirmed by name in all.");
    });

    public void HandedOver(HandoverFiles files) => screen.Say(page =>
    {
        page.Heading($"{tag} 6. Handover");
        HandoverPage.Write(page, files);
    });

    public void Failed(string why) => screen.Say(page => page.Line($"{tag} NOT FINISHED: {why}"));
}
