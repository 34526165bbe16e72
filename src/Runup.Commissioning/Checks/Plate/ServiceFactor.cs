namespace Runup.Commissioning.Checks.Plate;

/// <summary>A service factor that cannot be, or the current at service factor in place of the rated current.</summary>
internal sealed class ServiceFactor() : PlateCheck("plate.service-factor")
{
    private const double Most = 2;

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (context.Plate.ServiceFactor?.Value.Value is not { } serviceFactor)
        {
            return Fine("none printed: 1.0");
        }

        if (serviceFactor is < 1 or > Most)
        {
            return new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.CommonPractice("service factors lie between 1 and 2"))
            {
                Title = "Unusual service factor",
                Explanation = $"A service factor of {Said.Number(serviceFactor)} is not usual; 1.0, 1.15 and 1.25 are.",
                Remedy = "Read it again; leave it out if the plate has none.",
                Value = serviceFactor,
                Limit = serviceFactor < 1 ? 1 : Most,
                Unit = "1",
            };
        }

        return context.Magnitudes is MagnitudeReading.Slip { Kind: MagnitudeSlip.ServiceFactorCurrent } slip
            ? new CheckResult.Violated(Id, Severity.Caution, Blocks, slip.Basis)
            {
                Title = "Current at service factor",
                Explanation = $"{Said.Number(context.Figures.Current_A)} A is {Said.Number(serviceFactor)} times what {Said.Kilowatts(context.Figures.Output_W)} takes: it is the current at service factor, not the rated one.{context.Likely.Sentence}",
                Remedy = "Enter the full-load current at service factor 1.",
                Value = context.Figures.Current_A,
                Limit = context.Figures.Current_A * slip.Ratio,
                Unit = "A",
            }
            : Fine($"{Said.Number(serviceFactor)}; on a drive the motor is used to 1.0");
    }
}
