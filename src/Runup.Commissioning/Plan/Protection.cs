using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>What keeps motor and drive from harm.</summary>
internal static class Protection
{
    private static readonly string[] Sensors = ["none", "ptc", "switch"];

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var rated_A = context.Job.Motor.Plate.Current.Value.Amperes;
        CurrentLimit(plan, context, rated_A);
        plan.Number(
            Setting.MotorOverloadCurrent,
            context.MotorCount * rated_A,
            Rank.Must,
            context.MotorCount > 1 ? $"{context.MotorCount} motors of {Said.Number(rated_A)} A; each needs an overload relay of its own besides" : "rated current on the plate; the service factor is not used on a drive",
            PlanBuilder.PlateSource,
            null,
            context.MotorCount * rated_A);
        plan.Choice(Setting.OverloadTripClass, "10", Rank.Should, "run-up on a drive needs no slower class", "IEC 60947-4-1, class 10");
        MotorCooling(plan, context);
        var sensor = context.Job.Motor.ThermalSensor?.Value ?? "none";
        if (Sensors.Contains(sensor, StringComparer.Ordinal))
        {
            plan.Choice(
                Setting.MotorThermalSensor,
                sensor,
                sensor == "none" ? Rank.May : Rank.Must,
                sensor == "none" ? "no sensor in the winding is named" : "the winding has one; it sees what the thermal model cannot",
                context.Job.Motor.ThermalSensor is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
        }

        PhaseLoss(plan, context);
        plan.Choice(Setting.OutputPhaseLoss, "trip", Rank.Should, "a lost motor phase burns the motor at standstill", PlanBuilder.Practice);
        plan.Choice(Setting.EarthFault, "trip", Rank.Should, "an earth fault at the output is switched off at once", PlanBuilder.Practice);
    }

    private static void PhaseLoss(PlanBuilder plan, JobContext context)
    {
        if (context.Rating.SupplyPhases == 1)
        {
            plan.Choice(Setting.PhaseLoss, "off", Rank.Should, "a drive for a single-phase supply has no second phase to lose", PlanBuilder.Practice);
            return;
        }

        plan.Choice(Setting.PhaseLoss, "trip", Rank.Should, "a lost supply phase overloads the rectifier and the capacitors", PlanBuilder.Practice);
    }

    private static void CurrentLimit(PlanBuilder plan, JobContext context, double rated_A)
    {
        // In whole per cent of the motor's current, downwards: many drives take it so, and none then gets more than it can carry.
        var motors_A = context.MotorCount * rated_A;
        var limit = context.Printed.CurrentLimit.Amperes;
        var whole = motors_A > 0 ? Math.Floor((limit / motors_A * 100) + 1e-6) / 100 * motors_A : limit;
        var byDrive = limit >= context.Conditions.Overload.Amperes;
        plan.Number(
            Setting.CurrentLimit,
            whole > 0 ? whole : limit,
            Rank.Must,
            byDrive
                ? $"the drive's {context.Conditions.Cycle.Name} overload, {Said.Number(context.Conditions.Continuous.Amperes)} A · {Said.Number(context.Conditions.Cycle.Overload.Ratio)} = {Said.Number(context.Conditions.Overload.Amperes)} A, in whole per cent of the motor's current"
                : $"{Said.Percent(limit / motors_A)} of the motor's {Said.Number(motors_A)} A; the drive could give {Said.Number(context.Conditions.Overload.Amperes)} A",
            byDrive ? "drive profile, overload cycle" : PlanBuilder.Practice,
            null,
            context.Conditions.Overload.Amperes);
    }

    private static void MotorCooling(PlanBuilder plan, JobContext context)
    {
        var code = context.Job.Motor.Plate.Cooling?.Value;
        var own = Cooling.HasOwnFan(context.Job);
        plan.Choice(
            Setting.MotorCooling,
            own == true ? "separate-fan" : "shaft-fan",
            Rank.Must,
            own switch
            {
                true => $"{code}: cooled at every speed",
                false => $"{code}: the fan sits on the shaft, so the thermal model must count less cooling at low speed",
                null => "nothing usable is said of cooling: the cautious choice",
            },
            own is null ? PlanBuilder.Practice : "IEC 60034-6 (from memory)");
    }
}
