using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Dynamics.Control;

/// <summary>Output voltage against frequency: V/f with boost, as <see cref="VoltsPerHertz"/> defines it.</summary>
internal sealed class VoltageCurve(ControlSettings settings)
{
    private readonly VoltsPerHertz curve = new()
    {
        BaseFrequency = settings.BaseFrequency,
        MaximumVoltage = settings.MaximumOutputVoltage,
        RatedVoltage = settings.MotorRatedVoltage,
        Boost = settings.TorqueBoost,
        Shape = settings.VoltageShape,
    };

    /// <summary>Voltage, line to line, rms, in V.</summary>
    internal double At(double frequencyHz) => curve.At(ElectricalFrequency.FromHertz(Math.Abs(frequencyHz))).Volts;
}
