using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of machine and shaft on a source whose frequency rises evenly and whose voltage follows it in a straight line.</summary>
/// <remarks>
/// States: λqs, λds, λqr, λdr (Wb), ωm (rad/s, mechanical), ω (rad/s, of the source and of the frame that turns with it). vqs = v₀ + v₁·ω, vds = 0, pω = a.
/// Without core loss and stray loss, so that nothing but the equations of the machine and the shaft is left.
/// </remarks>
internal struct RampRates<T> : IShaftRates<T>
    where T : struct, ILanes<T>
{
    internal InductionMachine<T> Machine;
    internal MagnetizingShare<T> Share;
    internal Shaft<T> Shaft;
    internal T AtZeroV;
    internal T PerRadPerSV;
    internal T AngularAcceleration;

    /// <inheritdoc/>
    public readonly T Direction => Shaft.Direction;

    /// <inheritdoc/>
    public readonly T HoldLowestNm => Shaft.HoldLowestNm;

    /// <inheritdoc/>
    public readonly T HoldHighestNm => Shaft.HoldHighestNm;

    /// <inheritdoc/>
    public void Move(int lane, int direction) => Shaft.Move(lane, direction);

    /// <inheritdoc/>
    public readonly T DrivingTorqueNm(in SixStates<T> states) =>
        Machine.TorqueNm(Machine.Currents(Share, states.X1, states.X2, states.X3, states.X4), states.X3, states.X4);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly void At(
        T x1, T x2, T x3, T x4, T x5, T x6,
        out T d1, out T d2, out T d3, out T d4, out T d5, out T d6)
    {
        var i = Machine.Currents(Share, x1, x2, x3, x4, withCore: false);
        Machine.Voltages(i, x1, x2, x3, x4, x6, T.MultiplySubtractFrom(Machine.PolePairs, x5, x6), T.MultiplyAdd(PerRadPerSV, x6, AtZeroV), default, out d1, out d2, out d3, out d4);
        d5 = Shaft.AccelerationRadPerS2(Machine.TorqueNm(i, x3, x4), x5);
        d6 = AngularAcceleration;
    }
}
