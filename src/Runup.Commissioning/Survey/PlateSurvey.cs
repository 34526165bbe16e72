using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>The plate in the column of the connection in use.</summary>
public sealed record PlateSurvey
{
    /// <summary>IEC or NEMA.</summary>
    public Datum<string>? Standard { get; init; }

    /// <summary>Rated output.</summary>
    public required Datum<ShaftPower> Output { get; init; }

    /// <summary>Rated voltage.</summary>
    public required Datum<LineVoltage> Voltage { get; init; }

    /// <summary>Connection in use.</summary>
    public Datum<WindingConnection>? Connection { get; init; }

    /// <summary>Rated line current.</summary>
    public required Datum<LineCurrent> Current { get; init; }

    /// <summary>Rated frequency.</summary>
    public required Datum<ElectricalFrequency> Frequency { get; init; }

    /// <summary>Full-load speed.</summary>
    public required Datum<ShaftSpeed> Speed { get; init; }

    /// <summary>Number of poles as printed; any whole number, checks judge it.</summary>
    public Datum<int>? Poles { get; init; }

    /// <summary>Power factor.</summary>
    public Datum<PowerFactor>? PowerFactor { get; init; }

    /// <summary>Efficiency.</summary>
    public Datum<Efficiency>? Efficiency { get; init; }

    /// <summary>Efficiency class.</summary>
    public Datum<string>? EfficiencyClass { get; init; }

    /// <summary>Ratings for other connections.</summary>
    public IReadOnlyList<OtherRating> OtherRatings { get; init; } = [];

    /// <summary>Locked-rotor current over rated.</summary>
    public Datum<Ratio>? LockedRotorCurrent { get; init; }

    /// <summary>NEC code letter.</summary>
    public Datum<string>? CodeLetter { get; init; }

    /// <summary>Design letter.</summary>
    public Datum<string>? DesignLetter { get; init; }

    /// <summary>Locked-rotor torque over rated.</summary>
    public Datum<Ratio>? LockedRotorTorque { get; init; }

    /// <summary>Breakdown torque over rated.</summary>
    public Datum<Ratio>? BreakdownTorque { get; init; }

    /// <summary>Service factor.</summary>
    public Datum<Ratio>? ServiceFactor { get; init; }

    /// <summary>Insulation class.</summary>
    public Datum<string>? InsulationClass { get; init; }

    /// <summary>Cooling, an IC code.</summary>
    public Datum<string>? Cooling { get; init; }

    /// <summary>Duty, S1 to S10.</summary>
    public Datum<string>? Duty { get; init; }

    /// <summary>Marked for inverter duty.</summary>
    public Datum<bool>? InverterDuty { get; init; }
}

/// <summary>A rating for another connection printed on the same plate.</summary>
public sealed record OtherRating(Datum<LineVoltage> Voltage, Datum<WindingConnection>? Connection, Datum<LineCurrent>? Current, Datum<ElectricalFrequency>? Frequency, Datum<ShaftPower>? Output, Datum<ShaftSpeed>? Speed);
