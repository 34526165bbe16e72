namespace Runup.Commissioning.Checks;

/// <summary>Which stages the findings leave open.</summary>
/// <param name="EntryBlockedBy">Ids of the blockers that hold up entry.</param>
/// <param name="BumpBlockedBy">Ids of the blockers that hold up the first turn; contains those of entry.</param>
/// <param name="CoupledBlockedBy">Ids of the blockers that hold up running the machine; contains those of the first turn.</param>
public sealed record Verdict(IReadOnlyList<string> EntryBlockedBy, IReadOnlyList<string> BumpBlockedBy, IReadOnlyList<string> CoupledBlockedBy)
{
    /// <summary>Whether the settings may be entered.</summary>
    public bool MayBeEntered => EntryBlockedBy.Count == 0;

    /// <summary>Whether the motor may be turned for the first time.</summary>
    public bool MayBeBumped => BumpBlockedBy.Count == 0;

    /// <summary>Whether the machine may be run.</summary>
    public bool MayRunCoupled => CoupledBlockedBy.Count == 0;

    /// <summary>All blockers, in the order of the checks.</summary>
    public IReadOnlyList<string> BlockedBy => CoupledBlockedBy;

    /// <summary>The ids that hold up a stage.</summary>
    public IReadOnlyList<string> BlockersOf(Stage stage) => stage switch
    {
        Stage.Entry => EntryBlockedBy,
        Stage.Bump => BumpBlockedBy,
        Stage.Coupled => CoupledBlockedBy,
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "There is no such stage."),
    };

    /// <summary>The verdict of some results.</summary>
    public static Verdict Of(IReadOnlyList<CheckResult> results) =>
        new(Blockers(results, Stage.Entry), Blockers(results, Stage.Bump), Blockers(results, Stage.Coupled));

    private static List<string> Blockers(IReadOnlyList<CheckResult> results, Stage upTo)
    {
        var ids = new List<string>();
        foreach (var result in results)
        {
            if (result is CheckResult.Violated { Severity: Severity.Blocker } finding && finding.Blocks <= upTo && !ids.Contains(finding.Id))
            {
                ids.Add(finding.Id);
            }
        }

        return ids;
    }
}
