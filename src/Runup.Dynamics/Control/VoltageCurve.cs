namespace Runup.Dynamics.Control;

/// <summary>Output voltage against frequency: V/f with boost.</summary>
/// <remarks>
/// Below the base frequency V = V_max·(f/f_b)^n + boost·V_N·(1 − f/f_b), n = 1 linear, 2 quadratic; V_max from there on (line to line, rms).
/// </remarks>
internal sealed class VoltageCurve(ControlSettings settings)
{
    private readonly double baseHz = settings.BaseFrequency.Hertz;
    private readonly double maximumV = settings.MaximumOutputVoltage.Volts;
    private readonly double boostV = settings.TorqueBoost.Ratio * settings.MotorRatedVoltage.Volts;
    private readonly bool quadratic = settings.VoltageShape == VoltageShape.Quadratic;

    /// <summary>Voltage, line to line, rms, in V.</summary>
    internal double At(double frequencyHz)
    {
        var part = Math.Abs(frequencyHz) / baseHz;
        if (part >= 1)
        {
            return maximumV;
        }

        return (maximumV * (quadratic ? part * part : part)) + (boostV * (1 - part));
    }
}
