using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Profiles;

namespace Runup.Commissioning.Handover;

/// <summary>Something that whoever takes over must know, because it is not done, not proved, or not as it should be.</summary>
/// <param name="Subject">What it is about.</param>
/// <param name="Words">What is open, in a sentence.</param>
public sealed record OpenPoint(string Subject, string Words);

/// <summary>Finds what is open, the gravest first.</summary>
internal static class OpenPoints
{
    // More than these would bury what else is open.
    private const int FewToName = 8;

    public static IReadOnlyList<OpenPoint> Of(HandoverSources sources, RecordStory story, IReadOnlyList<ParameterRow> parameters, IReadOnlyList<StepStory> steps) =>
    [
        .. FindingPoints.Of(sources.Checks, story),
        .. JobFile(sources, story),
        .. Entry(story.Entry, parameters, EntrySheet.From(sources.Sheet).Sha256),
        .. ByEye(story.Entry, parameters),
        .. Parameters(parameters),
        .. Settings(sources.Plan, sources.Sheet),
        .. Steps(steps),
        .. FindingPoints.OfUndecided(sources.Checks, story),
    ];

    private static IEnumerable<OpenPoint> JobFile(HandoverSources sources, RecordStory story)
    {
        if (story.Job is { } taken && sources.JobSha256 is { } now && !string.Equals(taken.Body.Sha256, now, StringComparison.OrdinalIgnoreCase))
        {
            yield return new("Job file", "It was changed after work began: survey, findings and settings here are of the file as it is now, the record began with another.");
        }
    }

    private static IEnumerable<OpenPoint> Entry(EntryStory entry, IReadOnlyList<ParameterRow> parameters, string sheetSha256)
    {
        if (entry.Begun is null)
        {
            yield return new("Entry", "Nothing was entered into the drive.");
        }
        else if (entry.Ended is null)
        {
            yield return new("Entry", "It was cut off and not ended. Enter the sheet again: it goes on where it stopped.");
        }
        else if (entry.Kept is null)
        {
            yield return new("Kept without power", "It is not proved that the drive keeps its values without power.");
        }
        else if (parameters.Where(p => p.IsKept == false).ToList() is { Count: > 0 } lost)
        {
            var names = string.Join(", ", lost.Select(p => $"{p.Number} {p.Name}"));
            yield return string.Equals(entry.SheetSha256, sheetSha256, StringComparison.OrdinalIgnoreCase)
                ? new("Kept without power", $"After the drive was off and on these were not as the sheet asks: {names}.")
                : new("Another sheet", $"What was entered last is not this sheet: the drive was put back to as found, or the job was changed since. Not as this sheet asks: {names}.");
        }
    }

    private static IEnumerable<OpenPoint> ByEye(EntryStory entry, IReadOnlyList<ParameterRow> parameters)
    {
        var seen = parameters.Where(p => p is { Wanted: not null, DiffersFromSheet: false, SeenBy: not null }).ToList();
        if (seen.Count > 0)
        {
            var kept = entry.Kept is { Body.SeenBy: not null } ? " That the drive keeps what was entered without power was seen so, too." : "";
            yield return new("Verified by eye", string.Create(CultureInfo.InvariantCulture, $"Of {seen.Count} parameters of the sheet it was seen on the drive's display that they are as asked for, by {string.Join(" and ", seen.Select(p => p.SeenBy).Distinct(StringComparer.Ordinal))}; they were not read back over a link.{kept}"));
        }

        if (parameters.Count(p => p.IsNotLookedAt) is > 0 and var unknown)
        {
            yield return new("Not looked at", string.Create(CultureInfo.InvariantCulture, $"Of {unknown} parameters nothing is known: nobody looked at them on the display."));
        }
    }

    private static IEnumerable<OpenPoint> Parameters(IReadOnlyList<ParameterRow> parameters)
    {
        foreach (var p in parameters.Where(p => p.Why is not null))
        {
            yield return new($"Parameter {p.Number} {p.Name}", $"Its last write ended {p.Written}: {Sentence(p.Why!)}{(p.DiffersFromSheet ? $" {Held(p)}" : string.Empty)}");
        }

        foreach (var p in parameters.Where(p => p is { Why: null, Written: not null, DiffersFromSheet: true }))
        {
            yield return new($"Parameter {p.Number} {p.Name}", $"It was last written to {p.LastWritten}. {Held(p)}");
        }

        var never = parameters.Where(p => p is { Written: null, DiffersFromSheet: true }).ToList();
        if (never.Count > 0)
        {
            yield return new("Not entered", never.Count <= FewToName
                ? string.Join(" ", never.Select(p => $"{p.Number} {p.Name}: {Held(p)}"))
                : $"{never.Count} parameters of the sheet are other in the drive, or what it holds is not known: {string.Join(", ", never.Select(p => p.Number))}. Their values stand in part 4, or on the sheet.");
        }
    }

    private static string Held(ParameterRow p) => $"The sheet says {p.Wanted}, the drive holds {p.AsLeft ?? "a value that is not known"}.";

    private static IEnumerable<OpenPoint> Settings(SettingsPlan plan, IReadOnlyList<SheetLine> sheet) =>
        from line in sheet
        where line.Mapping is Mapping.NotOffered or Mapping.NeedsChoice
        from setting in line.Settings
        where plan[setting] is { Rank: Rank.Must or Rank.Should }
        select new OpenPoint(setting.Name, line.Mapping == Mapping.NotOffered
            ? "The drive has no parameter for it; see to it by other means, or accept that it is not in force."
            : $"A person has to choose its value: {Sentence(line.Note ?? "see the drive's manual")}");

    private static IEnumerable<OpenPoint> Steps(IReadOnlyList<StepStory> steps)
    {
        var never = steps.Where(s => s.Attempts == 0).ToList();
        foreach (var step in steps.Where(s => s.Attempts > 0 && !s.IsPassed))
        {
            yield return new($"Step: {step.Title.TrimEnd('.')}", step.Ended is { } ended
                ? $"It {Ended(ended.Outcome)}{(ended.Remark is { } remark ? $": {Sentence(remark)}" : ".")}"
                : "It was begun, and the record breaks off before its end.");
        }

        if (never.Count > 0 && never.Count == steps.Count)
        {
            yield return new("First run", "No step of it was done: the motor was not run under Runup.");
        }
        else if (never.Count > 0)
        {
            var coupled = steps.Where(s => s.IsCoupled).ToList();
            var nothing = coupled.Count > 0 && coupled.TrueForAll(s => s.Attempts == 0) ? "The motor was not run coupled to its machine. " : string.Empty;
            yield return new("First run", $"{nothing}Not done: {string.Join("; ", never.Select(s => s.Title.TrimEnd('.')))}.");
        }
        else if (steps.Count == 0)
        {
            yield return new("First run", "None is on record.");
        }
    }

    private static string Ended(string outcome) => outcome switch
    {
        "failed" => "failed",
        "skipped" => "was skipped",
        "stopped" => "was stopped",
        _ => $"ended as {outcome}",
    };

    internal static string Sentence(string text) => text.Length == 0 || text[^1] is '.' or '!' or '?' ? text : $"{text}.";
}
