using System.Numerics;
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
/// <para>For one drive alone: the plant of many has conductors that can't fail, so that there is nothing to see.</para>
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

    private static readonly OutputPhase[] Phases = Enum.GetValues<OutputPhase>();

    private readonly double[] lowS = new double[Phases.Length];
    private double meanSquareA2;
    private double residualSquareA2;

    /// <summary>One sample: what is to trip, or none.</summary>
    /// <param name="at">What the plant shows.</param>
    /// <param name="residual">Sum of the three phases: now, and the largest since the last sample; in A.</param>
    /// <param name="blocked">The output stage switched itself off.</param>
    /// <param name="angleRad">By how much the control's frame stands before one at rest.</param>
    /// <param name="frequencyHz">Output frequency.</param>
    /// <param name="settings">The settings at work.</param>
    internal TripCause Sample(in PlantReading<Lanes.One> at, (double NowA, double LargestA) residual, bool blocked, double angleRad, double frequencyHz, ControlSettings settings)
    {
        double currentA = at.CurrentA, largestA = at.LargestCurrentA;
        residualSquareA2 += ControlFigures.TickS / ResidualS * ((residual.NowA * residual.NowA) - residualSquareA2);
        meanSquareA2 += ControlFigures.TickS / AmplitudeS * ((currentA * currentA) - meanSquareA2);
        var protection = settings.Protection;
        var overcurrent = blocked || largestA >= drive.OvercurrentTrip.Amperes;
        if (protection.TripOnEarthFault && ((overcurrent && residual.LargestA > MostlyResidual * Math.Sqrt(2) * largestA)
            || Math.Sqrt(residualSquareA2) > ResidualShare * drive.Overloads[0].Current.Amperes))
        {
            residualSquareA2 = 0;
            return TripCause.EarthFault;
        }

        if (blocked)
        {
            return TripCause.ShortCircuit;
        }

        return protection.TripOnMotorPhase && PhaseIsMissing(at, residual.NowA, angleRad, frequencyHz, settings) ? TripCause.MotorPhase : TripCause.None;
    }

    private bool PhaseIsMissing(in PlantReading<Lanes.One> at, double residualA, double angleRad, double frequencyHz, ControlSettings settings)
    {
        var amplitudeA = Math.Sqrt(2 * meanSquareA2);
        if (at.CurrentA == 0 || Math.Abs(frequencyHz) < PhaseLowestHz || amplitudeA < PhaseLeastMotorA * Math.Sqrt(2) * settings.MotorRatedCurrent.Amperes)
        {
            Array.Clear(lowS);
            return false;
        }

        var vector = Math.Sqrt(2) * new Complex(at.AlongA, -at.AcrossA) * Complex.FromPolarCoordinates(1, angleRad);
        foreach (var phase in Phases)
        {
            var low = Math.Abs(FaultyFields.PhaseA(vector, residualA, phase)) < PhaseShare * amplitudeA;
            lowS[(int)phase] = low ? lowS[(int)phase] + ControlFigures.TickS : 0;
        }

        if (lowS.AsSpan().IndexOfAnyInRange(PhaseDelayS, double.PositiveInfinity) < 0)
        {
            return false;
        }

        Array.Clear(lowS);
        return true;
    }
}
