namespace Runup.Commissioning.Checks;

/// <summary>Something that was taken because nobody said it.</summary>
/// <param name="What">What was taken.</param>
/// <param name="Value">The value with its unit, or the choice.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Assumption(string What, string Value, string Source);
