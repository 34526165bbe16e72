using Runup.Engineering.Mechanics;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>The deceleration asked for against the shortest that losses, load and resistor allow.</summary>
internal sealed class Stop() : Check("machine.deceleration", Stage.Coupled)
{
    private const double Tolerance = 0.03;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether the ramp down can be kept");
        }

        var asked = context.Job.Operation.Deceleration?.Value.Seconds;
        return context.Meant.Motion!.DecelerationAsEquipped switch
        {
            Deceleration.GetsAway away => GetsAway(away),
            Deceleration.Stops stops when asked is not > 0 => Unknown(
                "the ramp asked for (operation.deceleration)", $"whether it can be kept: the shortest is {Said.Number(stops.Shortest.Seconds)} s"),
            Deceleration.Stops stops => AgainstAsked(context, stops, asked.Value),
            _ => Unknown("a machine that runs at all (machine.torque-range)", "whether the ramp down can be kept"),
        };
    }

    private CheckResult AgainstAsked(JobContext context, Deceleration.Stops stops, double asked)
    {
        var (shortest, ramp) = (stops.Shortest.Seconds, stops.ShortestRamp.Seconds);
        if (asked >= ramp * (1 - Tolerance))
        {
            return Fine($"{Said.Number(asked)} s asked for; a constant rate needs {Said.Number(ramp)} s, at the limit all the way {Said.Number(shortest)} s would do");
        }

        var resistor = context.Job.Drive.BrakingResistor is not null;
        var tooShort = asked < shortest * (1 - Tolerance);
        return new CheckResult.Violated(Id, tooShort ? Severity.Caution : Severity.Note, Blocks, Basis(resistor))
        {
            Title = tooShort ? "Ramp down too short" : "Ramp down is stretched for a part",
            Explanation = tooShort
                ? $"{Said.Number(asked)} s are asked for, but {(resistor ? "losses, load and resistor" : "losses and load")} bring it to a stop in {Said.Number(shortest)} s at the earliest: the DC bus rises until the drive stretches the ramp or trips."
                : $"{Said.Number(asked)} s are asked for; a constant rate would lift the DC bus on the way unless it takes {Said.Number(ramp)} s, so the drive stretches it there. At the limit all the way the stop takes {Said.Number(shortest)} s.",
            Remedy = resistor
                ? $"A ramp of {Said.Number(KeyedRamp.After(stops.ShortestRamp))} s or longer, or a resistor for more power."
                : $"A ramp of {Said.Number(KeyedRamp.After(stops.ShortestRamp))} s or longer, coasting, or a braking resistor (machine.braking-needed).",
            Value = asked,
            Limit = tooShort ? shortest : ramp,
            Unit = "s",
        };
    }

    private CheckResult.Violated GetsAway(Deceleration.GetsAway away) =>
        new(Id, Severity.Blocker, Blocks, new Basis.Physics("the load drives harder than losses and braking take"))
        {
            Title = "The load runs away",
            Explanation = $"At {Said.Number(away.At.Rpm)} rpm the load drives on harder than the motor can brake ({Said.Torque(-away.Braking.NewtonMetres)} without lifting the DC bus).",
            Remedy = "A braking resistor sized for the load, or a larger drive.",
            Value = null,
            Limit = null,
            Unit = null,
        };

    private static Basis.Physics Basis(bool resistor) => new(resistor
        ? "t = ∫ J dω/(T_load + T_braking), the motor feeding back no more than the drive's losses and U²/R"
        : "t = ∫ J dω/(T_load + T_braking), the motor feeding back no more than the drive's losses");
}
