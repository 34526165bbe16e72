using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>The driven machine.</summary>
public sealed record MachineSurvey
{
    /// <summary>Shape of the load torque.</summary>
    public required Datum<LoadKind> Load { get; init; }

    /// <summary>Torque at the machine's shaft.</summary>
    public Datum<Torque>? Torque { get; init; }

    /// <summary>Speed of the machine's shaft at which the torque holds.</summary>
    public Datum<ShaftSpeed>? AtSpeed { get; init; }

    /// <summary>Table of speed and torque at the machine's shaft.</summary>
    public IReadOnlyList<(ShaftSpeed Speed, Torque Torque)>? Curve { get; init; }

    /// <summary>The file that the table was read from, with its provenance.</summary>
    public Datum<string>? CurveFile { get; init; }

    /// <summary>Breakaway torque at the machine's shaft.</summary>
    public Datum<Torque>? BreakawayTorque { get; init; }

    /// <summary>Inertia at the machine's shaft.</summary>
    public Datum<Inertia>? Inertia { get; init; }

    /// <summary>Motor speed over machine speed.</summary>
    public Datum<Ratio>? GearRatio { get; init; }

    /// <summary>Efficiency of the gear when the motor drives.</summary>
    public Datum<Efficiency>? GearEfficiency { get; init; }

    /// <summary>Efficiency of the gear when the load drives.</summary>
    public Datum<Efficiency>? GearEfficiencyBack { get; init; }

    /// <summary>Hoisted mass.</summary>
    public Datum<Mass>? Mass { get; init; }

    /// <summary>Diameter of the drum.</summary>
    public Datum<Length>? DrumDiameter { get; init; }

    /// <summary>Largest permitted speed of the machine's shaft.</summary>
    public Datum<ShaftSpeed>? LargestSpeed { get; init; }

    /// <summary>Speeds at which the machine shakes; empty where it is known to have none.</summary>
    public IReadOnlyList<CriticalSpeedSurvey>? CriticalSpeeds { get; init; }
}

/// <summary>A speed of the machine's shaft at which it shakes, with the full width of the band to leave out.</summary>
public sealed record CriticalSpeedSurvey(Datum<ShaftSpeed> Speed, Datum<ShaftSpeed>? Width);
