using Runup.Commissioning.Checks;
using Runup.Engineering.Mechanics;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>How quickly up and down: as asked for where motor, drive and bus allow it, else the shortest with a fifth more.</summary>
internal static class Ramps
{
    private const double Margin = 1.2;
    private const double Tolerance = 0.03;
    private const double IfNothingIsKnown_s = 10;

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var up = context.Printed.Motion?.Acceleration as Acceleration.Reached;
        var down = context.Printed.Motion?.DecelerationAsEquipped as Deceleration.Stops;
        Ramp(plan, Setting.AccelerationTime, context.Job.Operation.Acceleration?.Value.Seconds, up?.Shortest, up?.ShortestRamp, "the current limit", "t = ∫ J dω/(T_available − T_load)");
        Ramp(plan, Setting.DecelerationTime, context.Job.Operation.Deceleration?.Value.Seconds, down?.Shortest, down?.ShortestRamp, "what losses, load and resistor take", "t = ∫ J dω/(T_load + T_braking)");
    }

    private static void Ramp(PlanBuilder plan, Setting setting, double? asked, Duration? shortest, Duration? shortestRamp, string limit, string formula)
    {
        var possible = shortest?.Seconds;
        if (asked is > 0 and var wish && !(possible * (1 - Tolerance) > wish))
        {
            plan.Number(setting, wish, Rank.Must, possible is { } s ? $"asked for; the shortest within {limit} is {Said.Number(s)} s" : "asked for; whether it can be kept is not known", PlanBuilder.JobSource, possible, null);
            return;
        }

        if (shortestRamp?.Seconds is { } ramp)
        {
            var longer = RoundedUp(Math.Max(ramp * Margin, 1));
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

    /// <summary>To two significant digits, upwards: nobody keys in 7.3641 s.</summary>
    private static double RoundedUp(double seconds)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(seconds)) - 1);
        return Math.Ceiling((seconds / step) - 1e-9) * step;
    }
}
