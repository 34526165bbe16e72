using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics.Batch;

/// <summary>A start of motor and machine on a V/f ramp without any control: from 0 to a frequency within a time, and on from there.</summary>
/// <remarks>
/// Source without impedance, straight voltage with boost; core and stray losses left out. Fixed steps of the classical Runge-Kutta method: in the frame that turns
/// with the field the solution changes slowly, so a step may be long; what bounds it is the angle of the field within it, at which a dying transient still turns.
/// </remarks>
internal sealed class RampRun<T>
    where T : struct, ILanes<T>
{
    // Of the field within a step, in rad: holds speed to 0.01 rad/s and current to 0.1 A of an exact integration of a 50 hp motor.
    private const double MostAngleInStep = 1.8;

    private readonly double stepS;
    private readonly T angularAcceleration;
    private RampRates<T> rates;
    private SixStates<T> states;

    internal RampRun(IReadOnlyList<EquivalentCircuit> motors, DrivenMachine machine, VoltsPerHertz curve, ElectricalFrequency frequency, Duration ramp)
    {
        rates.Machine = new InductionMachine<T>([.. motors.Select(m => m with { CoreLoss = null })]);
        rates.Share = rates.Machine.ShareAt(default);
        rates.Shaft = new Shaft<T>([.. motors.Select(m => new ShaftLoad(machine, m))]);
        var (atZeroV, atTopV) = (PeakV(curve, default), PeakV(curve, frequency));
        rates.AtZeroV = T.Of(atZeroV);
        rates.PerRadPerSV = T.Of((atTopV - atZeroV) / frequency.RadiansPerSecond);
        angularAcceleration = T.Of(frequency.RadiansPerSecond / ramp.Seconds);
        RampSteps = (int)Math.Ceiling(ramp.Seconds * frequency.RadiansPerSecond / MostAngleInStep);
        stepS = ramp.Seconds / RampSteps;
        for (var lane = 0; lane < T.Count; lane++)
        {
            rates.Move(lane, 1);
        }
    }

    /// <summary>Steps in which the ramp is passed.</summary>
    internal int RampSteps { get; }

    internal double StepS => stepS;

    internal T SpeedRadPerS => states.X5;

    /// <summary>Stator current, rms of a sine of its amplitude, in A.</summary>
    internal T CurrentA => rates.Machine.Currents(rates.Share, states.X1, states.X2, states.X3, states.X4).StatorRmsA;

    /// <summary>Back to rest without flux.</summary>
    internal void Restart() => states = default;

    /// <summary>On the ramp for so many steps.</summary>
    internal void Rise(int steps) => Go(steps, angularAcceleration);

    /// <summary>At the frequency reached for so many steps.</summary>
    internal void Stay(int steps) => Go(steps, default);

    private void Go(int steps, T acceleration)
    {
        var (own, at) = (rates, states);
        own.AngularAcceleration = acceleration;
        for (var i = 0; i < steps; i++)
        {
            ShaftMotion.Advance<RungeKutta4<T>, RampRates<T>, T>(default, ref own, ref at, stepS);
        }

        (rates, states) = (own, at);
    }

    private static double PeakV(VoltsPerHertz curve, ElectricalFrequency at) => Math.Sqrt(2) * curve.At(at).Phase.Volts;
}
