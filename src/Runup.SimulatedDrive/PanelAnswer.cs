namespace Runup.SimulatedDrive;

/// <summary>What came of an order at the drive's own panel; a closed set.</summary>
public abstract record PanelAnswer
{
    private PanelAnswer()
    {
    }

    /// <summary>The drive follows it.</summary>
    public sealed record Followed : PanelAnswer;

    /// <summary>The drive does nothing.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record Ignored(string Why) : PanelAnswer;
}
