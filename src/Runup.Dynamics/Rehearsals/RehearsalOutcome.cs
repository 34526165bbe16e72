namespace Runup.Dynamics;

/// <summary>How a rehearsal ended: it ran, or could not be begun.</summary>
public abstract record RehearsalOutcome
{
    private RehearsalOutcome()
    {
    }

    /// <summary>It ran, to the end of the script, to a trip, or until the numbers ran away.</summary>
    /// <param name="Result">What was seen.</param>
    public sealed record Ran(RehearsalResult Result) : RehearsalOutcome;

    /// <summary>It was not begun.</summary>
    /// <param name="Problems">Everything that stands in the way.</param>
    public sealed record Refused(IReadOnlyList<SystemProblem> Problems) : RehearsalOutcome;
}
