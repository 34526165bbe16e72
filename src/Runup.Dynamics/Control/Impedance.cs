using System.Numerics;

namespace Runup.Dynamics.Control;

/// <summary>Impedance of a motor at rest from a voltage along one axis, by correlation over whole periods.</summary>
/// <remarks>
/// The voltage stands for a millisecond at a time, its sine taken at the middle: its fundamental is sin(x)/x of the amplitude, x = π·f·T, without delay. The current is read at the end of each
/// millisecond. On one axis the field swings and does not turn: no torque.
/// </remarks>
internal sealed class Impedance(double hertz, double amplitudeV, double settleS, int periods)
{
    private Complex current;
    private int samples;
    private long ticks;

    private double AngleOf(double tick) => 2 * Math.PI * hertz * tick * ControlFigures.TickS;

    /// <summary>All periods are in.</summary>
    internal bool IsDone { get; private set; }

    /// <summary>Voltage for the next millisecond, peak of the phase, after the current at the end of the last one, likewise.</summary>
    internal double Next(double currentA)
    {
        var lengthS = ticks * ControlFigures.TickS;
        if (lengthS > settleS)
        {
            current += currentA * Complex.Exp(new Complex(0, -AngleOf(ticks)));
            samples++;
        }

        IsDone = samples >= (int)Math.Round(periods / (hertz * ControlFigures.TickS));
        ticks++;
        return amplitudeV * Math.Sin(AngleOf(ticks - 0.5));
    }

    /// <summary>The impedance, in Ω.</summary>
    internal Complex Ohms
    {
        get
        {
            var x = Math.PI * hertz * ControlFigures.TickS;
            var voltage = new Complex(0, -amplitudeV * Math.Sin(x) / x);
            return voltage / (2.0 / samples * current);
        }
    }
}
