using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of machine, shaft and DC bus while the inverter feeds the motor.</summary>
/// <remarks>
/// <para>
/// States: λqs, λds, λqr, λdr (Wb), ωm (rad/s, mechanical), v (V, DC bus). The inverter is taken by its average: vqs = m·v, vds = 0 in the frame
/// that turns with the voltage, and its power comes from the bus: i = 3/2·m·iqs. C·dv/dt = i_rectifier − 3/2·m·iqs − v·G − P/v.
/// J·dωm/dt = Te − T_load(ωm) − stray.
/// </para>
/// <para>Stray loss brakes the shaft in proportion to speed and to the square of the current: it has its stated value at the rated point.</para>
/// </remarks>
internal struct FedRates : IShaftRates
{
    internal InductionMachine Machine;
    internal MagnetizingShare Share;
    internal double FrameRadPerS;
    internal double Modulation;
    internal double PerInertia;
    internal double StrayPerSpeed;
    internal LoadBranch Forward;
    internal LoadBranch Backward;
    internal BusRates Bus;
    private LoadBranch load;
    private double perMovingInertia;

    /// <inheritdoc/>
    public double HoldLowestNm { get; internal set; }

    /// <inheritdoc/>
    public double HoldHighestNm { get; internal set; }

    /// <inheritdoc/>
    public void Hold() => perMovingInertia = 0;

    /// <inheritdoc/>
    public void Release(int direction)
    {
        perMovingInertia = PerInertia;
        load = direction > 0 ? Forward : Backward;
    }

    /// <inheritdoc/>
    public readonly double DrivingTorqueNm(in SixStates states) =>
        Machine.TorqueNm(Machine.Currents(Share, states.X1, states.X2, states.X3, states.X4), states.X3, states.X4);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly void At(
        double x1, double x2, double x3, double x4, double x5, double x6,
        out double d1, out double d2, out double d3, out double d4, out double d5, out double d6)
    {
        var i = Machine.Currents(Share, x1, x2, x3, x4);
        var slipRadPerS = FrameRadPerS - (Machine.PolePairs * x5);
        d1 = (Modulation * x6) - (Machine.StatorOhm * i.QsA) - (FrameRadPerS * x2);
        d2 = (FrameRadPerS * x1) - (Machine.StatorOhm * i.DsA);
        d3 = -(Machine.RotorOhm * i.QrA) - (slipRadPerS * x4);
        d4 = (slipRadPerS * x3) - (Machine.RotorOhm * i.DrA);
        var strayNm = StrayPerSpeed * i.StatorSquareA2 * x5;
        d5 = perMovingInertia * (Machine.TorqueNm(i, x3, x4) - load.At(x5) - strayNm);
        d6 = Bus.At(x6, 1.5 * Modulation * i.QsA);
    }
}
