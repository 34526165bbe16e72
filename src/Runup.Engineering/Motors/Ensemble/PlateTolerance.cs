using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>By how much a motor may be off its plate.</summary>
/// <remarks>
/// Slip ±20 % from 1 kW up, ±30 % below; power factor −(1 − cos φ)/6, at least 0.02, at most 0.07; losses +15 % up to 150 kW, +10 % above, as −15 % or −10 % of
/// (1 − η). These are guarantees, not distributions. Assumed: normal around the declared value, the tolerance being two standard deviations, to both sides.
/// </remarks>
/// <param name="Slip">Of the slip, relative.</param>
/// <param name="PowerFactor">Of the power factor, absolute.</param>
/// <param name="Losses">Of 1 − η, relative.</param>
[Source("iec-60034-1", "schedule of tolerances")]
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PlateTolerance(double Slip, double PowerFactor, double Losses)
{
    internal static PlateTolerance For(double output_W, double powerFactor, PlateTrust trust) => trust == PlateTrust.Exact
        ? default
        : new PlateTolerance(
            output_W < 1000 ? 0.30 : 0.20,
            Math.Clamp((1 - powerFactor) / 6, 0.02, 0.07),
            output_W > 150_000 ? 0.10 : 0.15);
}
