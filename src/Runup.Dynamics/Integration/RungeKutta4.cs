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
    // Compiled well at once: a whole rehearsal would be over before counting calls had it compiled anew.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Step<TRates>(ref TRates rates, ref SixStates<T> states, T lengthS)
        where TRates : struct, IRates<T>
    {
        T x1 = states.X1, x2 = states.X2, x3 = states.X3, x4 = states.X4, x5 = states.X5, x6 = states.X6;
        T k1 = default, k2 = default, k3 = default, k4 = default, k5 = default, k6 = default;
        T y1 = x1, y2 = x2, y3 = x3, y4 = x4, y5 = x5, y6 = x6;

        // One copy of the equations, passed four times: a compiler that has to hold four of them in sight loses the registers.
        for (var stage = 0; stage < 4; stage++)
        {
            var ahead = T.Of(stage == 0 ? 0 : stage == 3 ? 1 : 0.5) * lengthS;
            rates.At(
                M(ahead, k1, x1), M(ahead, k2, x2), M(ahead, k3, x3), M(ahead, k4, x4), M(ahead, k5, x5), M(ahead, k6, x6),
                out k1, out k2, out k3, out k4, out k5, out k6);
            var weight = T.Of(stage is 0 or 3 ? 1.0 / 6 : 1.0 / 3) * lengthS;
            (y1, y2, y3) = (M(weight, k1, y1), M(weight, k2, y2), M(weight, k3, y3));
            (y4, y5, y6) = (M(weight, k4, y4), M(weight, k5, y5), M(weight, k6, y6));
        }

        states.X1 = y1;
        states.X2 = y2;
        states.X3 = y3;
        states.X4 = y4;
        states.X5 = y5;
        states.X6 = y6;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T M(T a, T b, T c) => T.MultiplyAdd(a, b, c);
}
