namespace Runup.Engineering.Motors;

/// <summary>A rotor whose resistance rises and whose leakage falls with slip, as two cages side by side that equal one plain cage at the rated point.</summary>
/// <remarks>
/// <para>
/// Rotor: a common leakage X_c, then the top of the bars R_o beside their bottom R_i + jsX_i: Z(s) = jsX_c + R_o (ρ + ju)/(1 + ju), ρ = R_i/(R_o + R_i),
/// u = s u₁, u₁ = X_i/(R_o + R_i). So R(s) = R_o (ρ + u²)/(1 + u²), sX(s) = R_o u (1 − ρ)/(1 + u²) + sX_c. The rise at standstill, R(1)/R(0) − 1 =
/// (1/ρ − 1) u₁²/(1 + u₁²), and u₁ are given; R_o and X_c follow from resistance and leakage at the rated slip. As two parallel branches:
/// Y(p) = Σ 1/(R_k + p X_k), p = js, by partial fractions.
/// </para>
/// <para>Validity: slips from 0 to 1 at rated frequency; a physical chain of resistances and leakages whatever the numbers.</para>
/// </remarks>
[Source("fitzgerald", "section 6.7, deep-bar and double-cage rotors")]
internal static class DeepBars
{
    // So much of the rotor's leakage at the rated point may be that of the bars; the rest is common (end rings, slot tops, zigzag).
    private const double LargestBarShare = 0.85;
    private const int Rounds = 60;

    /// <summary>The circuit with bars instead of its plain cage; the rise is as large as the rotor's leakage leaves room for.</summary>
    /// <param name="plain">With one cage, which holds at the rated slip.</param>
    /// <param name="slip">Rated slip.</param>
    /// <param name="rise">R(1)/R(0) − 1, above zero.</param>
    /// <param name="corner">u₁ above zero.</param>
    internal static CircuitValues Of(in CircuitValues plain, double slip, double rise, double corner)
    {
        var largest = LargestBarShare * plain.RotorLeakage_ohm;
        var (top, rho, bar) = Bars(plain, slip, rise, corner);

        // The leakage of the bars goes with u₁ + 1/u₁ times the rise: it is least at u₁ = 1, and from there on with the rise.
        for (var round = 0; bar > largest && round < Rounds; round++)
        {
            (rise, corner) = (corner == 1 ? rise * Math.Min(0.9, largest / bar) : rise, 1);
            (top, rho, bar) = Bars(plain, slip, rise, corner);
        }

        if (!(bar <= largest))
        {
            return plain;
        }

        var common = plain.RotorLeakage_ohm - bar;
        var bottom = top * rho / (1 - rho);
        var inner = corner * (top + bottom);
        return TwoBranches(plain, common, top, bottom, inner);
    }

    private static (double Top_ohm, double Rho, double BarLeakage_ohm) Bars(in CircuitValues plain, double slip, double rise, double corner)
    {
        var square = corner * corner;
        var rho = 1 / (1 + (rise * (1 + square) / square));
        var atRated = slip * slip * square;
        var top = plain.Rotor_ohm * (1 + atRated) / (rho + atRated);
        return (top, rho, top * corner * (1 - rho) / (1 + atRated));
    }

    // Y = (top + bottom + p inner) / (p² c i + p (c (t + b) + t i) + t b); both roots are real and negative.
    private static CircuitValues TwoBranches(in CircuitValues plain, double common, double top, double bottom, double inner)
    {
        var (a, b, c) = (common * inner, (common * (top + bottom)) + (top * inner), top * bottom);
        var root = Math.Sqrt((b * b) - (4 * a * c));
        var far = -(b + root) / (2 * a);
        var near = c / (a * far);
        double Leakage(double pole, double other) => a * (pole - other) / (top + bottom + (pole * inner));
        var (first, second) = (Leakage(near, far), Leakage(far, near));
        return plain with
        {
            Rotor_ohm = -near * first,
            RotorLeakage_ohm = first,
            SecondRotor_ohm = -far * second,
            SecondRotorLeakage_ohm = second,
        };
    }
}
