namespace Runup.Commissioning.Checks.Drive;

/// <summary>Altitude of the site.</summary>
internal sealed class Altitude() : Check("drive.altitude", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var derating = context.Rating.AltitudeDerating;
        if (context.Job.Place.Altitude?.Value is not { } altitude)
        {
            return Unknown("the altitude of the site (place.altitude)", $"the drive's current above {Said.Metres(derating.FullUpTo.Metres)}");
        }

        return Derated.Judge(this, altitude.Metres, derating.FullUpTo.Metres, derating.Highest.Metres, derating.LossPerSi, "m", new(
            "altitude", "Altitude", "Count with the lower current, or a larger size.", "Ask the maker: clearances and cooling are not made for it.", Said.Metres));
    }
}
