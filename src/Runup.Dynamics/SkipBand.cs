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

    /// <summary>The frequency to stay at instead of one asked for, both without sign: the edge of a band from which the motor comes.</summary>
    internal static double Outside(IReadOnlyList<SkipBand> bands, double askedHz, double presentHz, double lowestHz, double highestHz)
    {
        for (var i = 0; i < bands.Count; i++)
        {
            var (low, high) = (bands[i].LowHz, bands[i].HighHz);
            if (askedHz > low && askedHz < high)
            {
                var above = (presentHz >= high || low < lowestHz) && high <= highestHz;
                return Math.Clamp(above ? high : low, lowestHz, highestHz);
            }
        }

        return askedHz;
    }
}
