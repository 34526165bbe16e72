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

    private readonly Cycle[] cycles;

    internal DriveOverloadModel(DriveRating drive) => cycles = [.. drive.Overloads.Select(Of)];

    /// <summary>Set where all budgets are spent.</summary>
    internal T Exceeded { get; private set; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T currentA)
    {
        var all = LaneSet.Every<T>();
        foreach (ref var cycle in cycles.AsSpan())
        {
            var ratio = cycle.PerContinuousA * currentA;
            var rate = T.Choose(T.Less(T.Of(1), ratio), (ratio * ratio) - T.Of(1), T.Of(-cycle.RecoveryPerS));
            var spent = LaneSet.Clamp(cycle.Spent + (ControlFigures.TickS * rate), default, T.Of(cycle.Budget));
            cycle.Spent = spent;
            all = T.And(all, T.Not(T.Less(spent, T.Of(cycle.Budget))));
        }

        Exceeded = all;
    }

    private static Cycle Of(OverloadCycle rated)
    {
        var budget = Math.Max(((rated.Overload.Ratio * rated.Overload.Ratio) - 1) * rated.For.Seconds, LeastBudgetS);
        return new Cycle { PerContinuousA = 1 / rated.Current.Amperes, Budget = budget, RecoveryPerS = budget / Math.Max(rated.Every.Seconds - rated.For.Seconds, 1) };
    }

    private struct Cycle
    {
        internal double PerContinuousA;
        internal double Budget;
        internal double RecoveryPerS;
        internal T Spent;
    }
}
