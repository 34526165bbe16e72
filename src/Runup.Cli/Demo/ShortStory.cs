using System.Globalization;
using Runup.Cli.Checks;
using Runup.Cli.Entry;
using Runup.Cli.FirstRun;
using Runup.Cli.Handover;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;

namespace Runup.Cli.Demo;

/// <summary>A set's job in a block of few lines, told when it has ended.</summary>
internal sealed class ShortStory(LoadedJob job) : IDemoStory
{
    private readonly List<(string What, string Words)> told = [];
    private readonly List<StepReport> steps = [];
    private CheckReport? surveyed;
    private FirstRunPlan? plan;

    /// <summary>The block.</summary>
    internal void Write(Page page)
    {
        page.Heading($"{job.Job.Tag}  {job.Job.Title}");
        page.Table([new(""), new("", Whole: false)], told.Select(t => (IReadOnlyList<string>)[t.What, t.Words]));
    }

    public void Surveyed(CheckReport report) => surveyed = report;

    public void Checked(LoadedJob of, CheckReport report)
    {
        if (surveyed is not null)
        {
            var left = report.Findings.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
            var corrected = surveyed.Findings.Where(f => f.Severity != Severity.Note && !left.Contains(f.Id)).Select(Words).ToList();
            Tell("As first surveyed", corrected.Count == 0 ? "nothing that was corrected since" : $"{string.Join("; ", corrected)}. Since corrected in the job file.");
        }

        if (DemoSite.Shows(of.Job.Tag) is var (what, check) && report.Results.FirstOrDefault(r => string.Equals(r.Id, check, StringComparison.Ordinal)) is { } result)
        {
            Tell("The question", what);
            Tell("The answer", Answer(result));
        }

        var others = report.Findings.Select(Words).ToList();
        Tell("Checks", $"{DemoPages.Counts(report)}{(others.Count == 0 ? "" : $": {string.Join("; ", others)}")}");
    }

    public void Planned(LoadedJob of, SettingsPlan settings, IReadOnlyList<SheetLine> lines) => Tell("Settings", string.Create(
        CultureInfo.InvariantCulture, $"{settings.Lines.Count} decided, {lines.Count(l => l.Parameter is not null && l.Changed)} parameters other than from the factory"));

    public void Rehearsed(LoadedJob of, RehearsalResult result) => Tell("Rehearsed", $"{DemoPages.Rehearsal(of, result)} (an estimate, never a permission)");

    public void Entered(LoadedJob of, string link, EntryReport report) => Tell("Entry", string.Create(
        CultureInfo.InvariantCulture,
        $"{report.Written.Count} written, {report.Verified.Count} verified by read-back, {report.Failed.Count} not proved; {(report.PowerCycle == PowerCycleProof.Proved ? "kept after power was off and on" : "NOT PROVED after power-off")}{(EntryPage.WhyNotFinished(report) is { } why ? $"; NOT FINISHED: {why}" : "")}"));

    public void Runs(FirstRunPlan steps) => plan = steps;

    public void Report(StepReport value) => steps.Add(value);

    public void Ran(FirstRunReport report, int confirmations, int enableWords)
    {
        var readings = steps.SelectMany(s => s.Readings).ToList();
        var passed = steps.Count(s => string.Equals(s.Outcome, "passed", StringComparison.Ordinal));
        Tell("First run", string.Create(
            CultureInfo.InvariantCulture,
            $"{passed} of {plan!.Steps.Count} steps passed; {readings.Count(r => r.Within == true)} readings within what is expected, {readings.Count(r => r.Within == false)} OUTSIDE{(StepPage.WhyNotFinished(report) is { } why ? $"; NOT FINISHED: {why}" : "")}"));
        if (plan.OwnControlOnly is { } only)
        {
            Tell("Run commands", string.Create(CultureInfo.InvariantCulture, $"none was sent. {only} The played person ran it at the panel, Runup read. Words on the wire that would run it: {enableWords}"));
        }

        Tell("Control now", $"run commands come from: {report.RunSource ?? "not known; look at the drive"}");
    }

    public void HandedOver(HandoverFiles files)
    {
        Tell("Open", files.Model.Open.Count == 0 ? "no restrictions are known" : string.Join("; ", files.Model.Open.Select(o => o.Subject.TrimEnd('.'))));
        Tell("Handover", files.Report);
    }

    public void Failed(string why) => Tell("NOT FINISHED", why);

    private void Tell(string what, string words) => told.Add((what, words));

    private static string Words(CheckResult.Violated finding) => $"{finding.Severity.Word().ToUpperInvariant()} {finding.Title} [{finding.Id}]";

    private static string Answer(CheckResult result) => result switch
    {
        CheckResult.Satisfied fine => fine.Because,
        CheckResult.Violated found => $"{found.Severity.Word().ToUpperInvariant()}: {found.Explanation}",
        CheckResult.Undecided undecided => $"UNDECIDED for want of {undecided.Missing}",
        _ => throw new InvalidOperationException("The set of results is closed."),
    };
}
