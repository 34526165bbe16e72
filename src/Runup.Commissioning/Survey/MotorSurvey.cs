using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>The motor.</summary>
public sealed record MotorSurvey
{
    /// <summary>Kind of motor.</summary>
    public Datum<MotorKind> Kind { get; init; } = new(MotorKind.Induction);

    /// <summary>Motors on the one drive.</summary>
    public Datum<int>? Count { get; init; }

    /// <summary>The plate.</summary>
    public required PlateSurvey Plate { get; init; }

    /// <summary>Rotor inertia.</summary>
    public Datum<Inertia>? Inertia { get; init; }

    /// <summary>Sensor in the winding: none, ptc or switch.</summary>
    public Datum<string>? ThermalSensor { get; init; }

    /// <summary>Whether a mechanical brake is fitted.</summary>
    public Datum<bool>? Brake { get; init; }

    /// <summary>What was measured on the motor.</summary>
    public MotorMeasurements Measured { get; init; } = new();

    /// <summary>Maker's curve of continuous torque: frequency and torque as a fraction of rated.</summary>
    public IReadOnlyList<(ElectricalFrequency Frequency, Fraction Torque)>? ContinuousTorque { get; init; }

    /// <summary>The file that the curve was read from, with its provenance.</summary>
    public Datum<string>? ContinuousTorqueFile { get; init; }

    /// <summary>Maker's figure for peak voltage at the terminals.</summary>
    public PeakVoltageSurvey? PeakVoltage { get; init; }
}

/// <summary>Peak voltage that the maker permits at the terminals, at a rise time.</summary>
public sealed record PeakVoltageSurvey(Datum<DcVoltage> Voltage, Datum<Duration> RiseTime);
