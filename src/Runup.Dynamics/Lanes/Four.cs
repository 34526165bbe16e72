using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Runup.Dynamics.Lanes;

/// <summary>Four numbers in one 256-bit register, or in two of 128 bits where the machine has no wider ones.</summary>
internal readonly struct Four(Vector256<double> values) : ILanes<Four>
{
    private readonly Vector256<double> values = values;

    public static int Count => 4;

    public double this[int lane] => values.GetElement(lane);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator +(Four left, Four right) => new(left.values + right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator -(Four left, Four right) => new(left.values - right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator *(Four left, Four right) => new(left.values * right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator /(Four left, Four right) => new(left.values / right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator *(double left, Four right) => new(right.values * left);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four operator -(Four value) => new(-value.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Of(double same) => new(Vector256.Create(same));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Load(ReadOnlySpan<double> values) => new(Vector256.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values) => this.values.CopyTo(values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four MultiplyAdd(Four a, Four b, Four c) => new(Vector256.FusedMultiplyAdd(a.values, b.values, c.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four MultiplySubtractFrom(Four a, Four b, Four c) => Fma.IsSupported
        ? new(Fma.MultiplyAddNegated(a.values, b.values, c.values))
        : MultiplyAdd(-a, b, c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Sqrt(Four value) => new(Vector256.Sqrt(value.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Abs(Four value) => new(Vector256.Abs(value.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Min(Four left, Four right) => new(Vector256.MinNative(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Max(Four left, Four right) => new(Vector256.MaxNative(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Less(Four left, Four right) => new(Vector256.LessThan(left.values, right.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Choose(Four mask, Four yes, Four no) => new(Vector256.ConditionalSelect(mask.values, yes.values, no.values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four And(Four left, Four right) => new(left.values & right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Or(Four left, Four right) => new(left.values | right.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Not(Four mask) => new(~mask.values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Four mask) => Vector256.ExtractMostSignificantBits(mask.values) != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(Four mask) => Vector256.ExtractMostSignificantBits(mask.values) == (1u << Count) - 1;
}
