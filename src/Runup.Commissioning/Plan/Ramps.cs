using Runup.Commissioning.Checks;
using Runup.Engineering.Mechanics;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>How quickly up and down: as asked for where motor, drive and bus allow it, else the shortest with a fifth more.</summary>
internal static class Ramps
{
    private const double Tolerance = 0.03;
    private const double IfNothingIsKnown_s = 10;

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var up = context.Printed.Motion?.Acceleration as Acceleration.Reached;
        var down = context.Printed.Motion?.DecelerationAsEquipped as Deceleration.Stops;
        Ramp(plan, Setting.AccelerationTime, context.Job.Operation.Acceleration?.Value.Seconds, up?.Shortest, up?.ShortestRamp, "the current limit", "rides its current limit", "t = ∫ J dω/(T_available − T_load)");
        Ramp(plan, Setting.DecelerationTime, context.Job.Operation.Deceleration?.Value.Seconds, down?.Shortest, down?.ShortestRamp, context.Job.Drive.BrakingResistor is null ? "what losses and load take" : "what losses, load and resistor take", "stretches it", "t = ∫ J dω/(T_load + T_braking)");
    }

    private static void Ramp(PlanBuilder plan, Setting setting, double? asked, Duration? shortest, Duration? shortestRamp, string limit, string metOnTheWay, string formula)
    {
        var possible = shortest?.Seconds;
        if (asked is > 0 and var wish && !(possible * (1 - Tolerance) > wish))
        {
            plan.Number(setting, wish, Rank.Must, AsAsked(wish, possible, shortestRamp?.Seconds, limit, metOnTheWay), PlanBuilder.JobSource, possible, null);
            return;
        }

        if (shortestRamp is { Seconds: var ramp } constant)
        {
            var longer = KeyedRamp.After(constant);
            plan.Number(
                setting,
                longer,
                Rank.Must,
                asked is > 0
                    ? $"{Said.Number(asked.Value)} s are asked for, but {limit} allows a constant rate in {Said.Number(ramp)} s at the shortest; {Said.Number(longer)} s leaves a fifth in hand"
                    : $"nothing asked for; {limit} allows {Said.Number(ramp)} s at the shortest, and a fifth more is in hand",
                formula,
                ramp,
                null);
            return;
        }

        plan.Number(setting, asked is > 0 ? asked.Value : IfNothingIsKnown_s, Rank.Should, "nothing asked for and the inertia is not known: slow enough to begin with", PlanBuilder.Practice);
    }

    /// <summary>Why the ramp asked for is taken; where it meets a limit on the way, with the figure that the check names and not the shorter one along the limit.</summary>
    private static string AsAsked(double asked, double? possible, double? ramp, string limit, string metOnTheWay) => (possible, ramp) switch
    {
        (_, { } constant) when asked < constant * (1 - Tolerance) => $"asked for; the drive {metOnTheWay} for a part of it, since a constant rate would take {Said.Number(constant)} s",
        ({ } shortest, _) => $"asked for; the shortest within {limit} is {Said.Number(shortest)} s",
        _ => "asked for; whether it can be kept is not known",
    };
}
