using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What the motors of an ensemble do on a drive, as bands.</summary>
/// <remarks>Validity and assumptions as <see cref="CircuitSolution"/>, with iron that saturates as each member's does.</remarks>
public static class MotorForecast
{
    /// <summary>The current of the uncoupled motor at a frequency of a drive's voltage characteristic.</summary>
    public static Band<LineCurrent> NoLoadCurrent(MotorEnsemble ensemble, VoltsPerHertz characteristic, ElectricalFrequency frequency) =>
        Current(ensemble, characteristic.At(frequency), frequency, default);

    /// <summary>The current at a voltage and a frequency under a torque at the shaft, from zero on.</summary>
    public static Band<LineCurrent> Current(MotorEnsemble ensemble, LineVoltage voltage, ElectricalFrequency frequency, Torque torque)
    {
        var (phase_V, hertz, load) = (voltage.Phase.Volts, frequency.Hertz, torque.NewtonMetres);
        return Over(ensemble, (in MotorMember member) => Running.At(new PhaseCircuit(member.Values, hertz), phase_V, load).Current_A).As(LineCurrent.FromAmperes);
    }

    /// <summary>The current of the motor at rest at a frequency of a drive's voltage characteristic.</summary>
    public static Band<LineCurrent> CurrentAtRest(MotorEnsemble ensemble, VoltsPerHertz characteristic, ElectricalFrequency frequency)
    {
        var (phase_V, hertz) = (characteristic.At(frequency).Phase.Volts, frequency.Hertz);
        return Over(ensemble, (in MotorMember member) => new PhaseCircuit(member.Values, hertz).At(phase_V, 1).Current_A).As(LineCurrent.FromAmperes);
    }

    /// <summary>Breakdown torque at a frequency of a drive's voltage characteristic, over the torque that rated power asks for there (at and above rated frequency) or rated torque (below).</summary>
    public static Band<Ratio> BreakdownMargin(MotorEnsemble ensemble, VoltsPerHertz characteristic, ElectricalFrequency frequency)
    {
        var (phase_V, hertz) = (characteristic.At(frequency).Phase.Volts, frequency.Hertz);
        return Over(ensemble, (in MotorMember member) =>
        {
            var largest = Breakdown.Largest(new PhaseCircuit(member.Values, hertz), phase_V, 1).Torque_Nm;
            return largest / (member.RatedTorque_Nm * Math.Min(1, member.Frequency_Hz / hertz));
        }).As(Ratio.FromValue);
    }

    /// <summary>The boost for a breakaway torque at the motor's shaft, and the current that it then takes; null where fewer than half of the members have that torque at rated flux.</summary>
    public static BoostBand? Boost(MotorEnsemble ensemble, VoltsPerHertz characteristic, Torque breakaway)
    {
        var (boosts, currents) = (new double[ensemble.Members.Length], new double[ensemble.Members.Length]);
        var able = 0.0;
        for (var index = 0; index < boosts.Length; index++)
        {
            var required = ensemble.Weights[index] > 0
                ? TorqueBoost.For(ensemble.Members[index].Values, ensemble.Members[index].Phase_V, characteristic, breakaway.NewtonMetres)
                : null;
            (boosts[index], currents[index]) = required is { } known ? (known.Boost, known.Current_A) : (double.NaN, double.NaN);
            able += required is null ? 0 : ensemble.Weights[index];
        }

        return able < 0.5 || Band.Of(boosts, ensemble.Weights) is not { } boost || Band.Of(currents, ensemble.Weights) is not { } current
            ? null
            : new BoostBand(boost.As(Fraction.FromRatio), current.As(LineCurrent.FromAmperes));
    }

    /// <summary>The boost at which a motor at rest draws a current from direct voltage: b = √3·Rs·I/U_N.</summary>
    public static Band<Fraction> BoostForCurrentAtRest(MotorEnsemble ensemble, LineCurrent current)
    {
        var (amperes, rated_V) = (current.Amperes, ensemble.Plate.Voltage.Volts);
        return Over(ensemble, (in MotorMember member) => Math.Sqrt(3) * member.Values.Stator_ohm * amperes / rated_V).As(Fraction.FromRatio);
    }

    internal static Band<double> Over(MotorEnsemble ensemble, MemberFigure figure) =>
        ensemble.Band(figure) ?? throw new System.Diagnostics.UnreachableException();
}

/// <summary>A boost with the current that it takes at breaking away.</summary>
/// <param name="Boost">As a part of rated voltage, added at standstill.</param>
/// <param name="Current">Output current while the shaft lets go.</param>
public sealed record BoostBand(Band<Fraction> Boost, Band<LineCurrent> Current);
