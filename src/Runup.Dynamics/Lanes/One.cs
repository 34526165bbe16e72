using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Runup.Dynamics.Lanes;

/// <summary>A single number, so that one simulation runs on the same source as a batch.</summary>
internal readonly struct One(double value) : ILanes<One>
{
    private readonly double value = value;

    private Vector128<double> Wide
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Vector128.CreateScalarUnsafe(value);
    }

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

    // Masks as in the wider registers, so that no branch is taken on what a comparison says.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Less(One left, One right) => new(Vector128.LessThan(left.Wide, right.Wide).ToScalar());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Choose(One mask, One yes, One no) => Any(mask) ? yes : no;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One And(One left, One right) => new((left.Wide & right.Wide).ToScalar());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Or(One left, One right) => new((left.Wide | right.Wide).ToScalar());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static One Not(One mask) => new((~mask.Wide).ToScalar());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(One mask) => BitConverter.DoubleToInt64Bits(mask.value) < 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(One mask) => Any(mask);
}
