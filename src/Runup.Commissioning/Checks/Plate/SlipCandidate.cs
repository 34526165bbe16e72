namespace Runup.Commissioning.Checks.Plate;

/// <summary>One slip of the pen that may have been made, undone.</summary>
/// <param name="What">What is to be read instead, in words.</param>
/// <param name="Meant">The plate with the slip undone.</param>
/// <param name="Prior">How often such a slip is made, relative to the others, before the figures are looked at.</param>
/// <param name="Kind">The slip that it undoes, where that has a factor of its own.</param>
internal sealed record SlipCandidate(string What, PlateFigures Meant, double Prior, MagnitudeSlip? Kind = null)
{
    /// <summary>Whether the value meant is only reckoned from the rest, so that how well it fits says nothing.</summary>
    internal bool IsReckoned { get; init; }

    /// <summary>Whether it changes nothing: no single slip was made.</summary>
    internal bool IsNone { get; init; }
}
