using System.Collections.Immutable;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>What a set's record tells of the steps of its first run: which are done, and which was cut off.</summary>
internal sealed record StepHistory
{
    private StepHistory()
    {
    }

    /// <summary>Steps that are done, with how they ended: passed, skipped, or failed and gone on all the same.</summary>
    public ImmutableDictionary<string, string> Done { get; private init; } = ImmutableDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>The step that was begun by a person and is not ended; null where there is none.</summary>
    public string? UnderWay { get; private init; }

    /// <summary>Its readings.</summary>
    public ImmutableList<RecordBody.ReadingTaken> Readings { get; private init; } = [];

    /// <summary>Where the machine's real stop device is, as it was said last; null where it never was.</summary>
    public string? StopDevice { get; private init; }

    private string? LastFailed { get; init; }

    /// <summary>Folds a set's record, oldest first.</summary>
    public static StepHistory Of(IEnumerable<Recorded> record) => record.Aggregate(new StepHistory(), (history, entry) => history.And(entry.Body));

    /// <summary>The same without these steps, which are to be done again.</summary>
    public StepHistory Without(IEnumerable<string> steps) => this with { Done = Done.RemoveRange(steps) };

    /// <summary>Whether an uncoupled step was left out.</summary>
    public bool LeftOutUncoupled => Done.Any(d => IsUncoupled(d.Key) && d.Value is "skipped");

    private StepHistory And(RecordBody body) => body switch
    {
        RecordBody.StepBegun begun => Begun(begun),
        RecordBody.ReadingTaken reading when string.Equals(reading.Step, UnderWay, StringComparison.Ordinal) => this with { Readings = Readings.Add(reading) },
        RecordBody.StepEnded { Outcome: "passed" or "skipped" } ended => Ended() with { Done = Done.SetItem(ended.Step, ended.Outcome) },
        RecordBody.StepEnded ended => Ended() with { LastFailed = ended.Outcome is "failed" ? ended.Step : null },
        RecordBody.Confirmed { What: FirstRunCourse.GoOn } when LastFailed is { } failed => this with { Done = Done.SetItem(failed, "failed"), LastFailed = null },
        RecordBody.Confirmed { What: FirstRunPlan.StopTested, Note: { } note } => this with { StopDevice = note.Split(": ", 2)[^1] },
        _ => this,
    };

    // Who uncouples a machine that was coupled has to couple it again.
    private StepHistory Begun(RecordBody.StepBegun begun) => this with
    {
        Done = IsUncoupled(begun.Step) ? Done.Remove(begun.Step).Remove("couple") : Done.Remove(begun.Step),
        UnderWay = begun.RunBy is null ? null : begun.Step,
        Readings = [],
        LastFailed = null,
    };

    private StepHistory Ended() => this with { UnderWay = null, Readings = [], LastFailed = null };

    private static bool IsUncoupled(string step) => step.StartsWith("uncoupled", StringComparison.Ordinal);
}
