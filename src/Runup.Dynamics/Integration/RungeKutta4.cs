namespace Runup.Dynamics.Integration;

/// <summary>The classical Runge-Kutta method of fourth order, one step for each call.</summary>
/// <remarks>
/// y₁ = y₀ + h/6 (k₁ + 2k₂ + 2k₃ + k₄). Error of a step O(h⁵); stable for real rates down to about −2.78/h.
/// The states are locals: kept in registers they run several times as fast as in an array.
/// </remarks>
[Engineering.Source("hairer", "II.1, table 1.2 (from memory)")]
internal readonly struct RungeKutta4 : IStepper
{
    /// <inheritdoc/>
    public void Step<TRates>(in TRates rates, ref SixStates states, double lengthS)
        where TRates : struct, IRates
    {
        double x1 = states.X1, x2 = states.X2, x3 = states.X3, x4 = states.X4, x5 = states.X5, x6 = states.X6;
        var half = 0.5 * lengthS;
        rates.At(x1, x2, x3, x4, x5, x6, out var a1, out var a2, out var a3, out var a4, out var a5, out var a6);
        rates.At(
            x1 + (half * a1), x2 + (half * a2), x3 + (half * a3), x4 + (half * a4), x5 + (half * a5), x6 + (half * a6),
            out var b1, out var b2, out var b3, out var b4, out var b5, out var b6);
        rates.At(
            x1 + (half * b1), x2 + (half * b2), x3 + (half * b3), x4 + (half * b4), x5 + (half * b5), x6 + (half * b6),
            out var c1, out var c2, out var c3, out var c4, out var c5, out var c6);
        rates.At(
            x1 + (lengthS * c1), x2 + (lengthS * c2), x3 + (lengthS * c3), x4 + (lengthS * c4), x5 + (lengthS * c5), x6 + (lengthS * c6),
            out var d1, out var d2, out var d3, out var d4, out var d5, out var d6);
        var sixth = lengthS / 6;
        states.X1 = x1 + (sixth * (a1 + (2 * (b1 + c1)) + d1));
        states.X2 = x2 + (sixth * (a2 + (2 * (b2 + c2)) + d2));
        states.X3 = x3 + (sixth * (a3 + (2 * (b3 + c3)) + d3));
        states.X4 = x4 + (sixth * (a4 + (2 * (b4 + c4)) + d4));
        states.X5 = x5 + (sixth * (a5 + (2 * (b5 + c5)) + d5));
        states.X6 = x6 + (sixth * (a6 + (2 * (b6 + c6)) + d6));
    }
}
