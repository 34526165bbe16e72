using Runup.Quantities;

namespace Runup.Engineering.Starting;

/// <summary>A start on the line at a part of the voltage: what motor and line carry, and what torque is left.</summary>
/// <remarks>
/// I_motor = a I, T = a² T; by an autotransformer I_line = a² I. a part of the voltage, I and T current and torque of the start at full voltage. Star instead of delta is a = 1/√3 on each winding, with
/// line current and torque a third. Validity: locked rotor. Assumptions: reactances do not saturate (really the current falls a little faster); the autotransformer's own current is neglected.
/// </remarks>
/// <param name="Part">Voltage over full voltage.</param>
[Source("hubert", "section 5.16, reduced-voltage starting")]
public sealed record ReducedVoltageStart(Fraction Part)
{
    /// <summary>The windings in star that are meant for delta.</summary>
    public static ReducedVoltageStart StarForDelta { get; } = new(Fraction.FromRatio(1 / Math.Sqrt(3)));

    /// <summary>Voltage at the motor.</summary>
    public LineVoltage MotorVoltage(LineVoltage full) => LineVoltage.FromVolts(Part.Ratio * full.Volts);

    /// <summary>Current in the motor.</summary>
    public LineCurrent MotorCurrent(LineCurrent full) => LineCurrent.FromAmperes(Part.Ratio * full.Amperes);

    /// <summary>Current that the line gives through an autotransformer, or to windings in star for delta.</summary>
    public LineCurrent FromLine(LineCurrent full) => LineCurrent.FromAmperes(Part.Ratio * Part.Ratio * full.Amperes);

    /// <summary>Torque at the reduced voltage.</summary>
    public Torque StartingTorque(Torque full) => Torque.FromNewtonMetres(Part.Ratio * Part.Ratio * full.NewtonMetres);

    /// <summary>Starting torque over rated torque from currents: (I/I_N)² s_N, for a rotor whose resistance is the same at start and at rated slip.</summary>
    /// <param name="currentRatio">Starting current over rated current, at full voltage.</param>
    /// <param name="rated">Rated slip.</param>
    public static Ratio TorqueRatio(Ratio currentRatio, Slip rated) => Ratio.FromValue(currentRatio.Value * currentRatio.Value * rated.Ratio);
}
