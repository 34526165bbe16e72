namespace Runup.Dynamics.Control;

/// <summary>Modulation for an output voltage, within what the bus allows.</summary>
/// <remarks>
/// Six-step switching gives a fundamental of √6/π·v line to line, rms; the drive is taken to reach 95 % of that by overmodulation
/// (common practice, no source), which is about its supply voltage at full load. Linear modulation ends at v/√2.
/// </remarks>
internal static class Modulator
{
    /// <summary>Largest output voltage, line to line rms, over the bus voltage.</summary>
    internal static readonly double LargestLineRatio = 0.95 * Math.Sqrt(6) / Math.PI;

    /// <summary>Peak of the phase voltage over the bus voltage.</summary>
    internal static double For(double lineV, double busV) =>
        Math.Min(lineV / Math.Max(busV, 1), LargestLineRatio) * Math.Sqrt(2.0 / 3);
}
