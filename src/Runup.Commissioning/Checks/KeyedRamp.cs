using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The ramp that a person is told to key in where the one asked for can't be kept: checks and settings name the same.</summary>
internal static class KeyedRamp
{
    // Inertia and load are seldom known better.
    private const double Margin = 1.2;
    private const double Shortest_s = 1;

    /// <summary>The shortest ramp at a constant rate with a fifth in hand, in s, to two significant digits upwards: nobody keys in 7.3641 s.</summary>
    internal static double After(Duration shortestRamp)
    {
        var seconds = Math.Max(shortestRamp.Seconds * Margin, Shortest_s);
        var step = Math.Pow(10, Math.Floor(Math.Log10(seconds)) - 1);
        return Math.Ceiling((seconds / step) - 1e-9) * step;
    }
}
