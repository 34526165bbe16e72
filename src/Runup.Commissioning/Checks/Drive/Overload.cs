using Runup.Engineering.Mechanics;

namespace Runup.Commissioning.Checks.Drive;

/// <summary>Run-up and breakaway against the drive's overload cycle: how much, how long, how often.</summary>
internal sealed class Overload() : Check("drive.overload", Stage.Coupled)
{
    private const double SecondsPerHour = 3600;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether run-up stays within the drive's overload time");
        }

        if (context.Job.Operation.Acceleration?.Value is not { Seconds: > Motion.ShortestRampS and < Motion.LongestRampS } asked)
        {
            return Unknown("the ramp asked for (operation.acceleration)", "how long the drive is in overload at each start");
        }

        var motion = context.Meant.Motion!;
        if (motion.Acceleration is not Acceleration.Reached)
        {
            return Unknown("a machine that comes up at all (machine.breakaway, machine.torque-range)", "whether run-up stays within the drive's overload time");
        }

        var needed = context.MotorCount * RampCurrent.Highest(motion, asked);
        var (continuous, cycle) = (context.Conditions.Continuous.Amperes, context.Conditions.Cycle);
        if (needed <= continuous)
        {
            return Fine($"run-up in {Said.Number(asked.Seconds)} s takes at most {Said.Number(needed)} A, within the continuous {Said.Number(continuous)} A");
        }

        var starts = Math.Max(1, context.Job.Operation.StopsPerHour?.Value.Value ?? 1);
        return asked.Seconds > cycle.For.Seconds ? TooLong(needed, continuous, asked.Seconds, cycle.For.Seconds)
            : starts > SecondsPerHour / cycle.Every.Seconds ? TooOften(needed, continuous, starts, SecondsPerHour / cycle.Every.Seconds)
            : Fine($"up to {Said.Number(needed)} A for {Said.Number(asked.Seconds)} s of the {Said.Number(cycle.For.Seconds)} s that the {cycle.Name} rating allows in {Said.Number(cycle.Every.Seconds)} s");
    }

    private CheckResult.Violated TooLong(double needed, double continuous, double asked, double allowed) =>
        new(Id, Severity.Caution, Blocks, new Basis.MakersData("overload cycle"))
        {
            Title = "Run-up longer than the drive's overload time",
            Explanation = $"Run-up takes {Said.Number(needed)} A, above the continuous {Said.Number(continuous)} A, for {Said.Number(asked)} s; the drive allows an overload for {Said.Number(allowed)} s.",
            Remedy = "A ramp slow enough to need no overload, or a larger size.",
            Value = asked,
            Limit = allowed,
            Unit = "s",
        };

    private CheckResult.Violated TooOften(double needed, double continuous, double starts, double allowed) =>
        new(Id, Severity.Caution, Blocks, new Basis.MakersData("overload cycle"))
        {
            Title = "More starts than the drive's overload cycle allows",
            Explanation = $"Each run-up takes {Said.Number(needed)} A, above the continuous {Said.Number(continuous)} A, {Said.Number(starts)} times an hour; the drive allows an overload {Said.Number(allowed)} times.",
            Remedy = "Slower ramps, fewer starts, or a larger size.",
            Value = starts,
            Limit = allowed,
            Unit = "1/h",
        };
}
