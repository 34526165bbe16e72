namespace Runup.Commissioning.Checks.Plate;

/// <summary>The slips of the pen that explain a plate whose figures disagree, the likeliest first.</summary>
internal sealed class LikelySlips
{
    // A candidate of less than this share is not worth a technician's walk to the motor.
    private const double LeastShare = 0.05;
    private const int Most = 3;

    private LikelySlips(IReadOnlyList<(SlipCandidate Candidate, double Share)> ranked) => Ranked = ranked;

    /// <summary>Every candidate that makes the plate agree, with its share of all of them.</summary>
    internal IReadOnlyList<(SlipCandidate Candidate, double Share)> Ranked { get; }

    /// <summary>The best few in one sentence with a space before it; empty where none explains the plate.</summary>
    internal string Sentence
    {
        get
        {
            var named = Ranked.Take(Most).Where(one => one.Share >= LeastShare)
                .Select(one => $"{one.Candidate.What} ({Said.Percent(one.Share, 2)} of the weight; {PlateFit.InWords(one.Candidate.Meant)})")
                .ToList();
            return named.Count == 0 ? string.Empty : $" Of all single slips tried, most likely {string.Join("; or ", named)}.";
        }
    }

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
            .OrderByDescending(one => one.Weight)
            .ToList();
        var sum = weighed.Sum(one => one.Weight);
        return new([.. weighed.Select(one => (one.Candidate, one.Weight / sum))]);
    }
}
