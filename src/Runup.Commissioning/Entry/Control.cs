using Runup.Commissioning.Records;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Entry;

/// <summary>Says who has control of the motor when Runup leaves.</summary>
internal static class Control
{
    /// <summary>Records where the drive takes its run command from, by the values last read; null where they do not tell.</summary>
    public static async Task<string?> Leave(string tag, DriveProfile profile, DriveSize size, ParameterValues values, IRecords records)
    {
        var source = SettingsReader.Read(profile, size, values).Choice(Setting.RunCommandSource);
        var note = source switch
        {
            "panel" => "The drive takes its run command from its panel.",
            "terminals" => "The drive takes its run command from its terminals: a closed run contact starts the motor once safe torque off is closed.",
            "bus" => "The drive takes its run command from the bus: whoever writes its command word has control.",
            _ => "Where the drive takes its run command from is not known; find out before safe torque off is closed.",
        };
        await records.Append(tag, new RecordBody.ControlLeft(source ?? "not known", note), CancellationToken.None);
        return source;
    }
}
