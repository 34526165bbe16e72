using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>Six states of a system of ordinary differential equations; what each means is the model's affair.</summary>
internal struct SixStates<T>
    where T : struct, ILanes<T>
{
    internal T X1;
    internal T X2;
    internal T X3;
    internal T X4;
    internal T X5;
    internal T X6;

    /// <summary>Lanes in which every state is a finite number: what is less than infinity and no NaN.</summary>
    internal readonly T Finite
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.Less(T.Abs(X1 + X2 + X3 + X4 + X5 + X6), T.Of(double.PositiveInfinity));
    }

    /// <summary>One set where the mask is set, another elsewhere.</summary>
    internal static SixStates<T> Choose(T mask, in SixStates<T> yes, in SixStates<T> no) => new()
    {
        X1 = T.Choose(mask, yes.X1, no.X1),
        X2 = T.Choose(mask, yes.X2, no.X2),
        X3 = T.Choose(mask, yes.X3, no.X3),
        X4 = T.Choose(mask, yes.X4, no.X4),
        X5 = T.Choose(mask, yes.X5, no.X5),
        X6 = T.Choose(mask, yes.X6, no.X6),
    };

    /// <summary>Takes one member's states from another set.</summary>
    internal void Put(int lane, in SixStates<T> from)
    {
        X1 = X1.With(lane, from.X1[lane]);
        X2 = X2.With(lane, from.X2[lane]);
        X3 = X3.With(lane, from.X3[lane]);
        X4 = X4.With(lane, from.X4[lane]);
        X5 = X5.With(lane, from.X5[lane]);
        X6 = X6.With(lane, from.X6[lane]);
    }
}
