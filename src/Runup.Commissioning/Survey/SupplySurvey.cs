using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>Supply at the drive.</summary>
public sealed record SupplySurvey
{
    /// <summary>Line-to-line voltage.</summary>
    public required Datum<LineVoltage> Voltage { get; init; }

    /// <summary>Frequency.</summary>
    public required Datum<ElectricalFrequency> Frequency { get; init; }

    /// <summary>Phases, 1 or 3.</summary>
    public Datum<int>? Phases { get; init; }

    /// <summary>Fault level at the drive.</summary>
    public Datum<ApparentPower>? FaultLevel { get; init; }

    /// <summary>Feeding transformer.</summary>
    public TransformerSurvey? Transformer { get; init; }

    /// <summary>Feeding generator.</summary>
    public GeneratorSurvey? Generator { get; init; }

    /// <summary>Coupling point of the installation.</summary>
    public CouplingPointSurvey? CouplingPoint { get; init; }

    /// <summary>Voltage unbalance.</summary>
    public Datum<Fraction>? Unbalance { get; init; }

    /// <summary>Earthing system, such as TN-S or IT.</summary>
    public Datum<string>? Earthing { get; init; }

    /// <summary>Radio-interference filter in the drive.</summary>
    public Datum<bool>? Filter { get; init; }

    /// <summary>Residual-current device upstream.</summary>
    public ResidualCurrentDeviceSurvey? ResidualCurrentDevice { get; init; }

    /// <summary>Line reactor as a fraction of the drive's base impedance.</summary>
    public Datum<Fraction>? LineReactorFraction { get; init; }

    /// <summary>Line reactor as an inductance.</summary>
    public Datum<Inductance>? LineReactorInductance { get; init; }
}

/// <summary>A feeding transformer.</summary>
public sealed record TransformerSurvey(Datum<ApparentPower> Rating, Datum<Fraction> Impedance);

/// <summary>A feeding generator.</summary>
public sealed record GeneratorSurvey(Datum<ApparentPower> Rating, Datum<Fraction> SubtransientReactance);

/// <summary>Coupling point of the installation, for IEEE 519.</summary>
public sealed record CouplingPointSurvey(Datum<ApparentPower> FaultLevel, Datum<LineCurrent> DemandCurrent);

/// <summary>A residual-current device upstream.</summary>
public sealed record ResidualCurrentDeviceSurvey(Datum<LineCurrent> Rating, Datum<string>? Type);
