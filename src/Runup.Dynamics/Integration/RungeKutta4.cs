using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>The classical Runge-Kutta method of fourth order, one step for each call.</summary>
/// <remarks>
/// y₁ = y₀ + h/6 (k₁ + 2k₂ + 2k₃ + k₄). Error of a step O(h⁵); stable for real rates down to about −2.78/h.
/// The states are locals: kept in registers they run several times as fast as in an array.
/// </remarks>
[Engineering.Source("hairer", "II.1, table 1.2 (from memory)")]
internal readonly struct RungeKutta4<T> : IStepper<T>
    where T : struct, ILanes<T>
{
    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Step<TRates>(in TRates rates, ref SixStates<T> states, T lengthS)
        where TRates : struct, IRates<T>
    {
        T x1 = states.X1, x2 = states.X2, x3 = states.X3, x4 = states.X4, x5 = states.X5, x6 = states.X6;
        var half = 0.5 * lengthS;
        rates.At(x1, x2, x3, x4, x5, x6, out var a1, out var a2, out var a3, out var a4, out var a5, out var a6);
        rates.At(
            M(half, a1, x1), M(half, a2, x2), M(half, a3, x3), M(half, a4, x4), M(half, a5, x5), M(half, a6, x6),
            out var b1, out var b2, out var b3, out var b4, out var b5, out var b6);
        rates.At(
            M(half, b1, x1), M(half, b2, x2), M(half, b3, x3), M(half, b4, x4), M(half, b5, x5), M(half, b6, x6),
            out var c1, out var c2, out var c3, out var c4, out var c5, out var c6);
        rates.At(
            M(lengthS, c1, x1), M(lengthS, c2, x2), M(lengthS, c3, x3), M(lengthS, c4, x4), M(lengthS, c5, x5), M(lengthS, c6, x6),
            out var d1, out var d2, out var d3, out var d4, out var d5, out var d6);
        var sixth = (1.0 / 6) * lengthS;
        states.X1 = M(sixth, Sum(a1, b1, c1, d1), x1);
        states.X2 = M(sixth, Sum(a2, b2, c2, d2), x2);
        states.X3 = M(sixth, Sum(a3, b3, c3, d3), x3);
        states.X4 = M(sixth, Sum(a4, b4, c4, d4), x4);
        states.X5 = M(sixth, Sum(a5, b5, c5, d5), x5);
        states.X6 = M(sixth, Sum(a6, b6, c6, d6), x6);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T M(T a, T b, T c) => T.MultiplyAdd(a, b, c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Sum(T a, T b, T c, T d) => T.MultiplyAdd(T.Of(2), b + c, a + d);
}
