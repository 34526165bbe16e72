namespace Runup.Profiles;

/// <summary>What a profile must have so that the job can be done, and what can't be done without.</summary>
internal static class EssentialsLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var (setting, without) in Essentials.Known)
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
