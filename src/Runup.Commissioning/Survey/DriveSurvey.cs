using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>The drive.</summary>
public sealed record DriveSurvey
{
    /// <summary>Name of the drive profile.</summary>
    public required Datum<string> Profile { get; init; }

    /// <summary>Name of the size within the profile.</summary>
    public required Datum<string> Size { get; init; }

    /// <summary>One of the profile's regions, which leave the factory with values of their own; null for the usual one.</summary>
    public Datum<string>? Region { get; init; }

    /// <summary>Overload cycle: normal or heavy.</summary>
    public Datum<string>? OverloadCycle { get; init; }

    /// <summary>Switching frequency.</summary>
    public Datum<SwitchingFrequency>? SwitchingFrequency { get; init; }

    /// <summary>Braking resistor.</summary>
    public BrakingResistorSurvey? BrakingResistor { get; init; }

    /// <summary>Overrides the profile: DC choke.</summary>
    public Datum<Fraction>? DcChoke { get; init; }

    /// <summary>Overrides the profile: bus capacitance.</summary>
    public Datum<Capacitance>? BusCapacitance { get; init; }

    /// <summary>Overrides the profile: overvoltage trip.</summary>
    public Datum<DcVoltage>? OvervoltageTrip { get; init; }

    /// <summary>Overrides the profile: chopper level.</summary>
    public Datum<DcVoltage>? ChopperLevel { get; init; }

    /// <summary>Overrides the profile: rise time of the output.</summary>
    public Datum<Duration>? RiseTime { get; init; }

    /// <summary>Overrides the profile: largest output current.</summary>
    public Datum<LineCurrent>? CurrentLimit { get; init; }
}

/// <summary>A braking resistor.</summary>
public sealed record BrakingResistorSurvey(Datum<Resistance> Resistance, Datum<ElectricalPower>? ContinuousPower);
