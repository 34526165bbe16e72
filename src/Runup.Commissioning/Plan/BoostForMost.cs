using Runup.Commissioning.Checks;
using Runup.Engineering;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Commissioning.Plan;

/// <summary>The smallest boost, not below that of the motor that fits the plate best, with which nine of ten of the motors that the plate may stand for do what is asked; else the one with which most do.</summary>
/// <remarks>Too much is as bad as too little: a motor of little resistance meets the current limit at rest, and the start hangs.</remarks>
[Source("common-practice", "boost for nine of ten motors")]
internal static class BoostForMost
{
    private const double Most = 0.9;
    private const double Step = 0.002;
    private const double Highest = 0.15;

    /// <summary>The choice and the share of the motors that do it.</summary>
    /// <param name="best">The choice by the motor that fits best.</param>
    /// <param name="motors">The motors.</param>
    /// <param name="share">Of the motors that do it with a boost.</param>
    /// <param name="doing">What that is, in words: break away.</param>
    /// <param name="bearable">The current limit that they may meet at rest.</param>
    internal static (BoostChoice Choice, Fraction Share) Of(BoostChoice best, MotorEnsemble motors, Func<Fraction, Fraction> share, string doing, LineCurrent bearable)
    {
        var first = share(best.Boost);
        var (chosen, most) = (best.Boost, first);
        for (var ratio = best.Boost.Ratio + Step; most.Ratio < Most && ratio <= Highest; ratio += Step)
        {
            var boost = Fraction.FromRatio(ratio);
            if (share(boost) is var here && here.Ratio > most.Ratio)
            {
                (chosen, most) = (boost, here);
            }
        }

        var atLimit = MotorForecast.BoostForCurrentAtRest(motors, bearable).P05;
        var raised = chosen.Ratio > best.Boost.Ratio
            ? $". That is {Said.Percent(best.Boost.Ratio, 2)} for the motor that fits the plate best; of all the motors that the plate may stand for {Of100(first)} {doing} with it, and {Of100(most)} with {Said.Percent(chosen.Ratio, 2)}. Above {Said.Percent(atLimit.Ratio, 2)} the five of 100 with the least resistance draw {Said.Number(bearable.Amperes)} A at rest, the limit"
            : $"; of the motors that the plate may stand for {Of100(most)} {doing} with it";
        return (best with { Boost = chosen, Reason = best.Reason + raised }, most);
    }

    private static string Of100(Fraction share) => $"{Said.Number(Math.Floor(share.Percent + 1e-9), 3)} of 100";
}
