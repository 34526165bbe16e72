using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>What a drive knows of its motor's circuit: per phase of the star equivalent, rotor referred to the stator, reactances at rated frequency.</summary>
/// <remarks>All leakage is taken on the stator's side, as much as a drive can tell from its terminals: Xσ, X_m′ and R_r′ of that form.</remarks>
/// <param name="StatorResistance">Rs.</param>
/// <param name="Leakage">Xσ, stator and rotor together.</param>
/// <param name="RotorResistance">Rr of that form, (Lm/Lr)²·Rr′.</param>
/// <param name="Magnetizing">Xm of that form, Lm²/Lr.</param>
public sealed record TunedMotor(Resistance StatorResistance, Reactance Leakage, Resistance RotorResistance, Reactance Magnetizing)
{
    /// <summary>What a circuit looks like from its terminals.</summary>
    public static TunedMotor Of(EquivalentCircuit circuit)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        var one = circuit.WithOneCage();
        var (stator, rotor, magnetizing) = (one.StatorLeakage.Ohms, one.RotorLeakage.Ohms, one.Magnetizing.Ohms);
        var ratio = magnetizing / (magnetizing + rotor);
        return new TunedMotor(
            one.StatorResistance,
            Reactance.FromOhms(stator + (ratio * rotor)),
            Resistance.FromOhms(ratio * ratio * one.RotorResistance.Ohms),
            Reactance.FromOhms(ratio * magnetizing));
    }

    /// <summary>Reckoned from rated values: a circuit that fits them, or else usual shares of the base impedance.</summary>
    internal static TunedMotor FromRating(ControlSettings settings)
    {
        if (settings.MotorRatedSpeed is { RadiansPerSecond: > 0 } speed && CircuitFit.Of(new Nameplate
        {
            Output = settings.MotorRatedPower,
            Voltage = settings.MotorRatedVoltage,
            Current = settings.MotorRatedCurrent,
            Frequency = settings.MotorRatedFrequency,
            Speed = speed,
            PowerFactor = settings.MotorPowerFactor,
        }) is CircuitFit.Fitted fitted)
        {
            return Of(fitted.Circuit);
        }

        // Per unit, of a small motor (common practice, no source).
        var unit = settings.MotorRatedVoltage.Volts / (Math.Sqrt(3) * settings.MotorRatedCurrent.Amperes);
        return new TunedMotor(Resistance.FromOhms(0.04 * unit), Reactance.FromOhms(0.18 * unit), Resistance.FromOhms(0.035 * unit), Reactance.FromOhms(2 * unit));
    }
}
