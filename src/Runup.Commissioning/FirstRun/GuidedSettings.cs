using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>What a drive must be set to while Runup runs the motor: the bus as source, its loss noticed soon, nothing that starts by itself.</summary>
public static class GuidedSettings
{
    /// <summary>Id of the step that sets them.</summary>
    public const string SetUpStep = "set-up";

    /// <summary>Id of the step that puts the job's own values back.</summary>
    public const string PutBackStep = "put-back";

    /// <summary>The longest bus time-out while Runup runs the motor: 0.3 s of hold, 0.2 s of reads and the time-out stay within 1 s.</summary>
    public const double LongestBusTimeoutS = 0.4;

    /// <summary>The job's plan with what the guided run needs laid over it.</summary>
    public static SettingSet Over(SettingSet plan, DriveProfile profile, RunLimits limits)
    {
        var needs = SettingSet.Empty
            .With(Setting.RunCommandSource, "bus")
            .With(Setting.FrequencyReferenceSource, "bus")
            .With(Setting.BusTimeout, plan.Number(Setting.BusTimeout) is { } own and > 0 and <= LongestBusTimeoutS ? own : LongestBusTimeoutS)
            .With(Setting.BusLossAction, plan.Choice(Setting.BusLossAction) is "coast" ? "coast" : "ramp");
        if (profile.Carrying(Setting.MinimumFrequency).Count > 0 && plan.Number(Setting.MinimumFrequency) > limits.LowestHz)
        {
            needs = needs.With(Setting.MinimumFrequency, limits.LowestHz);
        }

        if (profile.Carrying(Setting.RestartAfterPowerLoss).Count > 0)
        {
            needs = needs.With(Setting.RestartAfterPowerLoss, "off");
        }

        return profile.Carrying(Setting.AutomaticReset).Count > 0 ? needs.With(Setting.AutomaticReset, 0) : needs;
    }

    /// <summary>The lines that set it in this drive, in the order of entry; or why it can't be said in the drive's parameters.</summary>
    internal static (EntrySheet? Lines, string? Why) For(FirstRunTask task, RunLimits limits, ParameterValues held)
    {
        var needs = Over(task.Plan, task.Profile, limits);
        var wanted = needs.Select(n => n.Key).ToHashSet();
        var lines = Profiles.Sheet.For(task.Profile, task.Size, task.Plan.With(needs), held).Where(l => l.Settings.Any(wanted.Contains)).ToList();
        return lines.FirstOrDefault(l => l.Parameter is null || l.Raw is null || l.Fit is Fit.OutOfRange) is { } unsaid
            ? (null, $"the drive can't be set to what the guided run needs: {string.Join(", ", unsaid.Settings.Select(s => s.Name))}")
            : (EntrySheet.From(lines), null);
    }

    /// <summary>Whether what was read back is what the guided run needs; why not, or null.</summary>
    internal static string? WhyNot(FirstRunTask task, RunLimits limits, ParameterValues held)
    {
        var read = SettingsReader.Read(task.Profile, task.Size, held);
        return (read.Choice(Setting.RunCommandSource), read.Choice(Setting.FrequencyReferenceSource), read.Number(Setting.BusTimeout), read.Choice(Setting.BusLossAction)) switch
        {
            (not "bus", _, _, _) => "the run command is not taken from the bus",
            (_, not "bus", _, _) => "the frequency reference is not taken from the bus",
            (_, _, not (> 0 and <= LongestBusTimeoutS + 1e-9), _) => $"the bus time-out is not within {LongestBusTimeoutS} s",
            (_, _, _, not ("coast" or "ramp")) => "the drive does not stop when the bus is lost",
            _ when read.Number(Setting.MinimumFrequency) > limits.LowestHz => "the drive's lowest frequency is above that of the first step",
            _ when read.Number(Setting.MaximumFrequency) > limits.MaximumHz + 1e-6 => "the drive's highest frequency is above the sheet's",
            _ => null,
        };
    }
}
