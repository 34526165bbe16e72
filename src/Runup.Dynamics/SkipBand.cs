using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>A band of output frequency at which the motor does not stay; ramps pass through it.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="Width">Its full width.</param>
public sealed record SkipBand(ElectricalFrequency Centre, ElectricalFrequency Width)
{
    // Where a centre is set and no width (common practice, no source).
    private const double UnstatedWidthHz = 2;

    private double LowHz => Centre.Hertz - (0.5 * Width.Hertz);

    private double HighHz => Centre.Hertz + (0.5 * Width.Hertz);

    /// <summary>The bands of the settings: every centre above zero, with its own width or the common one.</summary>
    internal static IReadOnlyList<SkipBand> From(SettingSet settings)
    {
        (Setting Centre, Setting Width)[] all =
        [
            (Setting.SkipFrequency1, Setting.SkipWidth1), (Setting.SkipFrequency2, Setting.SkipWidth2), (Setting.SkipFrequency3, Setting.SkipWidth3),
        ];
        return
        [
            .. from band in all
               let centreHz = settings.Number(band.Centre) ?? 0
               let widthHz = settings.Number(band.Width) ?? settings.Number(Setting.SkipWidth) ?? UnstatedWidthHz
               where centreHz > 0 && widthHz > 0
               select new SkipBand(ElectricalFrequency.FromHertz(centreHz), ElectricalFrequency.FromHertz(widthHz)),
        ];
    }

    /// <summary>The frequency to stay at instead of one asked for, both without sign: the edge of a band from which the motor comes, or of bands that overlap.</summary>
    internal static double Outside(IReadOnlyList<SkipBand> bands, double askedHz, double presentHz, double lowestHz, double highestHz)
    {
        var (low, high) = Around(bands, askedHz);
        if (low >= high)
        {
            return askedHz;
        }

        var above = (presentHz >= high || low < lowestHz) && high <= highestHz;
        return Math.Clamp(above ? high : low, lowestHz, highestHz);
    }

    /// <summary>Whether the bands leave no frequency between two.</summary>
    internal static bool CoverAll(IReadOnlyList<SkipBand> bands, double lowestHz, double highestHz) =>
        Around(bands, lowestHz) is var (low, high) && low < lowestHz && high > highestHz;

    /// <summary>The bands that hold a frequency, with those that overlap them; empty where none does.</summary>
    private static (double LowHz, double HighHz) Around(IReadOnlyList<SkipBand> bands, double hertz)
    {
        var (low, high) = (hertz, hertz);
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < bands.Count; i++)
            {
                var (bandLow, bandHigh) = (bands[i].LowHz, bands[i].HighHz);
                if (bandLow < high && bandHigh > low && (bandLow < low || bandHigh > high))
                {
                    (low, high, again) = (Math.Min(low, bandLow), Math.Max(high, bandHigh), true);
                }
            }
        }

        return (low, high);
    }
}
