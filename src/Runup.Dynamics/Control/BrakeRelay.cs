namespace Runup.Dynamics.Control;

/// <summary>When the mechanical brake is opened and closed.</summary>
/// <remarks>
/// With a relay set for it: opened once output frequency and current have stood at their levels for the delay, so that the motor carries the load before the brake lets go; closed
/// below its closing frequency on the way to a stop, and whenever the output is off. Without: the machine's own control opens and closes it with the output.
/// </remarks>
internal sealed class BrakeRelay
{
    // The ramp stops exactly at the opening frequency; a part in a million forgives rounding.
    private const double Exactly = 1 - 1e-6;

    private double waitedS;

    internal bool Open { get; private set; }

    /// <summary>One sample.</summary>
    internal void Sample(BrakeSettings? settings, OutputMode output, DriveState state, double frequencyHz, double currentA)
    {
        if (output == OutputMode.Off)
        {
            (Open, waitedS) = (false, 0);
        }
        else if (settings is null)
        {
            Open = true;
        }
        else if (!Open)
        {
            var carries = state == DriveState.Running && Math.Abs(frequencyHz) >= settings.OpenFrequency.Hertz * Exactly && currentA >= settings.OpenCurrent.Amperes;
            waitedS = carries ? waitedS + ControlFigures.TickS : 0;
            Open = carries && waitedS >= settings.OpenDelay.Seconds;
        }
        else if (state != DriveState.Running && Math.Abs(frequencyHz) < settings.CloseFrequency.Hertz)
        {
            (Open, waitedS) = (false, 0);
        }
    }

    /// <summary>The frequency to go to: no further than where the brake opens while it is closed.</summary>
    internal double Held(BrakeSettings? settings, double targetHz) =>
        settings is null || Open ? targetHz : Math.Clamp(targetHz, -settings.OpenFrequency.Hertz, settings.OpenFrequency.Hertz);
}
