using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>What the best-fit circuit predicts at rated voltage and frequency; one motor, no band.</summary>
/// <remarks>
/// Torques over rated shaft torque, currents over rated current. Locked-rotor and breakdown torque are taken at the air gap; the no-load current is that
/// of the uncoupled motor, which turns its own friction.
/// </remarks>
public sealed record MotorPrediction
{
    /// <summary>The circuit.</summary>
    public required EquivalentCircuit Circuit { get; init; }

    /// <summary>Number of poles.</summary>
    public required PoleCount Poles { get; init; }

    /// <summary>Full-load slip.</summary>
    public required Slip RatedSlip { get; init; }

    /// <summary>Full-load shaft torque.</summary>
    public required Torque RatedTorque { get; init; }

    /// <summary>Full-load current.</summary>
    public required LineCurrent RatedCurrent { get; init; }

    /// <summary>Full-load power factor.</summary>
    public required PowerFactor RatedPowerFactor { get; init; }

    /// <summary>Full-load efficiency.</summary>
    public required Efficiency RatedEfficiency { get; init; }

    /// <summary>Current of the uncoupled motor.</summary>
    public required LineCurrent NoLoadCurrent { get; init; }

    /// <summary>Locked-rotor current over rated current.</summary>
    public required Ratio LockedRotorCurrentRatio { get; init; }

    /// <summary>Locked-rotor torque over rated torque.</summary>
    public required Ratio LockedRotorTorqueRatio { get; init; }

    /// <summary>Breakdown torque over rated torque.</summary>
    public required Ratio BreakdownTorqueRatio { get; init; }

    /// <summary>The prediction of a fitted circuit.</summary>
    public static MotorPrediction From(CircuitFit.Fitted fitted, Nameplate plate)
    {
        var (circuit, rated) = (fitted.Circuit, fitted.Rated);
        var lockedRotor = CircuitSolution.LockedRotor(circuit, plate.Voltage, plate.Frequency);
        var torque = rated.ShaftTorque.NewtonMetres;
        var uncoupled = OperatingPoint.Uncoupled(circuit, plate.Voltage, plate.Frequency) is OperatingPoint.Runs runs
            ? runs.Solution
            : CircuitSolution.Synchronous(circuit, plate.Voltage, plate.Frequency);
        return new MotorPrediction
        {
            Circuit = circuit,
            Poles = circuit.Poles,
            RatedSlip = plate.RatedSlip,
            RatedTorque = rated.ShaftTorque,
            RatedCurrent = rated.Current,
            RatedPowerFactor = rated.PowerFactor,
            RatedEfficiency = rated.Efficiency,
            NoLoadCurrent = uncoupled.Current,
            LockedRotorCurrentRatio = Ratio.FromValue(lockedRotor.Current.Amperes / rated.Current.Amperes),
            LockedRotorTorqueRatio = Ratio.FromValue(lockedRotor.DevelopedTorque.NewtonMetres / torque),
            BreakdownTorqueRatio = Ratio.FromValue(Breakdown.Of(circuit, plate.Voltage, plate.Frequency).Torque.NewtonMetres / torque),
        };
    }
}
