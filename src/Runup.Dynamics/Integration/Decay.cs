using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>What a decay e^z does within a step, and its averages: φ₁ = (e^z − 1)/z, φ₂ = (φ₁ − 1)/z, φ₃ = (φ₂ − ½)/z; at z = 0: 1, 1, ½ and ⅙.</summary>
/// <remarks>
/// For z from −25 to 1, with an error below 1e-6 of φ₃ and less of the others: a series at z/16, doubled four times by e^{2z} = (e^z)², φ₁(2z) = ½(e^z + 1)φ₁, φ₂(2z) = ¼(e^z φ₂ + φ₁ + φ₂),
/// φ₃(2z) = ⅛(e^z φ₃ + ½φ₁ + φ₂ + φ₃). Nothing is subtracted there, so that no digit is lost near zero.
/// </remarks>
internal struct Decay<T>
    where T : struct, ILanes<T>
{
    private const int Doublings = 4;

    internal T Exponential;
    internal T Phi1;
    internal T Phi2;
    internal T Phi3;
    internal T HalfExponential;
    internal T HalfPhi1;

    /// <summary>The decay over a whole step and over its half.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Decay<T> Of(T z)
    {
        var x = (1.0 / (1 << Doublings)) * z;
        var phi3 = M(x, M(x, M(x, M(x, M(x, M(x, M(x, M(x, T.Of(1 / 39_916_800.0), T.Of(1 / 3_628_800.0)), T.Of(1 / 362_880.0)), T.Of(1 / 40_320.0)), T.Of(1 / 5_040.0)), T.Of(1 / 720.0)), T.Of(1 / 120.0)), T.Of(1 / 24.0)), T.Of(1 / 6.0));
        var phi2 = M(x, phi3, T.Of(0.5));
        var phi1 = M(x, phi2, T.Of(1));
        var own = new Decay<T> { Exponential = M(x, phi1, T.Of(1)), Phi1 = phi1, Phi2 = phi2, Phi3 = phi3 };
        for (var i = 1; i < Doublings; i++)
        {
            own.Double();
        }

        (own.HalfExponential, own.HalfPhi1) = (own.Exponential, own.Phi1);
        own.Double();
        return own;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Double()
    {
        Phi3 = 0.125 * (M(Exponential, Phi3, Phi3) + M(T.Of(0.5), Phi1, Phi2));
        Phi2 = 0.25 * (M(Exponential, Phi2, Phi2) + Phi1);
        Phi1 = 0.5 * M(Exponential, Phi1, Phi1);
        Exponential *= Exponential;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T M(T a, T b, T c) => T.MultiplyAdd(a, b, c);
}
