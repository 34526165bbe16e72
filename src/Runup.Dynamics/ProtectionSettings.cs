using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>What watches over the set besides the drive's own limits.</summary>
public sealed record ProtectionSettings
{
    /// <summary>A supply phase is missing: trip or not.</summary>
    public bool TripOnSupplyPhase { get; init; } = true;

    /// <summary>A motor phase is missing: trip or not.</summary>
    public bool TripOnMotorPhase { get; init; } = true;

    /// <summary>Current flows to earth: trip or not.</summary>
    public bool TripOnEarthFault { get; init; } = true;

    /// <summary>A sensor in the winding is connected.</summary>
    public bool MotorSensor { get; init; }

    /// <summary>A lost load trips.</summary>
    public bool TripOnUnderload { get; init; }

    /// <summary>Of rated torque, below which the load counts as lost.</summary>
    public Fraction UnderloadLevel { get; init; } = Fraction.FromRatio(0.3);

    /// <summary>How long below that level.</summary>
    public Duration UnderloadDelay { get; init; } = Duration.FromSeconds(5);

    /// <summary>Resistance of the braking resistor as set; null where it is not.</summary>
    public Resistance? ResistorResistance { get; init; }

    /// <summary>Continuous power of the braking resistor as set; null where it is not watched.</summary>
    public ElectricalPower? ResistorPower { get; init; }

    /// <summary>Resets of a trip by itself, until a run has lasted.</summary>
    public int AutomaticResets { get; init; }

    /// <summary>From trip to reset.</summary>
    public Duration AutomaticResetDelay { get; init; } = Duration.FromSeconds(5);

    /// <summary>From make-independent settings; what is missing: supply phase, motor phase and earth fault watched, no sensor, no underload (30 % for 5 s), no resistor, no reset (after 5 s).</summary>
    internal static ProtectionSettings From(SettingSet settings) => new()
    {
        TripOnSupplyPhase = settings.Choice(Setting.PhaseLoss) is not ("warn" or "off"),
        TripOnMotorPhase = settings.Choice(Setting.OutputPhaseLoss) is not ("warn" or "off"),
        TripOnEarthFault = settings.Choice(Setting.EarthFault) is not ("warn" or "off"),
        MotorSensor = settings.Choice(Setting.MotorThermalSensor) is "ptc" or "switch",
        TripOnUnderload = settings.Choice(Setting.Underload) is "trip",
        UnderloadLevel = Fraction.FromRatio(settings.Number(Setting.UnderloadLevel) ?? 0.3),
        UnderloadDelay = Duration.FromSeconds(settings.Number(Setting.UnderloadDelay) ?? 5),
        ResistorResistance = settings.Number(Setting.BrakingResistorResistance) is { } ohms and > 0 ? Resistance.FromOhms(ohms) : null,
        ResistorPower = settings.Number(Setting.BrakingResistorPower) is { } watts and > 0 ? ElectricalPower.FromWatts(watts) : null,
        AutomaticResets = (int)(settings.Number(Setting.AutomaticReset) ?? 0),
        AutomaticResetDelay = Duration.FromSeconds(settings.Number(Setting.AutomaticResetDelay) ?? 5),
    };
}
