using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Drives;

namespace Runup.Dynamics.Control;

/// <summary>The drive's own overload: so much for so long, once in so long.</summary>
/// <remarks>
/// For each cycle of the rating: while I > I_c, dx/dt = (I/I_c)² − 1; the budget is (k² − 1)·t, so that k·I_c from rest trips after just t. Below
/// I_c the budget comes back evenly over the rest of the cycle. The drive trips when the budgets of all its cycles are spent: which one the user
/// counted on is not known to it.
/// </remarks>
internal sealed class DriveOverloadModel<T>
    where T : struct, ILanes<T>
{
    // A rating without overload still bears the ripple of a moment, in s.
    private const double LeastBudgetS = 0.05;

    private readonly double[] perContinuousA;
    private readonly double[] budget;
    private readonly double[] recoveryPerS;
    private readonly T[] spent;

    internal DriveOverloadModel(DriveRating drive)
    {
        perContinuousA = [.. drive.Overloads.Select(o => 1 / o.Current.Amperes)];
        budget = [.. drive.Overloads.Select(o => Math.Max(((o.Overload.Ratio * o.Overload.Ratio) - 1) * o.For.Seconds, LeastBudgetS))];
        recoveryPerS = [.. drive.Overloads.Select((o, i) => budget[i] / Math.Max(o.Every.Seconds - o.For.Seconds, 1))];
        spent = new T[budget.Length];
    }

    /// <summary>Set where all budgets are spent.</summary>
    internal T Exceeded { get; private set; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T currentA)
    {
        var all = LaneSet.Every<T>();
        for (var i = 0; i < spent.Length; i++)
        {
            var ratio = perContinuousA[i] * currentA;
            var rate = T.Choose(T.Less(T.Of(1), ratio), (ratio * ratio) - T.Of(1), T.Of(-recoveryPerS[i]));
            var now = LaneSet.Clamp(spent[i] + (ControlFigures.TickS * rate), default, T.Of(budget[i]));
            spent[i] = now;
            all = T.And(all, T.Not(T.Less(now, T.Of(budget[i]))));
        }

        Exceeded = all;
    }
}
