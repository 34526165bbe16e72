using Runup.Engineering;

namespace Runup.Commissioning.Checks;

/// <summary>All that checking a set says.</summary>
/// <param name="Results">One for each check, in the order of the list.</param>
/// <param name="Assumptions">Everything that was taken because nobody said it.</param>
public sealed record CheckReport(IReadOnlyList<CheckResult> Results, IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Which stages the findings leave open.</summary>
    public Verdict Verdict { get; } = Verdict.Of(Results);

    /// <summary>The findings, heaviest first, then in the order of the checks.</summary>
    public IReadOnlyList<CheckResult.Violated> Findings { get; } =
        [.. Results.OfType<CheckResult.Violated>().OrderByDescending(f => f.Severity)];

    /// <summary>What cannot be said.</summary>
    public IReadOnlyList<CheckResult.Undecided> Undecided { get; } = [.. Results.OfType<CheckResult.Undecided>()];

    /// <summary>Whether the load can drive the motor: then Runup sends it no run command.</summary>
    public bool LoadDrivesMotor => Results.Any(r => r is { Id: "machine.overhauling" } and not CheckResult.Satisfied);

    /// <summary>How many checks had nothing to object to.</summary>
    public int SatisfiedCount => Results.Count - Findings.Count - Undecided.Count;
}
