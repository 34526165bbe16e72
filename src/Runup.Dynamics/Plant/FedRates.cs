using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of machine, shaft and DC bus while the inverter feeds the motor.</summary>
/// <remarks>
/// <para>
/// States: λqs, λds, λqr, λdr (Wb), ωm (rad/s, mechanical), v (V, DC bus). The inverter is taken by its average: vqs = mq·v, vds = md·v in the
/// frame that turns with the voltage, and its power comes from the bus: i = 3/2·(mq·iqs + md·ids). C·dv/dt = i_rectifier − i − v·G − P/v.
/// The shaft is driven by Te − stray (<see cref="Plant.Shaft"/>).
/// </para>
/// <para>Stray loss brakes the shaft in proportion to speed and to the square of the current: it has its stated value at the rated point.</para>
/// </remarks>
internal struct FedRates : IShaftRates
{
    internal InductionMachine Machine;
    internal MagnetizingShare Share;
    internal double FrameRadPerS;
    internal double ModulationQ;
    internal double ModulationD;
    internal double StrayPerSpeed;
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
        d1 = (ModulationQ * x6) - (Machine.StatorOhm * i.QsA) - (FrameRadPerS * x2);
        d2 = (ModulationD * x6) + (FrameRadPerS * x1) - (Machine.StatorOhm * i.DsA);
        d3 = -(Machine.RotorOhm * i.QrA) - (slipRadPerS * x4);
        d4 = (slipRadPerS * x3) - (Machine.RotorOhm * i.DrA);
        var strayNm = StrayPerSpeed * i.StatorSquareA2 * x5;
        d5 = Shaft.AccelerationRadPerS2(Machine.TorqueNm(i, x3, x4) - strayNm, x5);
        d6 = Bus.At(x6, 1.5 * ((ModulationQ * i.QsA) + (ModulationD * i.DsA)));
    }
}
