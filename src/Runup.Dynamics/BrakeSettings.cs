using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>How the drive opens and closes a mechanical brake by one of its relays.</summary>
/// <param name="OpenFrequency">Output frequency at which it may open; the ramp waits there.</param>
/// <param name="OpenCurrent">Output current at which it may open.</param>
/// <param name="OpenDelay">How long both must have stood.</param>
/// <param name="CloseFrequency">Below it the brake closes on the way to a stop.</param>
public sealed record BrakeSettings(ElectricalFrequency OpenFrequency, LineCurrent OpenCurrent, Duration OpenDelay, ElectricalFrequency CloseFrequency)
{
    /// <summary>Null where no relay is set for a brake. What is missing: opens at 1 Hz and 30 % of motor current after 0.2 s, closes at 0.8 Hz.</summary>
    internal static BrakeSettings? From(SettingSet settings, double motorA) =>
        new[] { Setting.Relay1, Setting.Relay2, Setting.Relay3 }.Any(relay => settings.Choice(relay) is "brake-open")
            ? new(
                ElectricalFrequency.FromHertz(settings.Number(Setting.BrakeOpenFrequency) ?? 1),
                LineCurrent.FromAmperes(settings.Number(Setting.BrakeOpenCurrent) ?? (0.3 * motorA)),
                Duration.FromSeconds(settings.Number(Setting.BrakeOpenDelay) ?? 0.2),
                ElectricalFrequency.FromHertz(settings.Number(Setting.BrakeCloseFrequency) ?? 0.8))
            : null;
}
