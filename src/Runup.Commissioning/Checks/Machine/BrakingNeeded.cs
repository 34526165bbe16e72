using Runup.Engineering.Braking;
using Runup.Engineering.Mechanics;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Whether the stop asked for needs a braking resistor, and which.</summary>
internal sealed class BrakingNeeded() : Check("machine.braking-needed", Stage.Coupled)
{
    private const double Tolerance = 0.03;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Drive.BrakingResistor is not null)
        {
            return Fine("a braking resistor is named");
        }

        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether a braking resistor is needed");
        }

        var motion = context.Meant.Motion!;
        if (motion.Braking is not { } demand)
        {
            return Unknown("the ramp asked for (operation.deceleration)", "whether a braking resistor is needed");
        }

        return motion.DecelerationOnLosses is not Deceleration.Stops stops || demand.Time.Seconds >= stops.Shortest.Seconds * (1 - Tolerance)
            ? Fine($"a stop in {Said.Number(demand.Time.Seconds)} s brings at most {Said.Number(demand.Peak.Watts)} W to the DC bus")
            : Finding(context, demand, stops.Shortest.Seconds);
    }

    private CheckResult.Violated Finding(JobContext context, BrakingDemand demand, double shortest)
    {
        var range = BrakingResistor.For(context.Rating, demand);
        var ohms = (range.Lowest, range.Highest) switch
        {
            ({ } lowest, { } highest) when lowest.Ohms <= highest.Ohms => $"a resistor of {Said.Number(lowest.Ohms)} Ω to {Said.Number(highest.Ohms)} Ω",
            ({ } lowest, { } highest) => $"a larger drive: the peak asks for {Said.Number(highest.Ohms)} Ω at most, this chopper for {Said.Number(lowest.Ohms)} Ω at least",
            _ => "a drive with a braking chopper",
        };
        return new(Id, Severity.Note, Blocks, new Basis.Physics("P = (J·α − T_load)·ω less the losses of motor and drive"))
        {
            Title = "The stop asked for needs a braking resistor",
            Explanation = $"A stop in {Said.Number(demand.Time.Seconds)} s brings {Said.Number(demand.Energy.Joules / 1000)} kJ to the DC bus, {Said.Kilowatts(demand.Peak.Watts)} at its peak; without a resistor it takes {Said.Number(shortest)} s.",
            Remedy = $"Either {ohms}, or the slower stop.",
            Value = demand.Time.Seconds,
            Limit = shortest,
            Unit = "s",
        };
    }
}
