using System.Globalization;
using Runup.Commissioning.Checks;

namespace Runup.Commissioning.Handover;

/// <summary>What is done and what is not, at a glance.</summary>
internal static class StageFacts
{
    public static IReadOnlyList<StageFact> Of(CheckReport checks, RecordStory story, IReadOnlyList<ParameterRow> parameters, IReadOnlyList<StepStory> steps) =>
    [
        OfChecks(checks),
        OfEntry(story.Entry, parameters),
        OfPowerCycle(story.Entry, parameters),
        .. steps.Any(s => s.IsFromOwnControl)
            ? (StageFact[])[OfSteps("First run, from its own control", steps)]
            : [OfSteps("First run, uncoupled", [.. steps.Where(s => !s.IsCoupled)]), OfSteps("First run, coupled", [.. steps.Where(s => s.IsCoupled)])],
    ];

    private static StageFact OfChecks(CheckReport checks)
    {
        var counts = Words($"{checks.Results.Count} checks: {checks.SatisfiedCount} without objection, {checks.Findings.Count} with a finding, {checks.Undecided.Count} undecided");
        return checks.Verdict switch
        {
            { MayBeEntered: false } v => new("Checks", StageState.HeldUp, $"{counts}. Entry and all after it held up by {List(v.EntryBlockedBy)}."),
            { MayBeBumped: false } v => new("Checks", StageState.HeldUp, $"{counts}. The first turn and all after it held up by {List(v.BumpBlockedBy)}."),
            { MayRunCoupled: false } v => new("Checks", StageState.HeldUp, $"{counts}. Running coupled held up by {List(v.CoupledBlockedBy)}."),
            _ when checks.Results.Count == 0 => new("Checks", StageState.NotDone, "No checks were made."),
            _ => new("Checks", checks.Undecided.Count == 0 && checks.Findings.All(f => f.Severity == Severity.Note) ? StageState.Done : StageState.Open, $"{counts}. No finding holds up a stage."),
        };
    }

    private static StageFact OfEntry(EntryStory entry, IReadOnlyList<ParameterRow> parameters)
    {
        var wanted = parameters.Where(p => p.Wanted is not null).ToList();
        var equal = wanted.Count(p => !p.DiffersFromSheet);
        var words = Words($"{equal} of {wanted.Count} parameters of the sheet stand in the drive as asked for, {Proof(parameters)}.");
        return entry switch
        {
            { Begun: null } => new("Entry", StageState.NotDone, "Nothing was entered."),
            { Ended: null } => new("Entry", StageState.Open, $"Cut off before its end. {words}"),
            _ => new("Entry", equal == wanted.Count && entry.Ended.Body.Failed.Count == 0 ? StageState.Done : StageState.Open, words),
        };
    }

    private static string Proof(IReadOnlyList<ParameterRow> parameters) => parameters.Count(p => p is { Wanted: not null, DiffersFromSheet: false, SeenBy: not null }) switch
    {
        0 => "read back",
        var seen => Words($"{seen} of them verified by eye on its display"),
    };

    private static StageFact OfPowerCycle(EntryStory entry, IReadOnlyList<ParameterRow> parameters)
    {
        var (kept, lost) = (parameters.Count(p => p.IsKept == true), parameters.Count(p => p.IsKept == false));
        return entry switch
        {
            { Kept: not null } => new("Kept without power", lost == 0 ? StageState.Done : StageState.Open, Words($"{kept} of {kept + lost} {(entry.Kept.Body.SeenBy is null ? "read" : "seen on its display")} as the sheet asks after the drive was off and on.")),
            { Begun: null } => new("Kept without power", StageState.NotDone, "Nothing was entered."),
            _ => new("Kept without power", StageState.NotDone, "Not proved: the values were not read again after a power cycle."),
        };
    }

    private static StageFact OfSteps(string stage, IReadOnlyList<StepStory> steps)
    {
        var passed = steps.Count(s => s.IsPassed);
        return steps.Any(s => s.Attempts > 0)
            ? new(stage, passed == steps.Count ? StageState.Done : StageState.Open, Words($"{passed} of {steps.Count} steps passed."))
            : new(stage, StageState.NotDone, "Not begun.");
    }

    private static string List(IReadOnlyList<string> ids) => string.Join(", ", ids);

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
