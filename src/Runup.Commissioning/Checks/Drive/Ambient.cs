namespace Runup.Commissioning.Checks.Drive;

/// <summary>Air temperature at the drive.</summary>
internal sealed class Ambient() : Check("drive.ambient", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var derating = context.Rating.AmbientDerating;
        if (context.Job.Place.Ambient?.Value is not { } ambient)
        {
            return Unknown("the air temperature at the drive (place.ambient)", $"its current above {Said.Celsius(derating.FullUpTo.Celsius)}");
        }

        return Derated.Judge(this, ambient.Celsius, derating.FullUpTo.Celsius, derating.Highest.Celsius, derating.LossPerSi, "°C", new(
            "ambient temperature", "Air at the drive", "Cool the cabinet, or a larger size.", "Cool the cabinet below it.", Said.Celsius));
    }
}
