using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The current that a run-up at a constant rate takes.</summary>
internal static class RampCurrent
{
    private const int Places = 8;

    /// <summary>The highest over the ramp, of one motor, in A; that at breakdown where the ramp asks for more than the motor has.</summary>
    internal static double Highest(Motion motion, Duration ramp)
    {
        var circuit = motion.Motor.Circuit;
        var synchronous = motion.MaximumFrequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond;
        var highest = 0.0;
        for (var place = 1; place <= Places; place++)
        {
            var part = place / (double)Places;
            var speed = ShaftSpeed.FromRadiansPerSecond(synchronous * part * 0.98);
            var torque = motion.Machine.TorqueFor(speed, ShaftSpeed.FromRadiansPerSecond(synchronous / ramp.Seconds));
            var frequency = ElectricalFrequency.FromHertz(motion.MaximumFrequency.Hertz * part);
            highest = Math.Max(highest, OperatingPoint.AtShaftTorque(circuit, motion.Motor.Characteristic.At(frequency), frequency, torque) switch
            {
                OperatingPoint.Runs runs => runs.Solution.Current.Amperes,
                OperatingPoint.BeyondBreakdown beyond => beyond.Largest.Current.Amperes,
                _ => throw new System.Diagnostics.UnreachableException(),
            });
        }

        return highest;
    }
}
