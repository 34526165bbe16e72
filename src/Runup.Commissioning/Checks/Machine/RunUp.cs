using Runup.Engineering.Mechanics;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>The acceleration asked for against the shortest at the drive's current limit.</summary>
internal sealed class RunUp() : Check("machine.acceleration", Stage.Coupled)
{
    // Within the knowledge of the inertia nothing is said.
    private const double Tolerance = 0.03;

    private static readonly Basis Integration = new Basis.Physics("t = ∫ J dω/(T_available − T_load), along the drive's current limit");

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether the ramp up can be kept");
        }

        var asked = context.Job.Operation.Acceleration?.Value.Seconds;
        return context.Meant.Motion!.Acceleration switch
        {
            Acceleration.Stalls { At.RadiansPerSecond: 0 } => Unknown("a machine that breaks away (machine.breakaway)", "how long the run-up takes"),
            Acceleration.Stalls => Unknown("a machine that comes up to speed (machine.torque-range)", "how long the run-up takes"),
            Acceleration.Reached reached when asked is not > 0 => Unknown(
                "the ramp asked for (operation.acceleration)", $"whether it can be kept: the shortest is {Said.Number(reached.Shortest.Seconds)} s"),
            Acceleration.Reached reached => AgainstAsked(context, reached, asked.Value),
            _ => Unknown("the machine's inertia (machine.inertia)", "whether the ramp up can be kept"),
        };
    }

    private CheckResult AgainstAsked(JobContext context, Acceleration.Reached reached, double asked)
    {
        var (shortest, ramp) = (reached.Shortest.Seconds, reached.ShortestRamp.Seconds);
        if (asked >= ramp * (1 - Tolerance))
        {
            return Fine($"{Said.Number(asked)} s asked for, {Said.Number(shortest)} s possible");
        }

        var tooShort = asked < shortest * (1 - Tolerance);
        return new CheckResult.Violated(Id, tooShort ? Severity.Caution : Severity.Note, Blocks, Integration)
        {
            Title = tooShort ? "Ramp up too short" : "Ramp up meets the current limit",
            Explanation = tooShort
                ? $"{Said.Number(asked)} s are asked for, but with {Said.Number(context.Meant.CurrentLimit.Amperes)} A it takes at least {Said.Number(shortest)} s: the drive would ride its current limit and may trip."
                : $"{Said.Number(asked)} s are asked for; a constant rate meets the current limit of {Said.Number(context.Meant.CurrentLimit.Amperes)} A on the way unless it takes {Said.Number(ramp)} s.",
            Remedy = $"A ramp of {Said.Number(KeyedRamp.After(reached.ShortestRamp))} s or longer, or a drive with more overload current.",
            Value = asked,
            Limit = tooShort ? shortest : ramp,
            Unit = "s",
        };
    }
}
