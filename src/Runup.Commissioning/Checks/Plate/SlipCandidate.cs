namespace Runup.Commissioning.Checks.Plate;

/// <summary>One slip of the pen that may have been made, undone.</summary>
/// <param name="What">What is to be read instead, in words.</param>
/// <param name="Meant">The plate with the slip undone.</param>
/// <param name="Prior">How often such a slip is made, relative to the others, before the figures are looked at.</param>
internal sealed record SlipCandidate(string What, PlateFigures Meant, double Prior);
