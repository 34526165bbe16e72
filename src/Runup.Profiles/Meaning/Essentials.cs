using Runup.Settings;

namespace Runup.Profiles;

/// <summary>The settings without which the job can't be done.</summary>
public static class Essentials
{
    /// <summary>The settings.</summary>
    public static IEnumerable<Setting> All => Known.Select(k => k.Setting);

    /// <summary>Each with what can't be done without it.</summary>
    internal static IReadOnlyList<(Setting Setting, string Without)> Known { get; } =
    [
        (Setting.MotorRatedCurrent, "the motor's current can't be entered, nor limits that are a part of it"),
        (Setting.MotorRatedVoltage, "the motor's voltage can't be entered"),
        (Setting.BaseFrequency, "voltage over frequency can't be set"),
        (Setting.MaximumFrequency, "the highest frequency can't be set, and nothing guards the first run"),
        (Setting.AccelerationTime, "the acceleration can't be set"),
        (Setting.DecelerationTime, "the deceleration can't be set"),
        (Setting.CurrentLimit, "the current can't be limited"),
        (Setting.MotorOverloadCurrent, "the motor is not protected against overload"),
        (Setting.RunCommandSource, "the source of the run command can't be set"),
        (Setting.FrequencyReferenceSource, "the source of the frequency can't be set"),
        (Setting.BusTimeout, "the motor can't be run over the bus: nothing stops it when the link is lost"),
        (Setting.BusLossAction, "the motor can't be run over the bus: nothing stops it when the link is lost"),
    ];
}
