using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>An encoder on the motor's shaft, as the drive is told of it.</summary>
/// <param name="PulsesPerTurn">Pulses of each of its two tracks in a turn; the drive counts four edges for each.</param>
/// <param name="Poles">Poles of the motor, by which a turn of the shaft is one of the field.</param>
public sealed record EncoderSettings(int PulsesPerTurn, PoleCount Poles)
{
    // What is usual on motors (common practice, no source).
    private const int UsualPulses = 1024;
    private const int UsualPoles = 4;

    /// <summary>Null where the motor is controlled without one. What is missing: 1024 pulses; poles by the rated speed, else four.</summary>
    internal static EncoderSettings? From(SettingSet settings, ElectricalFrequency ratedFrequency)
    {
        if (settings.Choice(Setting.ControlMethod) is not "encoder-vector")
        {
            return null;
        }

        var pulses = settings.Number(Setting.EncoderPulses) is { } told and >= 1 ? (int)told : UsualPulses;
        return new EncoderSettings(pulses, PolesOf(settings, ratedFrequency));
    }

    private static PoleCount PolesOf(SettingSet settings, ElectricalFrequency ratedFrequency) =>
        settings.Number(Setting.MotorPoleCount) is { } poles and >= 2 && poles % 2 == 0 ? PoleCount.FromPoles((int)poles)
            : settings.Number(Setting.MotorRatedSpeed) is { } speed and > 0 ? PoleCount.FromFullLoad(ratedFrequency, ShaftSpeed.FromRadiansPerSecond(speed))
            : PoleCount.FromPoles(UsualPoles);
}
