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
    private double perInertia;
    private LoadBranch forward;
    private LoadBranch backward;
    internal BusRates Bus;
    private LoadBranch load;
    private double perMovingInertia;

    /// <inheritdoc/>
    public double HoldLowestNm { get; private set; }

    /// <inheritdoc/>
    public double HoldHighestNm { get; private set; }

    /// <summary>Puts a load on the shaft.</summary>
    internal void Put(ShaftLoad next)
    {
        (perInertia, forward, backward) = (next.PerInertia, next.Forward, next.Backward);
        (HoldLowestNm, HoldHighestNm) = (next.HoldLowestNm, next.HoldHighestNm);
    }

    /// <inheritdoc/>
    public void Hold() => perMovingInertia = 0;

    /// <inheritdoc/>
    public void Release(int direction)
    {
        perMovingInertia = perInertia;
        load = direction > 0 ? forward : backward;
    }

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
        d5 = -perMovingInertia * load.At(x5);
        d6 = Bus.At(x6, 0);
    }
}
