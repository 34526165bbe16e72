using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>How many of the motors that a plate may stand for break away and then follow a ramp on a voltage characteristic.</summary>
/// <remarks>
/// <para>
/// From a fifth of the highest frequency on a motor must have T = T_load(n) + J·α below its breakdown torque and within the current limit, n the synchronous speed (rpm; the load is no
/// larger below it) and α the ramp's rate (rad/s²). Below that a motor that falls behind catches up again, because torque at rest still grows with frequency.
/// </para>
/// <para>Validity: ramps long against the motor's electrical time constants. Assumptions: as <see cref="StartShare"/>.</para>
/// </remarks>
[Source("common-practice", "breakdown torque along a ramp")]
public static class RunUpShare
{
    private static readonly double[] Parts = [0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.75, 0.9, 1];

    private const double Found = 0.9999;

    /// <summary>The share of an ensemble.</summary>
    /// <param name="ensemble">The motors.</param>
    /// <param name="characteristic">Voltage against frequency, with its boost.</param>
    /// <param name="machine">What they drive.</param>
    /// <param name="highest">Output frequency at the end.</param>
    /// <param name="ramp">From zero to there.</param>
    /// <param name="limit">Largest output current.</param>
    public static Fraction Of(MotorEnsemble ensemble, VoltsPerHertz characteristic, DrivenMachine machine, ElectricalFrequency highest, Duration ramp, LineCurrent limit)
    {
        var needed = Array.ConvertAll(Parts, part => Needed_Nm(ensemble, machine, highest, ramp, part));
        var (start_Nm, limit_A) = (machine.BreakawayAtMotor.NewtonMetres, limit.Amperes);
        var able = ensemble.Systematic(StartShare.Members).Count(index =>
            StartShare.Starts(ensemble.Members[index], characteristic, start_Nm, limit_A) && Follows(ensemble.Members[index], characteristic, highest.Hertz, needed, limit_A));
        return Fraction.FromRatio((double)able / StartShare.Members);
    }

    private static double Needed_Nm(MotorEnsemble ensemble, DrivenMachine machine, ElectricalFrequency highest, Duration ramp, double part)
    {
        var speed = ElectricalFrequency.FromHertz(part * highest.Hertz).SynchronousSpeed(ensemble.Plate.Poles).RadiansPerSecond;
        return machine.TorqueFor(ShaftSpeed.FromRadiansPerSecond(speed), ShaftSpeed.FromRadiansPerSecond(speed / part / ramp.Seconds)).NewtonMetres;
    }

    private static bool Follows(in MotorMember member, VoltsPerHertz characteristic, double highest_Hz, double[] needed_Nm, double limit_A)
    {
        for (var place = 0; place < Parts.Length; place++)
        {
            var frequency_Hz = Parts[place] * highest_Hz;
            var circuit = new PhaseCircuit(member.Values, frequency_Hz);
            var phase_V = characteristic.At(frequency_Hz) / Math.Sqrt(3);
            // Where it runs under the load, it can bear it; only where no such point is found is the largest torque asked for.
            var running = Running.At(circuit, phase_V, needed_Nm[place]);
            if (running.Current_A > limit_A || (running.ShaftTorque_Nm < Found * needed_Nm[place] && Breakdown.Largest(circuit, phase_V, 1).Torque_Nm < needed_Nm[place]))
            {
                return false;
            }
        }

        return true;
    }
}
