using Runup.Engineering.Motors;

namespace Runup.Dynamics;

/// <summary>When a shaft counts as standing still.</summary>
internal static class Standstill
{
    // Of synchronous speed: 3 rpm of 1500 (common practice, no source).
    internal const double Share = 0.002;

    internal static bool At(double speedRpm, EquivalentCircuit motor) =>
        Math.Abs(speedRpm) <= Share * motor.RatedFrequency.SynchronousSpeed(motor.Poles).Rpm;
}
