using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Whether it ever starts by itself.</summary>
internal static class Restarting
{
    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var asked = context.Job.Operation.RestartAfterPowerLoss?.Value;
        plan.Choice(
            Setting.RestartAfterPowerLoss,
            asked == true ? "on" : "off",
            Rank.Must,
            asked switch
            {
                true => "asked for: the machine starts with nobody at it (control.restart)",
                false => "asked for: it stays stopped until somebody starts it",
                null => "nothing is said, so it stays stopped",
            },
            asked is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
        plan.Number(Setting.AutomaticReset, 0, Rank.Must, "a trip is looked into before it is reset", PlanBuilder.Practice, 0, 0);
    }
}
