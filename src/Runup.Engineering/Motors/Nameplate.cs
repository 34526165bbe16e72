using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>What a motor's plate prints, in the column of the connection in use. What it does not print is null.</summary>
public sealed record Nameplate
{
    /// <summary>Rated shaft output.</summary>
    public required ShaftPower Output { get; init; }

    /// <summary>Rated voltage, line to line.</summary>
    public required LineVoltage Voltage { get; init; }

    /// <summary>Rated line current.</summary>
    public required LineCurrent Current { get; init; }

    /// <summary>Rated frequency.</summary>
    public required ElectricalFrequency Frequency { get; init; }

    /// <summary>Full-load speed.</summary>
    public required ShaftSpeed Speed { get; init; }

    /// <summary>Number of poles, if printed.</summary>
    public PoleCount? PrintedPoles { get; init; }

    /// <summary>Full-load power factor.</summary>
    public PowerFactor? PowerFactor { get; init; }

    /// <summary>Full-load efficiency.</summary>
    public Efficiency? Efficiency { get; init; }

    /// <summary>Efficiency class, such as IE3.</summary>
    public string? EfficiencyClass { get; init; }

    /// <summary>Locked-rotor current over rated current.</summary>
    public double? LockedRotorCurrentRatio { get; init; }

    /// <summary>NEC code letter for locked-rotor kVA per horsepower.</summary>
    public char? CodeLetter { get; init; }

    /// <summary>NEMA or IEC design letter.</summary>
    public string? DesignLetter { get; init; }

    /// <summary>Locked-rotor torque over rated torque.</summary>
    public double? LockedRotorTorqueRatio { get; init; }

    /// <summary>Breakdown torque over rated torque.</summary>
    public double? BreakdownTorqueRatio { get; init; }

    /// <summary>Half of the last printed digit of each value, in SI; null where the value counts as exact.</summary>
    public PlateRounding Rounding { get; init; } = new();

    /// <summary>The poles: as printed, else from frequency and full-load speed.</summary>
    public PoleCount Poles => PrintedPoles ?? PoleCount.FromFullLoad(Frequency, Speed);

    /// <summary>Speed of the field at rated frequency.</summary>
    public SynchronousSpeed SynchronousSpeed => Frequency.SynchronousSpeed(Poles);

    /// <summary>Full-load slip.</summary>
    public Slip RatedSlip => SynchronousSpeed.SlipOf(Speed);

    /// <summary>Full-load torque: P / ω.</summary>
    public Torque RatedTorque => Output.TorqueAt(Speed);
}

/// <summary>Half of the last printed digit of the plate's values, in SI units; zero counts as exact.</summary>
public sealed record PlateRounding
{
    /// <summary>Of the output, W.</summary>
    public double OutputWatts { get; init; }

    /// <summary>Of the voltage, V.</summary>
    public double VoltageVolts { get; init; }

    /// <summary>Of the current, A.</summary>
    public double CurrentAmperes { get; init; }

    /// <summary>Of the speed, rad/s.</summary>
    public double SpeedRadiansPerSecond { get; init; }

    /// <summary>Of the power factor.</summary>
    public double PowerFactor { get; init; }

    /// <summary>Of the efficiency, as a ratio.</summary>
    public double Efficiency { get; init; }
}
