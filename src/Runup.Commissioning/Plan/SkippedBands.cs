using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Critical speeds of the machine left out, as many as drives usually can.</summary>
internal static class SkippedBands
{
    private static readonly (Setting Centre, Setting Width)[] Places =
        [(Setting.SkipFrequency1, Setting.SkipWidth1), (Setting.SkipFrequency2, Setting.SkipWidth2), (Setting.SkipFrequency3, Setting.SkipWidth3)];

    /// <summary>How many there is room for.</summary>
    internal static int Room => Places.Length;

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var bands = SkippedBand.InRange(context);
        foreach (var (band, place) in bands.Zip(Places))
        {
            plan.Number(place.Centre, band.Centre.Hertz, Rank.Must, $"the machine's critical speed of {Said.Number(band.Speed.Rpm, 4)} rpm, with the slip of its load", PlanBuilder.JobSource);
            plan.Number(place.Width, band.Width.Hertz, Rank.Must, "width of the band, through the gear", PlanBuilder.JobSource);
        }

        if (bands.Count > 0)
        {
            plan.Number(Setting.SkipWidth, bands.Max(band => band.Width.Hertz), Rank.May, "the widest, for a drive with one width for all bands", PlanBuilder.JobSource);
        }
    }
}
