namespace Runup.Dynamics.Lanes;

/// <summary>Numbers side by side, one for each member of a group; arithmetic on all of them at once.</summary>
/// <remarks>
/// The equations of plant and control are written once, for any such type: <see cref="One"/> for a single simulation, <see cref="Four"/> and
/// <see cref="Eight"/> for a batch. A comparison gives lanes of all bits set or clear, to be used by <see cref="Choose"/>, <see cref="And"/> and <see cref="Any"/> alone.
/// </remarks>
internal interface ILanes<T>
    where T : struct, ILanes<T>
{
    static abstract int Count { get; }

    double this[int lane] { get; }

    static abstract T operator +(T left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator *(T left, T right);

    static abstract T operator *(double left, T right);

    static abstract T operator /(T left, T right);

    static abstract T operator -(T value);

    /// <summary>The same number in every lane.</summary>
    static abstract T Of(double same);

    /// <summary>The first numbers of a span, one for each lane.</summary>
    static abstract T Load(ReadOnlySpan<double> values);

    void Store(Span<double> values);

    /// <summary>a·b + c, rounded once.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);

    /// <summary>c − a·b, rounded once.</summary>
    static abstract T MultiplySubtractFrom(T a, T b, T c);

    static abstract T Sqrt(T value);

    static abstract T Abs(T value);

    /// <summary>The lesser of two; the second where the first is no number.</summary>
    static abstract T Min(T left, T right);

    static abstract T Max(T left, T right);

    static abstract T Less(T left, T right);

    static abstract T Choose(T mask, T yes, T no);

    static abstract T And(T left, T right);

    static abstract T Or(T left, T right);

    /// <summary>Set where the mask is clear.</summary>
    static abstract T Not(T mask);

    static abstract bool Any(T mask);

    static abstract bool All(T mask);
}
