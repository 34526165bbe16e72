using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>Watches each phase of the output: one without current, current to earth, a short circuit.</summary>
/// <remarks>
/// <para>
/// Motor phase: its current has not been above 5 % of the amplitude for 0.1 s, while the output is on with at least 10 % of the motor's rated current; a phase of a healthy motor is as low
/// only about its zero crossings, for 1.6 % of a period each time. Below 1 Hz for 0.2 s, and only while the phase has half the voltage's amplitude or more: current that stands still goes with the voltage. Earth: the sum of the three, rms through a filter of 0.2 s, above 30 % of the drive's normal current; or more than half
/// of a current at the overcurrent level, at once. Short circuit: the output stage has switched itself off, at once. All common practice, no source.
/// </para>
/// <para>Asked only while something is wrong with the conductors: without, the three phases carry the same by the plant's own equations, and nothing flows to earth.</para>
/// </remarks>
internal sealed class OutputWatch(DriveRating drive)
{
    private const double PhaseShare = 0.05;
    private const double PhaseDelayS = 0.1;
    private const double SlowHz = 1;
    private const double SlowDelayS = 0.2;
    private const double SlowVoltShare = 0.5;
    private const double PhaseLeastMotorA = 0.1;
    private const double AmplitudeS = 0.05;
    private const double ResidualShare = 0.3;
    private const double ResidualS = 0.2;
    private const double MostlyResidual = 0.5;

    private readonly double overcurrentA = drive.OvercurrentTrip.Amperes;
    private readonly double residualA2 = Math.Pow(ResidualShare * drive.Overloads[0].Current.Amperes, 2);
    private double lowU;
    private double lowV;
    private double lowW;
    private double meanSquareA2;
    private double residualSquareA2;

    /// <summary>One sample: what is to trip, or none.</summary>
    /// <param name="at">What the plant shows.</param>
    /// <param name="faulty">The plant, something of whose conductors is wrong.</param>
    /// <param name="along">Voltage of the last millisecond along the control's axis, in any unit.</param>
    /// <param name="across">The same across it.</param>
    /// <param name="angleRad">By how much the control's frame stands before one at rest.</param>
    /// <param name="frequencyHz">Output frequency.</param>
    /// <param name="settings">The settings at work.</param>
    internal TripCause Sample(in PlantReading<One> at, DetailedPlant faulty, double along, double across, double angleRad, double frequencyHz, ControlSettings settings)
    {
        double currentA = at.CurrentA;
        meanSquareA2 += ControlFigures.TickS / AmplitudeS * ((currentA * currentA) - meanSquareA2);
        return AtOnce(at, faulty, settings.Protection) is var cause and not TripCause.None ? cause
            : settings.Protection.TripOnMotorPhase && PhaseIsMissing(at, faulty.ResidualA, along, across, angleRad, frequencyHz, settings) ? TripCause.MotorPhase
            : TripCause.None;
    }

    private TripCause AtOnce(in PlantReading<One> at, DetailedPlant faulty, ProtectionSettings protection)
    {
        double largestA = at.LargestCurrentA;
        residualSquareA2 += ControlFigures.TickS / ResidualS * ((faulty.ResidualA * faulty.ResidualA) - residualSquareA2);
        var overcurrent = faulty.OutputBlocked || largestA >= overcurrentA;
        if (protection.TripOnEarthFault && ((overcurrent && faulty.LargestResidualA > MostlyResidual * Math.Sqrt(2) * largestA) || residualSquareA2 > residualA2))
        {
            residualSquareA2 = 0;
            return TripCause.EarthFault;
        }

        return faulty.OutputBlocked ? TripCause.ShortCircuit : TripCause.None;
    }

    private bool PhaseIsMissing(
        in PlantReading<One> at, double residualA, double along, double across, double angleRad, double frequencyHz, ControlSettings settings)
    {
        var leastA = PhaseLeastMotorA * settings.MotorRatedCurrent.Amperes;
        if (at.CurrentA == 0 || meanSquareA2 < leastA * leastA)
        {
            (lowU, lowV, lowW) = (0, 0, 0);
            return false;
        }

        var slow = Math.Abs(frequencyHz) < SlowHz;
        var current = Phases(Math.Sqrt(2) * at.AlongA, Math.Sqrt(2) * at.AcrossA, angleRad);
        var volts = Phases(along, across, angleRad);
        var lowA2 = PhaseShare * PhaseShare * 2 * meanSquareA2;
        var leastV2 = slow ? SlowVoltShare * SlowVoltShare * ((along * along) + (across * across)) : 0;
        lowU = Counted(lowU, current.U + (residualA / 3), volts.U);
        lowV = Counted(lowV, current.V + (residualA / 3), volts.V);
        lowW = Counted(lowW, current.W + (residualA / 3), volts.W);
        if (Math.Max(lowU, Math.Max(lowV, lowW)) < (slow ? SlowDelayS : PhaseDelayS))
        {
            return false;
        }

        (lowU, lowV, lowW) = (0, 0, 0);
        return true;

        double Counted(double seconds, double amperes, double voltage) =>
            amperes * amperes < lowA2 && voltage * voltage >= leastV2 ? seconds + ControlFigures.TickS : 0;
    }

    private static (double U, double V, double W) Phases(double along, double across, double angleRad)
    {
        var (sin, cos) = Math.SinCos(angleRad);
        var (x, y) = ((along * cos) + (across * sin), (along * sin) - (across * cos));
        var turned = 0.5 * Math.Sqrt(3) * y;
        return (x, turned - (0.5 * x), -turned - (0.5 * x));
    }
}
