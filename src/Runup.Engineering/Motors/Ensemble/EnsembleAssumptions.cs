namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What the bands of an ensemble rest on beside the plate.</summary>
public static class EnsembleAssumptions
{
    /// <summary>In the order in which they weigh.</summary>
    public static IReadOnlyList<Assumption> Of(PlateTrust trust) => trust switch
    {
        PlateTrust.Exact =>
        [
            new("plate taken as exact: motors with its values within the printed digits, a straight magnetizing line", "bands are 5 % to 95 %", Assumption.CommonPractice, false),
            Distributions,
        ],
        PlateTrust.WithTolerances =>
        [
            new(
                "by how much a motor may be off its plate: normal around the plate, the tolerance two standard deviations",
                "slip 20 % (30 % below 1 kW), power factor (1 − cos φ)/6, losses 15 % (10 % above 150 kW)",
                "IEC 60034-1, schedule of tolerances",
                true),
            Distributions,
            new("share of the magnetizing current that the iron takes at rated load, growing with the power 7 of flux", "0 to 30 %", Assumption.CommonPractice, false),
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(trust), trust, "The set is closed."),
    };

    private static Assumption Distributions => new(
        "distributions of leakage, its split, loss shares and depth of bars for the bands",
        "log-normal around motors of their like; shares of the losses even over their range",
        Assumption.CommonPractice,
        false);
}
