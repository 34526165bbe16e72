using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>Shape of the voltage between standstill and base frequency.</summary>
public enum VoltageShape
{
    /// <summary>In proportion to frequency.</summary>
    Linear,

    /// <summary>With the square of frequency, for pumps and fans.</summary>
    Quadratic,
}

/// <summary>The voltage that a drive puts out against frequency.</summary>
/// <remarks>
/// U(f) = U_max (f/f_b)ⁿ + b U_N (1 − f/f_b) below the base frequency f_b (Hz), n 1 or 2, at most U_max; U_max at and above it. b torque boost as a part
/// of the rated voltage U_N (V), all line to line. Assumption: fundamental of the output voltage, no dead-time loss.
/// </remarks>
public sealed record VoltsPerHertz
{
    /// <summary>Where the voltage reaches its maximum.</summary>
    public required ElectricalFrequency BaseFrequency { get; init; }

    /// <summary>Voltage at and above base frequency.</summary>
    public required LineVoltage MaximumVoltage { get; init; }

    /// <summary>Rated voltage of the motor, which the boost refers to.</summary>
    public required LineVoltage RatedVoltage { get; init; }

    /// <summary>Voltage added at standstill, as a part of rated voltage.</summary>
    public Fraction Boost { get; init; }

    /// <summary>Shape below base frequency.</summary>
    public VoltageShape Shape { get; init; }

    /// <summary>The voltage at a frequency.</summary>
    public LineVoltage At(ElectricalFrequency frequency) => LineVoltage.FromVolts(At(frequency.Hertz));

    internal double At(double frequency_Hz)
    {
        var part = frequency_Hz / BaseFrequency.Hertz;
        if (part >= 1)
        {
            return MaximumVoltage.Volts;
        }

        var shaped = Shape == VoltageShape.Quadratic ? part * part : part;
        var voltage = (MaximumVoltage.Volts * shaped) + (Boost.Ratio * RatedVoltage.Volts * (1 - part));
        return Math.Clamp(voltage, 0, MaximumVoltage.Volts);
    }
}
