using Runup.Engineering.Drives;

namespace Runup.Dynamics.Control;

/// <summary>The drive's own overload: so much for so long, once in so long.</summary>
/// <remarks>
/// For each cycle of the rating: while I > I_c, dx/dt = (I/I_c)² − 1; the budget is (k² − 1)·t, so that k·I_c from rest trips after just t. Below
/// I_c the budget comes back evenly over the rest of the cycle. The drive trips when the budgets of all its cycles are spent: which one the user
/// counted on is not known to it.
/// </remarks>
internal sealed class DriveOverloadModel
{
    // A rating without overload still bears the ripple of a moment, in s.
    private const double LeastBudgetS = 0.05;

    private readonly double[] continuousA;
    private readonly double[] budget;
    private readonly double[] recoveryPerS;
    private readonly double[] spent;

    internal DriveOverloadModel(DriveRating drive)
    {
        continuousA = [.. drive.Overloads.Select(o => o.Current.Amperes)];
        budget = [.. drive.Overloads.Select(o => Math.Max(((o.Overload.Ratio * o.Overload.Ratio) - 1) * o.For.Seconds, LeastBudgetS))];
        recoveryPerS = [.. drive.Overloads.Select((o, i) => budget[i] / Math.Max(o.Every.Seconds - o.For.Seconds, 1))];
        spent = new double[budget.Length];
    }

    internal bool Exceeded { get; private set; }

    internal void Sample(double currentA)
    {
        var all = true;
        for (var i = 0; i < spent.Length; i++)
        {
            var ratio = currentA / continuousA[i];
            var rate = ratio > 1 ? (ratio * ratio) - 1 : -recoveryPerS[i];
            spent[i] = Math.Clamp(spent[i] + (rate * ControlFigures.TickS), 0, budget[i]);
            all &= spent[i] >= budget[i];
        }

        Exceeded = all;
    }
}
