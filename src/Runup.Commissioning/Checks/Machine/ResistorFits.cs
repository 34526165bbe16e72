using Runup.Engineering.Braking;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>The braking resistor against the chopper, and against the stop asked for.</summary>
internal sealed class ResistorFits() : Check("machine.braking-resistor", Stage.Coupled)
{
    private const double Tolerance = 0.02;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Drive.BrakingResistor is not { } resistor)
        {
            return Fine("no braking resistor is named");
        }

        var ohms = resistor.Resistance.Value.Ohms;
        if (context.Rating.LowestBrakingResistance is not { } lowest)
        {
            return NoChopper(ohms);
        }

        if (ohms < lowest.Ohms * (1 - Tolerance))
        {
            return TooLow(ohms, lowest.Ohms);
        }

        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether the resistor takes the stop's peak and energy");
        }

        if (context.Meant.Motion!.Braking is not { } demand)
        {
            return Unknown("the ramp asked for (operation.deceleration)", "whether the resistor takes the stop's peak and energy");
        }

        var range = BrakingResistor.For(context.Rating, demand);
        return range.Highest is { } highest && ohms > highest.Ohms * (1 + Tolerance)
            ? TooHigh(ohms, highest.Ohms, demand.Peak.Watts)
            : OfItsPower(context, demand);
    }

    private CheckResult OfItsPower(JobContext context, BrakingDemand demand)
    {
        if (context.Job.Drive.BrakingResistor!.ContinuousPower?.Value.Watts is not { } continuous)
        {
            return Unknown("the resistor's continuous power (drive.braking-resistor)", "whether it overheats");
        }

        if (context.Job.Operation.StopsPerHour?.Value.Value is not { } stops)
        {
            return Unknown("how often it stops (operation.stops-per-hour)", "whether the resistor overheats");
        }

        var mean = BrakingResistor.MeanPower(demand.Energy, stops).Watts;
        return mean <= continuous
            ? Fine($"{Said.Number(mean)} W on average of its {Said.Number(continuous)} W, {Said.Kilowatts(demand.Peak.Watts)} at the peak")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.Physics("mean power = energy of a stop · stops per hour / 3600 s"))
            {
                Title = "The braking resistor overheats",
                Explanation = $"{Said.Number(stops)} stops an hour of {Said.Number(demand.Energy.Joules)} J each are {Said.Number(mean)} W; the resistor is for {Said.Number(continuous)} W.",
                Remedy = "A resistor for more continuous power, fewer stops, or slower ones.",
                Value = mean,
                Limit = continuous,
                Unit = "W",
            };
    }

    private CheckResult.Violated NoChopper(double ohms) =>
        new(Id, Severity.Blocker, Blocks, new Basis.MakersData("lowest braking resistance"))
        {
            Title = "A resistor on a drive without chopper",
            Explanation = $"The job names a braking resistor of {Said.Number(ohms)} Ω, and this size has no chopper for it.",
            Remedy = "A size with a chopper, or no resistor and a slower stop.",
        };

    private CheckResult.Violated TooLow(double ohms, double lowest) =>
        new(Id, Severity.Blocker, Blocks, new Basis.MakersData("lowest braking resistance"))
        {
            Title = "Braking resistor too low",
            Explanation = $"{Said.Number(ohms)} Ω would draw more than the chopper can switch; it is for {Said.Number(lowest)} Ω at least.",
            Remedy = $"A resistor of {Said.Number(lowest)} Ω or more.",
            Value = ohms,
            Limit = lowest,
            Unit = "Ω",
        };

    private CheckResult.Violated TooHigh(double ohms, double highest, double peak_W) =>
        new(Id, Severity.Caution, Blocks, new Basis.Physics("R ≤ U_chopper²/P_peak"))
        {
            Title = "Braking resistor too high",
            Explanation = $"The stop asked for brings {Said.Kilowatts(peak_W)} to the DC bus at its peak; {Said.Number(ohms)} Ω cannot take that at the chopper's level, so the bus rises on.",
            Remedy = $"At most {Said.Number(highest)} Ω, or a slower stop.",
            Value = ohms,
            Limit = highest,
            Unit = "Ω",
        };
}
