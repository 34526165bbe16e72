using Runup.Quantities;
using Runup.Settings;

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

    /// <summary>The drive's own fixed frequencies, those that are stated.</summary>
    public IReadOnlyList<FixedFrequencySurvey> FixedFrequencies { get; init; } = [];

    /// <summary>What is wired to the drive's terminals; null where nothing is said of them.</summary>
    public TerminalsSurvey? Terminals { get; init; }
}

/// <summary>One of the frequencies that the drive keeps by number.</summary>
/// <param name="Setting">The setting of this number.</param>
/// <param name="Frequency">The frequency.</param>
public sealed record FixedFrequencySurvey(Setting Setting, Datum<ElectricalFrequency> Frequency);

/// <summary>The functions of digital inputs, relays and analogue outputs, those that are stated.</summary>
/// <param name="Functions">The functions.</param>
public sealed record TerminalsSurvey(IReadOnlyList<TerminalFunction> Functions);

/// <summary>What a terminal is for.</summary>
/// <param name="Terminal">The setting of this terminal.</param>
/// <param name="Function">One of the setting's choices.</param>
public sealed record TerminalFunction(Setting Terminal, Datum<string> Function);

/// <summary>Scaling of an analogue input.</summary>
public sealed record AnalogueSurvey(Datum<string>? Signal, Datum<ElectricalFrequency>? Low, Datum<ElectricalFrequency>? High, Datum<string>? OnLoss);
