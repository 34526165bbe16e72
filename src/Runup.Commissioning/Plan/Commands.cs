using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Who starts it, who sets the speed, and what a silent bus does.</summary>
internal static class Commands
{
    private const double UsualTimeOut_s = 1;

    private static readonly string[] RunSources = ["panel", "terminals", "bus"];
    private static readonly string[] References = ["panel", "analogue-1", "analogue-2", "bus", "fixed", "process"];
    private static readonly string[] LossActions = ["none", "coast", "ramp", "hold"];
    private static readonly string[] Parities = ["none", "even", "odd"];

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var (control, bus) = (context.Job.Control, context.Job.Bus);
        Source(plan, Setting.FrequencyReferenceSource, control.ReferenceFrom?.Value, References, "control.reference-from");
        if (bus.Kind?.Value is not (null or "none"))
        {
            Station(plan, context);
        }

        if (control.RunFrom?.Value == "bus" || control.ReferenceFrom?.Value == "bus")
        {
            BusLoss(plan, context);
        }

        Source(plan, Setting.RunCommandSource, control.RunFrom?.Value, RunSources, "control.run-from");
    }

    private static void Source(PlanBuilder plan, Setting setting, string? value, string[] choices, string key)
    {
        if (value is not null && choices.Contains(value, StringComparer.Ordinal))
        {
            plan.Choice(setting, value, Rank.Must, $"asked for by {key}", PlanBuilder.JobSource);
        }
    }

    private static void Station(PlanBuilder plan, JobContext context)
    {
        var bus = context.Job.Bus;
        if (bus.Address?.Value is { } address)
        {
            plan.Number(Setting.StationAddress, address, Rank.Must, "the control system calls it so", PlanBuilder.JobSource);
        }

        if (bus.Baud?.Value is { } baud)
        {
            plan.Number(Setting.BaudRate, baud, Rank.Must, "as on the rest of the line", PlanBuilder.JobSource);
        }

        if (bus.Parity?.Value is { } parity && Parities.Contains(parity, StringComparer.Ordinal))
        {
            plan.Choice(Setting.Parity, parity, Rank.Must, "as on the rest of the line", PlanBuilder.JobSource);
        }
    }

    private static void BusLoss(PlanBuilder plan, JobContext context)
    {
        var bus = context.Job.Bus;
        var stated = bus.TimeOut?.Value.Seconds;
        plan.Number(
            Setting.BusTimeout,
            stated ?? UsualTimeOut_s,
            Rank.Must,
            stated is null ? "nothing is said; without a time-out the last command is held when the control system dies" : "asked for; without it the last command is held when the control system dies",
            stated is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
        var action = bus.OnLoss?.Value is { } said && LossActions.Contains(said, StringComparer.Ordinal) ? said : null;
        plan.Choice(
            Setting.BusLossAction,
            action ?? "ramp",
            Rank.Must,
            action is null ? "nothing is said; a stop on the ramp is the mildest that stops" : "asked for",
            action is null ? PlanBuilder.Practice : PlanBuilder.JobSource);
    }
}
