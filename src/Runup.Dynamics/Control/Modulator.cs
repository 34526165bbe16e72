using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

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

    private static readonly double PeakPhasePerLine = Math.Sqrt(2.0 / 3);

    /// <summary>Peak of the phase voltage over the bus voltage, along and across the axis of the voltage curve.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Along, T Across) For<T>(in OutputVoltage<T> wanted, T busV)
        where T : struct, ILanes<T>
    {
        var bus = T.Max(busV, T.Of(1));
        var scale = T.Of(PeakPhasePerLine) / bus;
        var (most, square) = (LargestLineRatio * bus, (wanted.AlongV * wanted.AlongV) + (wanted.AcrossV * wanted.AcrossV));
        var beyond = T.Less(most * most, square);
        if (T.Any(beyond))
        {
            scale *= T.Choose(beyond, most / T.Sqrt(square), T.Of(1));
        }

        return (wanted.AlongV * scale, wanted.AcrossV * scale);
    }
}
