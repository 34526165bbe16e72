namespace Runup.Dynamics;

/// <summary>Why a system can't be simulated as it is described.</summary>
/// <param name="Subject">The datum, in the words of the description.</param>
/// <param name="What">What is wrong with it, and what would do.</param>
public sealed record SystemProblem(string Subject, string What)
{
    /// <summary>The problem in one sentence.</summary>
    public override string ToString() => $"{Subject}: {What}";
}
