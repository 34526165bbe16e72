using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>The torque-speed curve of a motor at one voltage and frequency.</summary>
public static class TorqueSpeed
{
    /// <summary>Steady states from standstill to synchronous speed, evenly spaced in speed.</summary>
    /// <remarks>Formula, validity and assumptions as <see cref="CircuitSolution"/>. Each point is a steady state: the pulsations of a start on the line are not in it.</remarks>
    /// <param name="circuit">The motor.</param>
    /// <param name="voltage">Voltage at its terminals.</param>
    /// <param name="frequency">Frequency at its terminals.</param>
    /// <param name="points">How many, at least two.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two points, or frequency zero.</exception>
    [Source("fitzgerald", "section 6.5, torque and power by use of Thevenin's theorem")]
    public static IReadOnlyList<CircuitSolution> Curve(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, int points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        return Enumerable.Range(0, points)
            .Select(point => CircuitSolution.At(circuit, voltage, frequency, Slip.FromRatio(1 - (point / (points - 1.0)))))
            .ToList();
    }
}
