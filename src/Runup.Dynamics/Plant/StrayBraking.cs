using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>Additional load loss as a torque that brakes the shaft.</summary>
/// <remarks>T = c·ω·|i|² (|i| the amplitude), with c so that the power T·ω is the stated loss at rated speed and rated current.</remarks>
internal static class StrayBraking
{
    /// <summary>The constant c, in N·m·s/A².</summary>
    internal static double PerSpeed(EquivalentCircuit motor)
    {
        if (motor.StrayLoss.Watts <= 0 || motor.RatedCurrent is not { Amperes: > 0 } rated)
        {
            return 0;
        }

        var speed = motor.RatedSpeed?.RadiansPerSecond ?? motor.RatedFrequency.SynchronousSpeed(motor.Poles).RadiansPerSecond;
        return motor.StrayLoss.Watts / (speed * speed * 2 * rated.Amperes * rated.Amperes);
    }
}
