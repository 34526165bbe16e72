using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>Where commands come from.</summary>
public sealed record ControlSurvey
{
    /// <summary>panel, terminals or bus.</summary>
    public Datum<string>? RunFrom { get; init; }

    /// <summary>maintained or pulse.</summary>
    public Datum<string>? RunContact { get; init; }

    /// <summary>panel, analogue-1, analogue-2, bus, fixed or process.</summary>
    public Datum<string>? ReferenceFrom { get; init; }

    /// <summary>Relay of the drive, 1 to 3, that the motor's mechanical brake is wired to.</summary>
    public Datum<int>? BrakeRelay { get; init; }

    /// <summary>First analogue input.</summary>
    public AnalogueSurvey? Analogue1 { get; init; }

    /// <summary>Second analogue input.</summary>
    public AnalogueSurvey? Analogue2 { get; init; }
}

/// <summary>Scaling of an analogue input.</summary>
public sealed record AnalogueSurvey(Datum<string>? Signal, Datum<ElectricalFrequency>? Low, Datum<ElectricalFrequency>? High, Datum<string>? OnLoss);
