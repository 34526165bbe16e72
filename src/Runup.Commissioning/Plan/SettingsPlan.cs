using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>The make-independent settings that a job decides, each with its reason, in the order in which they are thought of.</summary>
/// <param name="Lines">The settings.</param>
public sealed record SettingsPlan(IReadOnlyList<PlannedSetting> Lines)
{
    /// <summary>The settings' values.</summary>
    public SettingSet Values { get; } = Lines.Aggregate(SettingSet.Empty, (set, line) => set.With(line.Setting, line.Value));

    /// <summary>The line of a setting, or null where the job does not decide it.</summary>
    public PlannedSetting? this[Setting setting] => Lines.FirstOrDefault(line => line.Setting == setting);

    /// <summary>The plan of a job.</summary>
    public static SettingsPlan For(JobContext context)
    {
        var plan = new PlanBuilder();
        MotorData.Plan(plan, context);
        VoltageCurve.Plan(plan, context);
        SpeedRange.Plan(plan, context);
        SkippedBands.Plan(plan, context);
        Protection.Plan(plan, context);
        Ramps.Plan(plan, context);
        Braking.Plan(plan, context);
        MechanicalBrake.Plan(plan, context);
        Commands.Plan(plan, context);
        AnalogueInputs.Plan(plan, context);
        Terminals.Plan(plan, context);
        Restarting.Plan(plan, context);
        return new(plan.Lines);
    }
}
