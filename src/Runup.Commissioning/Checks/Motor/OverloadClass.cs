using Runup.Engineering.Mechanics;
using Runup.Engineering.Standards;

namespace Runup.Commissioning.Checks.Motor;

/// <summary>Whether the motor's overload protection of class 10 lets the run-up pass.</summary>
internal sealed class OverloadClass() : Check("motor.overload-class", Stage.Coupled)
{
    private const string Planned = "10";
    private const double NoTripBelow = 1.05;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForRamps(context) is { } missing)
        {
            return Unknown(missing, "whether the motor's overload protection lets the run-up pass");
        }

        if (context.Job.Operation.Acceleration?.Value is not { Seconds: > Motion.ShortestRampS and < Motion.LongestRampS } asked || context.Meant.Motion!.Acceleration is not Acceleration.Reached)
        {
            return Unknown("a ramp asked for (operation.acceleration) and a machine that comes up to speed", "whether the motor's overload protection lets the run-up pass");
        }

        var ratio = RampCurrent.Highest(context.Meant.Motion, asked) / context.Meant.Nameplate!.Current.Amperes;
        if (ratio <= NoTripBelow || TripClass.Of(Planned) is not { } planned)
        {
            return Fine($"run-up takes {Said.Percent(ratio)} of the motor's current");
        }

        var trips = planned.TripTime(ratio).Seconds;
        return asked.Seconds < trips
            ? Fine($"{Said.Percent(ratio)} of the motor's current for {Said.Number(asked.Seconds)} s; class {Planned} lets it pass for {Said.Number(trips)} s")
            : new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.CommonPractice($"class {Planned} trips after {Planned} s at six times its setting, and with the square of the current"))
            {
                Title = "The motor's overload protection may trip at run-up",
                Explanation = $"Run-up takes {Said.Percent(ratio)} of the motor's current for {Said.Number(asked.Seconds)} s; protection of class {Planned} trips after {Said.Number(trips)} s.",
                Remedy = "A ramp that needs less current, or a slower class if the maker of the motor allows.",
                Value = asked.Seconds,
                Limit = trips,
                Unit = "s",
            };
    }
}
