using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Runup.Dynamics.Lanes;

/// <summary>A single number, so that one simulation runs on the same source as a batch.</summary>
internal readonly struct One(double value) : ILanes<One>
{
    private readonly double value = value;

    public static int Count => 1;

    public double this[int lane] => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator double(One one) => one.value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator One(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator +(One left, One right) => new(left.value + right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator -(One left, One right) => new(left.value - right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator *(One left, One right) => new(left.value * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator *(double left, One right) => new(left * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator /(One left, One right) => new(left.value / right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One operator -(One value) => new(-value.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Of(double same) => new(same);

    public static One Load(ReadOnlySpan<double> values) => new(values[0]);

    public void Store(Span<double> values) => values[0] = value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One MultiplyAdd(One a, One b, One c) => new(Math.FusedMultiplyAdd(a.value, b.value, c.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One MultiplySubtractFrom(One a, One b, One c) => Fma.IsSupported
        ? new(Fma.MultiplyAddNegatedScalar(Vector128.CreateScalarUnsafe(a.value), Vector128.CreateScalarUnsafe(b.value), Vector128.CreateScalarUnsafe(c.value)).ToScalar())
        : MultiplyAdd(-a, b, c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Sqrt(One value) => new(Math.Sqrt(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Abs(One value) => new(Math.Abs(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Min(One left, One right) => new(double.MinNative(left.value, right.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Max(One left, One right) => new(double.MaxNative(left.value, right.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Less(One left, One right) => Mask(left.value < right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Choose(One mask, One yes, One no) => Any(mask) ? yes : no;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One And(One left, One right) => Mask(Any(left) && Any(right));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Or(One left, One right) => Mask(Any(left) || Any(right));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(One mask) => BitConverter.DoubleToInt64Bits(mask.value) < 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(One mask) => Any(mask);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static One Mask(bool set) => new(BitConverter.Int64BitsToDouble(set ? -1 : 0));
}
