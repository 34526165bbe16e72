using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>The classical Runge-Kutta method of fourth order for five states, and its exponential form for a sixth that settles fast.</summary>
/// <remarks>
/// The sixth state is v′ = −r·v + N: the decay with its rate r is taken exactly, N by the stages (h the step, E = e^{−rh}, φ its averages, see <see cref="Decay{T}"/>):
/// a = √E·v + h/2·φ₁(½)·N(v), b likewise with N(a), c = √E·a + h/2·φ₁(½)·(2N(b) − N(v)),
/// v₁ = E·v + h·((φ₁ − 3φ₂ + 4φ₃)·N(v) + 2(φ₂ − 2φ₃)·(N(a) + N(b)) + (4φ₃ − φ₂)·N(c)). With r = 0 that is the classical method; with any r ≥ 0 what stands still stays.
/// So the step may be many times longer than 1/r, as long as r still is what the equations do at the step's end: <see cref="Roughness"/> tells when not.
/// And since r need not be quite the equations' own, its decay is kept from step to step until they are too far apart.
/// </remarks>
[Engineering.Source("cox-matthews", "ETDRK4, equations (26) to (29) (from memory)")]
internal struct ExponentialRungeKutta4<T>
    where T : struct, ILanes<T>
{
    // By so much r·h may differ from the equations' own before the decay is taken anew; what is left is the classical method's to solve, and small for it.
    private const double MostApart = 0.1;

    private T ratePerS;
    private T lengthS;
    private T halfS;
    private T thirdS;
    private T sixthS;
    private T whole;
    private T halved;
    private T half;
    private T first;
    private T inner;
    private T last;

    /// <summary>How far the stages of the last step fell apart in the sixth state, in its unit; more than its error where the solution is smooth.</summary>
    internal T Roughness { get; private set; }

    /// <summary>Rate of the sixth state at the begin of the last step.</summary>
    internal T SlopePerS { get; private set; }

    /// <summary>For a single step: rate and length as they are, nothing kept.</summary>
    internal static ExponentialRungeKutta4<T> For(T settlingPerS, T stepS)
    {
        var own = default(ExponentialRungeKutta4<T>);
        own.Renew(LaneSet.Every<T>(), settlingPerS, stepS);
        return own;
    }

    /// <summary>Sets rate and length of the steps to come, for each member by its own figures.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Follow(T settlingPerS, T stepS)
    {
        var apart = T.Or(
            T.Less(T.Of(MostApart), stepS * T.Abs(settlingPerS - ratePerS)),
            T.Less(default, T.Abs(stepS - lengthS)));
        if (T.Any(apart))
        {
            Renew(apart, settlingPerS, stepS);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void Renew(T where, T settlingPerS, T stepS)
    {
        var decay = Decay<T>.Of(-(settlingPerS * stepS));
        var third = stepS * (decay.Phi2 - (2.0 * decay.Phi3));
        ratePerS = T.Choose(where, settlingPerS, ratePerS);
        lengthS = T.Choose(where, stepS, lengthS);
        (halfS, thirdS, sixthS) = (0.5 * lengthS, (1.0 / 3) * lengthS, (1.0 / 6) * lengthS);
        whole = T.Choose(where, decay.Exponential, whole);
        halved = T.Choose(where, decay.HalfExponential, halved);
        half = T.Choose(where, 0.5 * (stepS * decay.HalfPhi1), half);
        inner = T.Choose(where, 2.0 * third, inner);
        last = T.Choose(where, stepS * ((4.0 * decay.Phi3) - decay.Phi2), last);
        first = T.Choose(where, M(stepS, decay.Phi1 - decay.Phi2, -(2.0 * third)), first);
    }

    /// <summary>Advances the states by the length set.</summary>
    // Compiled well at once, and one copy of the equations: see the classical method.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Step<TRates>(ref TRates rates, ref SixStates<T> states)
        where TRates : struct, IRates<T>
    {
        T x1 = states.X1, x2 = states.X2, x3 = states.X3, x4 = states.X4, x5 = states.X5, x6 = states.X6;
        T k1 = default, k2 = default, k3 = default, k4 = default, k5 = default;
        T y1 = x1, y2 = x2, y3 = x3, y4 = x4, y5 = x5;
        var faded = halved * x6;
        T v = x6, n1 = default, n2 = default, a = default, middle = default;
        for (var stage = 0; stage < 4; stage++)
        {
            var ahead = stage == 0 ? default : stage == 3 ? lengthS : halfS;
            rates.At(
                M(ahead, k1, x1), M(ahead, k2, x2), M(ahead, k3, x3), M(ahead, k4, x4), M(ahead, k5, x5), v,
                out k1, out k2, out k3, out k4, out k5, out var n);
            var weight = stage is 0 or 3 ? sixthS : thirdS;
            (y1, y2, y3) = (M(weight, k1, y1), M(weight, k2, y2), M(weight, k3, y3));
            (y4, y5) = (M(weight, k4, y4), M(weight, k5, y5));
            if (stage == 0)
            {
                SlopePerS = n;
            }

            n = M(ratePerS, v, n);
            if (stage == 0)
            {
                n1 = n;
                v = a = M(half, n, faded);
            }
            else if (stage == 1)
            {
                n2 = n;
                v = M(half, n, faded);
            }
            else if (stage == 2)
            {
                middle = n;
                v = M(half, (2.0 * n) - n1, halved * a);
            }
            else
            {
                states.X6 = M(whole, x6, M(first, n1, M(inner, n2 + middle, last * n)));
                Roughness = T.Max(T.Abs(inner * (middle - n2)), T.Abs(last * (n - (2.0 * middle) + n1)));
            }
        }

        states.X1 = y1;
        states.X2 = y2;
        states.X3 = y3;
        states.X4 = y4;
        states.X5 = y5;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T M(T a, T b, T c) => T.MultiplyAdd(a, b, c);
}
