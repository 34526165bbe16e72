using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Settings;

namespace Runup.Dynamics.Control;

/// <summary>Watches each phase of the output: one without current, current to earth, a short circuit.</summary>
/// <remarks>
/// <para>
/// Motor phase: its current has not been above 5 % of the amplitude for 0.5 s, while the output is on at 1 Hz or more with at least 10 % of the motor's rated current. A phase of a healthy motor is as low
/// only about its zero crossings, for 1.6 % of a period each time. Earth: the sum of the three, rms through a filter of 0.2 s, above 30 % of the drive's normal current; or more than half
/// of a current at the overcurrent level, at once. Short circuit: the output stage has switched itself off, at once. All common practice, no source.
/// </para>
/// <para>Asked only while something is wrong with the conductors: without, the three phases carry the same by the plant's own equations, and nothing flows to earth.</para>
/// </remarks>
internal sealed class OutputWatch(DriveRating drive)
{
    private const double PhaseShare = 0.05;
    private const double PhaseDelayS = 0.5;
    private const double PhaseLowestHz = 1;
    private const double PhaseLeastMotorA = 0.1;
    private const double AmplitudeS = 0.1;
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
    /// <param name="angleRad">By how much the control's frame stands before one at rest.</param>
    /// <param name="frequencyHz">Output frequency.</param>
    /// <param name="settings">The settings at work.</param>
    internal TripCause Sample(in PlantReading<One> at, DetailedPlant faulty, double angleRad, double frequencyHz, ControlSettings settings)
    {
        double currentA = at.CurrentA;
        meanSquareA2 += ControlFigures.TickS / AmplitudeS * ((currentA * currentA) - meanSquareA2);
        return AtOnce(at, faulty, settings.Protection) is var cause and not TripCause.None ? cause
            : settings.Protection.TripOnMotorPhase && PhaseIsMissing(at, faulty.ResidualA, angleRad, frequencyHz, settings) ? TripCause.MotorPhase
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

    private bool PhaseIsMissing(in PlantReading<One> at, double residualA, double angleRad, double frequencyHz, ControlSettings settings)
    {
        var leastA = PhaseLeastMotorA * settings.MotorRatedCurrent.Amperes;
        if (at.CurrentA == 0 || Math.Abs(frequencyHz) < PhaseLowestHz || meanSquareA2 < leastA * leastA)
        {
            (lowU, lowV, lowW) = (0, 0, 0);
            return false;
        }

        var (sin, cos) = Math.SinCos(angleRad);
        double along = at.AlongA, across = at.AcrossA;
        var (x, y) = (Math.Sqrt(2) * ((along * cos) + (across * sin)), Math.Sqrt(2) * ((along * sin) - (across * cos)));
        var (zero, half, turned) = (residualA / 3, 0.5 * x, 0.5 * Math.Sqrt(3) * y);
        var low = PhaseShare * PhaseShare * 2 * meanSquareA2;
        lowU = Counted(lowU, x + zero, low);
        lowV = Counted(lowV, turned - half + zero, low);
        lowW = Counted(lowW, zero - half - turned, low);
        if (Math.Max(lowU, Math.Max(lowV, lowW)) < PhaseDelayS)
        {
            return false;
        }

        (lowU, lowV, lowW) = (0, 0, 0);
        return true;
    }

    private static double Counted(double seconds, double currentA, double lowA2) => currentA * currentA < lowA2 ? seconds + ControlFigures.TickS : 0;
}
