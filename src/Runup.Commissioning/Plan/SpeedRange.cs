using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>How fast, how slow, which way.</summary>
internal static class SpeedRange
{
    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var operation = context.Job.Operation;
        plan.Number(Setting.MaximumFrequency, operation.MaximumFrequency.Value.Hertz, Rank.Must, "highest frequency asked for", PlanBuilder.JobSource, null, HighestPermitted(context));
        plan.Number(
            Setting.MinimumFrequency,
            operation.MinimumFrequency?.Value.Hertz ?? 0,
            operation.MinimumFrequency is null ? Rank.May : Rank.Should,
            operation.MinimumFrequency is null ? "none asked for" : "lowest running frequency asked for",
            operation.MinimumFrequency is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
        var both = string.Equals(operation.Directions?.Value, "both", StringComparison.Ordinal);
        plan.Choice(
            Setting.PermittedDirection,
            both ? "both" : "forward",
            Rank.Must,
            both ? "both directions are asked for" : operation.Directions is null ? "nothing is said of reverse, so it is locked" : "forward only is asked for",
            operation.Directions is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
        plan.Number(
            Setting.SwitchingFrequency,
            context.Conditions.Switching.Hertz,
            Rank.Should,
            context.Job.Drive.SwitchingFrequency is null ? "highest at which the drive has its full current" : $"asked for; the drive has {Said.Number(context.Conditions.Continuous.Amperes)} A there",
            context.Job.Drive.SwitchingFrequency is null ? "drive profile" : PlanBuilder.JobSource);
    }

    /// <summary>What the machine's largest speed allows.</summary>
    private static double? HighestPermitted(JobContext context)
    {
        var ratio = context.Job.Machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
        return context.Job.Machine.LargestSpeed?.Value.Rpm * ratio * context.Nameplate?.Poles.Poles / 120;
    }
}
