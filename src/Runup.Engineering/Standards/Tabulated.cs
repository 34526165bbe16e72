namespace Runup.Engineering.Standards;

/// <summary>A figure with the table that it stands in.</summary>
/// <typeparam name="T">What the figure is.</typeparam>
/// <param name="Value">The figure.</param>
/// <param name="Source">Standard and table.</param>
/// <param name="Certainty">How sure it is.</param>
public sealed record Tabulated<T>(T Value, string Source, Certainty Certainty)
{
    /// <summary>Recalled, not read.</summary>
    public bool FromMemory => Certainty == Certainty.Memory;
}
