using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of rotor flux, shaft and DC bus while the inverter is off: no stator current, no torque.</summary>
/// <remarks>
/// In a frame that turns with the rotor the rotor flux only falls: pλr = −rr/(Llr + Lm)·λr. The stator flux has no meaning of its own and rests.
/// Assumes that the voltage of the decaying flux stays below the bus, so that no diode of the inverter conducts.
/// </remarks>
internal struct CoastingRates : IShaftRates
{
    internal double RotorRate;
    internal BusRates Bus;
    internal Shaft Shaft;

    /// <inheritdoc/>
    public readonly double HoldLowestNm => Shaft.HoldLowestNm;

    /// <inheritdoc/>
    public readonly double HoldHighestNm => Shaft.HoldHighestNm;

    /// <inheritdoc/>
    public void Hold() => Shaft.Hold();

    /// <inheritdoc/>
    public void Release(int direction) => Shaft.Release(direction);

    /// <inheritdoc/>
    public readonly double DrivingTorqueNm(in SixStates states) => 0;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly void At(
        double x1, double x2, double x3, double x4, double x5, double x6,
        out double d1, out double d2, out double d3, out double d4, out double d5, out double d6)
    {
        d1 = 0;
        d2 = 0;
        d3 = -RotorRate * x3;
        d4 = -RotorRate * x4;
        d5 = Shaft.AccelerationRadPerS2(0, x5);
        d6 = Bus.At(x6, 0);
    }
}
