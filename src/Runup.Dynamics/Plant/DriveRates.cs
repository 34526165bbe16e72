using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of machine, shaft and DC bus.</summary>
/// <remarks>
/// <para>
/// States: λqs, λds, λqr, λdr (Wb), ωm (rad/s, mechanical), v (V, DC bus). The inverter is taken by its average: vqs = mq·v, vds = md·v in the
/// frame that turns with the voltage, and its power comes from the bus: i = 3/2·(mq·iqs + md·ids). C·dv/dt = i_rectifier − i − v·G − i_loss.
/// The shaft is driven by Te − stray (<see cref="Shaft{T}"/>).
/// </para>
/// <para>Stray loss brakes the shaft in proportion to speed and to the square of the current: it has its stated value at the rated point.</para>
/// <para>
/// Where the inverter is off there is no stator current and no torque: in a frame that turns with the rotor the rotor flux only falls,
/// pλr = −rr/(Llr + Lm)·λr; the stator flux has no meaning of its own and rests. Assumes that the voltage of the decaying flux stays below
/// the bus, so that no diode of the inverter conducts.
/// </para>
/// </remarks>
internal struct DriveRates<T> : IShaftRates<T>
    where T : struct, ILanes<T>
{
    internal InductionMachine<T> Machine;
    internal MagnetizingShare<T> Share;
    internal T FrameRadPerS;
    internal T ModulationQ;
    internal T ModulationD;

    /// <summary>3/2·mq and 3/2·md: what the inverter takes from the bus for each ampere on an axis.</summary>
    internal T BusShareQ;
    internal T BusShareD;
    internal BusRates<T> Bus;
    internal Shaft<T> Shaft;
    private readonly T strayPerSpeed;
    private readonly T openRotorRate;
    private readonly bool hasStray;
    private T fed;
    private bool allFed;

    internal DriveRates(IReadOnlyList<EquivalentCircuit> motors)
    {
        Machine = new InductionMachine<T>(motors);
        strayPerSpeed = LaneSet.From<T, EquivalentCircuit>(motors, StrayBraking.PerSpeed);
        hasStray = T.Any(T.Less(default, strayPerSpeed));
        openRotorRate = Machine.OpenRotorRate;
    }

    /// <inheritdoc/>
    public readonly T Direction => Shaft.Direction;

    /// <inheritdoc/>
    public readonly T HoldLowestNm => Shaft.HoldLowestNm;

    /// <inheritdoc/>
    public readonly T HoldHighestNm => Shaft.HoldHighestNm;

    /// <summary>Set where the inverter feeds the motor.</summary>
    internal T Fed
    {
        readonly get => fed;
        set
        {
            fed = value;
            allFed = T.All(value);
        }
    }

    /// <inheritdoc/>
    public void Move(int lane, int direction) => Shaft.Move(lane, direction);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T DrivingTorqueNm(in SixStates<T> states) => T.Choose(
        fed, Machine.TorqueNm(Machine.Currents(Share, states.X1, states.X2, states.X3, states.X4), states.X3, states.X4), default);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly void At(
        T x1, T x2, T x3, T x4, T x5, T x6,
        out T d1, out T d2, out T d3, out T d4, out T d5, out T d6)
    {
        var i = Machine.Currents(Share, x1, x2, x3, x4, Machine.HasCore);
        Machine.Voltages(
            i, x1, x2, x3, x4, FrameRadPerS, T.MultiplySubtractFrom(Machine.PolePairs, x5, FrameRadPerS), ModulationQ * x6, ModulationD * x6, out d1, out d2, out d3, out d4);
        var drivingNm = Machine.TorqueNm(i, x3, x4);
        if (hasStray)
        {
            drivingNm = T.MultiplySubtractFrom(strayPerSpeed * i.StatorSquareA2, x5, drivingNm);
        }

        var inverterA = T.MultiplyAdd(BusShareQ, i.QsA, BusShareD * i.DsA);
        if (!allFed)
        {
            d1 = T.Choose(fed, d1, default);
            d2 = T.Choose(fed, d2, default);
            d3 = T.Choose(fed, d3, -(openRotorRate * x3));
            d4 = T.Choose(fed, d4, -(openRotorRate * x4));
            drivingNm = T.Choose(fed, drivingNm, default);
            inverterA = T.Choose(fed, inverterA, default);
        }

        d5 = Shaft.AccelerationRadPerS2(drivingNm, x5);
        d6 = Bus.At(x6, inverterA);
    }
}
