namespace Runup.Commissioning.Checks.Drive;

/// <summary>A drive whose power fits the motor and whose current does not.</summary>
internal sealed class SizeByPower() : Check("drive.size-by-power", Stage.Coupled)
{
    private const double Rounding = 0.02;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var nominal = context.Rating.NominalPower.Watts;
        var output = context.Meant.RatedOutput.Watts;
        var continuous = context.Conditions.Cycle.Current.Amperes;
        var needed = context.Meant.RatedCurrent.Amperes;
        var byPower = nominal >= output * (1 - Rounding);
        return byPower && continuous < needed * (1 - (Rounding / 4))
            ? new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.MakersData($"continuous current, {context.Conditions.Cycle.Name} rating"))
            {
                Title = "Drive chosen by power",
                Explanation = $"The drive is named for {Said.Kilowatts(nominal)} and the motor gives {Said.Kilowatts(output)}, but its {context.Conditions.Cycle.Name} rating of {Said.Number(continuous)} A is below the motor's {Said.Number(needed)} A: motors of many poles or of old design take more current for their power.",
                Remedy = "Choose the size by current; the power in its name is that of a usual motor.",
                Value = continuous,
                Limit = needed,
                Unit = "A",
            }
            : Fine($"{Said.Number(continuous)} A ({context.Conditions.Cycle.Name}) and {Said.Kilowatts(nominal)} for {Said.Number(needed)} A and {Said.Kilowatts(output)}");
    }
}
