using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The slips of the pen that explain a plate whose figures disagree, the likeliest first.</summary>
[Source("common-practice", "how often no single slip was made")]
internal sealed class LikelySlips
{
    // A candidate of less than this share is not worth a technician's walk to the motor.
    private const double LeastShare = 0.05;
    private const int Most = 3;
    private const double ClearShare = 0.5;

    // An honest plate of an unusual motor: three deviations off the usual middle; of one with high slip that is not marked so: a tenth of that.
    // Two slips at once: as rare as one digit misread that then fits badly.
    private const double UnusualMotor = 0.003;
    private const double HighSlipUnmarked = 0.0003;
    private const double SeveralSlips = 0.00003;

    private LikelySlips(IReadOnlyList<(SlipCandidate Candidate, double Share)> ranked) => Ranked = ranked;

    /// <summary>Every candidate that makes the plate agree, and that none does, with its share of all of them.</summary>
    internal IReadOnlyList<(SlipCandidate Candidate, double Share)> Ranked { get; }

    /// <summary>The best few in one sentence with a space before it; empty where none explains the plate.</summary>
    internal string Sentence
    {
        get
        {
            var named = Ranked.Take(Most).Where(one => one.Share >= LeastShare).ToList();
            return named.TrueForAll(one => one.Candidate.IsNone) ? string.Empty
                : named[0].Candidate.IsNone ? $" Most likely {string.Join("; or ", named.Select(InWords))}."
                : $" Of all single slips tried, most likely {string.Join("; or ", named.Select(InWords))}.";
        }
    }

    /// <summary>The slip that outweighs all others together, or null.</summary>
    internal SlipCandidate? Clear => Ranked is [var best, ..] && best.Share > ClearShare && !best.Candidate.IsNone ? best.Candidate : null;

    /// <summary>Whether another slip than this one outweighs all others together.</summary>
    internal bool SpeaksAgainst(MagnitudeSlip kind) => Clear is not null && Ranked.Where(one => one.Candidate.Kind == kind).Sum(one => one.Share) < 1 - ClearShare;

    internal static LikelySlips Of(PlateContext context)
    {
        if (!context.IsInduction || !context.Figures.AreUsable)
        {
            return new([]);
        }

        var fit = new PlateFit(context);
        var weighed = new SlipCandidates(context).All()
            .Select(candidate => (Candidate: candidate, Fit: fit.Of(candidate.Meant)))
            .Where(one => one.Fit is not null)
            .Select(one => (one.Candidate, Weight: one.Candidate.Prior * Math.Exp(one.Fit!.Value)))
            .Where(one => one.Weight > 0)
            .Append(None(context))
            .OrderByDescending(one => one.Weight)
            .ToList();
        var sum = weighed.Sum(one => one.Weight);
        return new([.. weighed.Select(one => (one.Candidate, one.Weight / sum))]);
    }

    /// <summary>That no single slip was made.</summary>
    private static (SlipCandidate Candidate, double Weight) None(PlateContext context)
    {
        var (what, weight) = !PlateFit.GoesTogether(context) ? ("more than one figure was misread", SeveralSlips)
            : ("nothing was misread and the motor is an unusual one", context.Speed is SpeedReading.HighSlip ? HighSlipUnmarked : UnusualMotor);
        return (new(what, context.Figures, weight) { IsNone = true }, weight);
    }

    private static string InWords((SlipCandidate Candidate, double Share) one) => one.Candidate.IsReckoned || one.Candidate.IsNone
        ? $"{one.Candidate.What} ({Said.Percent(one.Share, 2)} of the weight)"
        : $"{one.Candidate.What} ({Said.Percent(one.Share, 2)} of the weight; {PlateFit.InWords(one.Candidate.Meant)})";
}
