namespace Runup.Engineering;

/// <summary>Something that a calculation took for granted because nobody gave it.</summary>
/// <param name="What">What was assumed, in the trade's words.</param>
/// <param name="Value">The value with its unit, for people.</param>
/// <param name="Source">Standard and table, or "common practice, no source".</param>
/// <param name="FromMemory">The source was recalled, not read.</param>
public sealed record Assumption(string What, string Value, string Source, bool FromMemory)
{
    /// <summary>The source of what everyone does and nobody wrote down.</summary>
    public const string CommonPractice = "common practice, no source";
}
