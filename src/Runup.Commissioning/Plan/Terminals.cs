using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>The fixed frequencies and the functions of terminals that the job states.</summary>
internal static class Terminals
{
    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var control = context.Job.Control;
        foreach (var stated in control.FixedFrequencies)
        {
            var runsAt = stated.Setting == Setting.FixedFrequency1 && control.ReferenceFrom?.Value is "fixed";
            plan.Number(
                stated.Setting,
                stated.Frequency.Value.Hertz,
                runsAt ? Rank.Must : Rank.Should,
                runsAt ? "the frequency that it runs at, since control.reference-from is fixed" : $"asked for by control.{stated.Setting.Name}",
                PlanBuilder.JobSource);
        }

        foreach (var wired in control.Terminals?.Functions ?? [])
        {
            // The relay that opens the brake is decided with the brake.
            if (plan.Lines.All(l => l.Setting != wired.Terminal))
            {
                plan.Choice(wired.Terminal, wired.Function.Value, Rank.Must, "wired so, as control.terminals says", PlanBuilder.JobSource);
            }
        }
    }
}
