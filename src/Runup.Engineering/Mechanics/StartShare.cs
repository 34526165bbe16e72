using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>How many of the motors that a plate may stand for break away on a voltage characteristic, without first meeting the drive's current limit.</summary>
/// <remarks>
/// <para>
/// The frequency rises from zero with the shaft at rest (s = 1), at U(f). A motor starts if T(f) reaches the breakaway torque before I(f) reaches the current limit, where the drive holds
/// its frequency: with too little boost the torque never comes, with too much the start hangs at the limit from the first moment on.
/// </para>
/// <para>Validity: starts slow against the motor's electrical time constants. Assumptions: as <see cref="CircuitSolution"/>; the drive holds its frequency at the limit; so many members stand for all.</para>
/// </remarks>
[Source("common-practice", "standstill torque along a rising frequency, within the current limit")]
public static class StartShare
{
    internal const int Members = 128;

    // Between two frequencies of the grid, and by what a drive's limit lets through for a moment.
    private const double Overshoot = 1.05;

    // Of rated frequency: beyond a fifth of it the torque at rest has long passed its peak.
    private static readonly double[] Parts = [0.001, 0.003, 0.006, 0.01, 0.015, 0.02, 0.025, 0.03, 0.035, 0.04, 0.045, 0.05, 0.055, 0.06, 0.065, 0.07, 0.08, 0.09, 0.1, 0.12, 0.14, 0.17, 0.2];

    /// <summary>The share of an ensemble.</summary>
    /// <param name="ensemble">The motors.</param>
    /// <param name="characteristic">Voltage against frequency, with its boost.</param>
    /// <param name="breakaway">Torque at the motor's shaft; null where none is known.</param>
    /// <param name="limit">Largest output current.</param>
    public static Fraction Of(MotorEnsemble ensemble, VoltsPerHertz characteristic, Torque? breakaway, LineCurrent limit)
    {
        var (needed_Nm, limit_A) = (breakaway?.NewtonMetres ?? 0, limit.Amperes);
        var able = ensemble.Systematic(Members).Count(index => Starts(ensemble.Members[index], characteristic, needed_Nm, limit_A));
        return Fraction.FromRatio((double)able / Members);
    }

    internal static bool Starts(in MotorMember member, VoltsPerHertz characteristic, double needed_Nm, double limit_A)
    {
        foreach (var part in Parts)
        {
            var frequency_Hz = part * member.Frequency_Hz;
            var flow = new PhaseCircuit(member.Values, frequency_Hz).At(characteristic.At(frequency_Hz) / Math.Sqrt(3), 1);
            if (flow.DevelopedTorque_Nm >= needed_Nm)
            {
                return flow.Current_A <= limit_A * Overshoot;
            }

            if (flow.Current_A > limit_A)
            {
                return false;
            }
        }

        return false;
    }
}
