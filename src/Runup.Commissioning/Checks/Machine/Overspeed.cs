using Runup.Quantities;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>The highest frequency against the machine's largest speed.</summary>
internal sealed class Overspeed() : Check("machine.overspeed", Stage.Bump)
{
    // Speeds are given to a per cent at best; the slip at full load is counted.
    private const double Tolerance = 0.01;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Machine.LargestSpeed?.Value is not { } largest)
        {
            return Unknown("the largest speed that the machine may have (machine.largest-speed)", "whether the highest frequency is too high for it");
        }

        if (context.Meant.Nameplate is not { } plate)
        {
            return Unknown(JobCheck.NoCircuit(context), "how fast the machine turns at the highest frequency");
        }

        var frequency = context.Job.Operation.MaximumFrequency.Value;
        var ratio = context.Job.Machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
        var slip_rpm = plate.SynchronousSpeed.Rpm - plate.Speed.Rpm;

        // A load that drives carries the motor as far beyond the field as one that brakes holds it back.
        var driven = context.Meant.Motion?.Regeneration is not null;
        var reached = ((120 * frequency.Hertz / plate.Poles.Poles) + (driven ? slip_rpm : -slip_rpm)) / ratio;
        return reached <= largest.Rpm * (1 + Tolerance)
            ? Fine($"{Said.Number(reached, 4)} rpm {(driven ? "with the load driving" : "at full load")} of the machine's {Said.Number(largest.Rpm, 4)} rpm")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.JobData("machine.largest-speed"))
            {
                Title = "Faster than the machine may turn",
                Explanation = $"{Said.Number(frequency.Hertz)} Hz turns the machine at {Said.Number(reached, 4)} rpm; it is for {Said.Number(largest.Rpm, 4)} rpm.",
                Remedy = $"A maximum frequency of {Said.Number(Allowed(largest, ratio, plate.Poles), 3)} Hz at most.",
                Value = reached,
                Limit = largest.Rpm,
                Unit = "rpm",
            };
    }

    private static double Allowed(ShaftSpeed largest, double ratio, PoleCount poles) => Math.Floor(largest.Rpm * ratio * poles.Poles / 120 * 10) / 10;
}
