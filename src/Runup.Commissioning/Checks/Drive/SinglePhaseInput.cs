namespace Runup.Commissioning.Checks.Drive;

/// <summary>A single-phase supply on a drive for three phases.</summary>
internal sealed class SinglePhaseInput() : Check("drive.single-phase-input", Stage.Entry)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var phases = context.Job.Supply.Phases?.Value ?? 3;
        return phases >= context.Rating.SupplyPhases
            ? Fine($"{phases} {(phases == 1 ? "phase" : "phases")} for a drive that asks for {context.Rating.SupplyPhases}")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.MakersData("supply phases"))
            {
                Title = "Single-phase supply on a three-phase drive",
                Explanation = $"The supply has {phases} phase and this size is for {context.Rating.SupplyPhases}: it trips on a missing phase, and its rectifier and capacitors carry about twice the current.",
                Remedy = "A size for single-phase supply; or the maker's written consent, with his derating and an oversized drive.",
                Value = phases,
                Limit = context.Rating.SupplyPhases,
                Unit = "1",
            };
    }
}
