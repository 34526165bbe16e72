namespace Runup.Commissioning.Checks.Drive;

/// <summary>The short-circuit current of the supply against what the drive is rated to stand behind.</summary>
internal sealed class ShortCircuitRating() : Check("drive.short-circuit-rating", Stage.Entry)
{
    private const double Rounding = 1.02;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Rating.ShortCircuitRating is not { } rated)
        {
            return Unknown("the drive's short-circuit rating: its plate or manual, with the fuses or breaker that it holds for (short-circuit-rating in the profile)", "whether it may be fed from this supply");
        }

        if (SupplySource.ShortCircuitCurrent(context.Job.Supply) is not { } prospective)
        {
            return Unknown("how strong the supply is (supply.fault-level, or supply.transformer)", $"whether the drive, rated for {Said.Number(rated.Amperes / 1000)} kA, may be fed from it");
        }

        return prospective.Amperes <= rated.Amperes * Rounding
            ? Fine($"{Said.Number(prospective.Amperes / 1000)} kA at the drive at most, of the {Said.Number(rated.Amperes / 1000)} kA that it is rated for with the maker's fuses or breaker")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.MakersData("short-circuit rating"))
            {
                Title = "Supply too strong for the drive's short-circuit rating",
                Explanation = $"A short circuit at the drive draws up to {Said.Number(prospective.Amperes / 1000)} kA from this supply, and the drive is rated for {Said.Number(rated.Amperes / 1000)} kA: it may burst.",
                Remedy = "The fuses or breaker for which the maker gives a higher rating, a line reactor or longer cable that the fault level then counts, or another drive.",
                Value = prospective.Amperes / 1000,
                Limit = rated.Amperes / 1000,
                Unit = "kA",
            };
    }
}
