namespace Runup.Commissioning.Checks.Motor;

/// <summary>Explosive atmospheres.</summary>
internal sealed class ExplosiveAtmosphere() : Check("motor.explosive-atmosphere", Stage.Entry)
{
    private static readonly string[] None = ["none", "no", "false", "safe", "-"];

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Place.ExplosiveZone?.Value is not { } zone)
        {
            return Unknown("whether the motor stands in an explosive atmosphere (place.explosive-zone)", "whether this motor may be run by a drive at all");
        }

        return None.Contains(zone.Trim(), StringComparer.OrdinalIgnoreCase)
            ? Fine("no explosive atmosphere")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.SafetyRule("a motor in an explosive atmosphere is run only by a converter assessed together with it for the zone"))
            {
                Title = "Explosive atmosphere",
                Explanation = $"The motor stands in zone {zone}: it needs a motor-converter pair assessed for the zone, which this tool does not judge.",
                Remedy = "Stop here; take the certificate of the pair, and the people who are licensed for it.",
            };
    }
}
