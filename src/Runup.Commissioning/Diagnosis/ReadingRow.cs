using Runup.Quantities;

namespace Runup.Commissioning.Diagnosis;

/// <summary>One row of a file of readings: what was seen together on motor and drive. What was not read is null.</summary>
public sealed record ReadingRow
{
    /// <summary>State of a row of a coast-down.</summary>
    public const string Coasting = "coasting";

    /// <summary>The relative error of a current whose row gives none.</summary>
    public static Fraction UsualError { get; } = Fraction.FromRatio(0.02);

    /// <summary>The row's line in its file.</summary>
    public required int Line { get; init; }

    /// <summary>Time.</summary>
    public Duration? Time { get; init; }

    /// <summary>Output frequency of the drive.</summary>
    public ElectricalFrequency? Frequency { get; init; }

    /// <summary>Output current.</summary>
    public LineCurrent? Current { get; init; }

    /// <summary>Error of the instrument that showed the current, relative.</summary>
    public Fraction CurrentError { get; init; } = UsualError;

    /// <summary>DC bus voltage.</summary>
    public DcVoltage? DcBus { get; init; }

    /// <summary>Output voltage, line to line.</summary>
    public LineVoltage? OutputVoltage { get; init; }

    /// <summary>Speed of the motor's shaft.</summary>
    public ShaftSpeed? Speed { get; init; }

    /// <summary>Torque that the drive reckons, of rated torque.</summary>
    public Fraction? Torque { get; init; }

    /// <summary>Resistance between two terminals.</summary>
    public Resistance? WindingResistance { get; init; }

    /// <summary>Temperature of the winding at that measurement.</summary>
    public Temperature? WindingTemperature { get; init; }

    /// <summary>What the drive said that it was doing, or <see cref="Coasting"/>.</summary>
    public string? State { get; init; }

    /// <summary>The trip that was shown.</summary>
    public string? Trip { get; init; }

    /// <summary>Whether the machine hung on the motor.</summary>
    public bool? Coupled { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}
