using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What a profile must have so that the job can be done, and what can't be done without.</summary>
internal static class EssentialsLint
{
    private static readonly (Setting Setting, string Without)[] Essential =
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

    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var (setting, without) in Essential)
        {
            if (profile.Carrying(setting).Count == 0)
            {
                yield return ProfileLint.Caution(null, null, $"no parameter means `{setting.Name}`: {without}", "add its row, if the drive has it");
            }
        }

        if (profile.Command is null)
        {
            yield return ProfileLint.Caution(null, null, "no `command`: the drive can't be run over the bus, and its state can't be read, so that nothing is written to it over the bus", "add command word, reference and status word");
        }

        foreach (var kind in (ReadingKind[])[ReadingKind.OutputFrequency, ReadingKind.OutputCurrent, ReadingKind.DcBusVoltage])
        {
            if (profile.Readings.All(r => r.Kind != kind))
            {
                yield return ProfileLint.Caution(null, null, $"no reading of `{kind.Name()}`: in the first run it has to be read at the panel", "add it under `readings`, if the drive has it");
            }
        }

        if (profile.Store is null)
        {
            yield return ProfileLint.Caution(null, null, "no `store`: it is taken that the drive keeps each value at once", "add it under `store`, if the drive loses values at power-off");
        }
    }
}
