using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Runup.Dynamics.Lanes;

/// <summary>Eight numbers in one 512-bit register.</summary>
internal readonly struct Eight(Vector512<double> values) : ILanes<Eight>
{
    private readonly Vector512<double> values = values;

    public static int Count => 8;

    public double this[int lane] => values.GetElement(lane);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator +(Eight left, Eight right) => new(left.values + right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator -(Eight left, Eight right) => new(left.values - right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator *(Eight left, Eight right) => new(left.values * right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator /(Eight left, Eight right) => new(left.values / right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator *(double left, Eight right) => new(right.values * left);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator -(Eight value) => new(-value.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Of(double same) => new(Vector512.Create(same));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Load(ReadOnlySpan<double> values) => new(Vector512.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values) => this.values.CopyTo(values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight MultiplyAdd(Eight a, Eight b, Eight c) => new(Vector512.FusedMultiplyAdd(a.values, b.values, c.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight MultiplySubtractFrom(Eight a, Eight b, Eight c) => Avx512F.IsSupported
        ? new(Avx512F.FusedMultiplyAddNegated(a.values, b.values, c.values))
        : MultiplyAdd(-a, b, c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Sqrt(Eight value) => new(Vector512.Sqrt(value.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Abs(Eight value) => new(Vector512.Abs(value.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Min(Eight left, Eight right) => new(Vector512.MinNative(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Max(Eight left, Eight right) => new(Vector512.MaxNative(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Less(Eight left, Eight right) => new(Vector512.LessThan(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Choose(Eight mask, Eight yes, Eight no) => new(Vector512.ConditionalSelect(mask.values, yes.values, no.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight And(Eight left, Eight right) => new(left.values & right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Or(Eight left, Eight right) => new(left.values | right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Not(Eight mask) => new(~mask.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Eight mask) => Vector512.ExtractMostSignificantBits(mask.values) != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(Eight mask) => Vector512.ExtractMostSignificantBits(mask.values) == (1u << Count) - 1;
}
