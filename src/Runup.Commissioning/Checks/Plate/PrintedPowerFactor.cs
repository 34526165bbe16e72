namespace Runup.Commissioning.Checks.Plate;

/// <summary>A power factor that cannot be, or that stands in the wrong field.</summary>
internal sealed class PrintedPowerFactor() : PlateCheck("plate.power-factor")
{
    private const double Margin = 0.04;

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (context.Figures.PowerFactor is not { } powerFactor)
        {
            return Unknown("power factor (motor.plate.power-factor)", "magnetizing and no-load current, to a few per cent");
        }

        if (powerFactor is <= 0 or > 1)
        {
            return new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.Physics("0 < cos φ ≤ 1"))
            {
                Title = "No power factor",
                Explanation = $"A power factor of {Said.Number(powerFactor)} cannot be{(powerFactor is > 1 and <= 100 ? $"; {Said.Number(powerFactor / 100)} was perhaps meant" : string.Empty)}.",
                Remedy = "Enter the cos φ from the plate, a number between 0 and 1.",
                Value = powerFactor,
                Limit = 1,
                Unit = "1",
            };
        }

        if (!context.IsInduction || !context.Figures.AreUsable)
        {
            return NotAnInductionPlate(context);
        }

        var poles = context.Speed.Poles ?? 4;
        var (low, high) = UsualMotors.PowerFactor(context.Figures.Output_W, poles);
        var misread = context.Magnitudes is MagnitudeReading.Misread { PowerFactor: true };
        var outside = (powerFactor < low - Margin || powerFactor > high + Margin) && context.Magnitudes is (MagnitudeReading.Agree or MagnitudeReading.Unexplained);
        return misread || outside
            ? Unusual(context, powerFactor, low, high, poles, misread)
            : Fine($"{Said.Number(powerFactor)} for {Said.Kilowatts(context.Figures.Output_W)}");
    }

    private CheckResult.Violated Unusual(PlateContext context, double powerFactor, double low, double high, int poles, bool misread)
    {
        var swapped = PrintedEfficiency.IsSwappedWithPowerFactor(context);
        return new(Id, Severity.Caution, Blocks, new Basis.CommonPractice($"cos φ of {Said.Kilowatts(context.Figures.Output_W)} with {poles} poles lies between {Said.Number(low, 2)} and {Said.Number(high, 2)}"))
        {
            Title = swapped ? "Power factor and efficiency interchanged" : "Unusual power factor",
            Explanation = swapped
                ? $"A power factor of {Said.Number(powerFactor)} with an efficiency of {Said.Percent(context.Figures.Efficiency!.Value)} is usual only the other way round.{context.Likely.Sentence}"
                : $"A power factor of {Said.Number(powerFactor)} is unusual for {Said.Kilowatts(context.Figures.Output_W)} and {poles} poles.{(misread ? string.Empty : context.Likely.Sentence)}",
            Remedy = swapped ? "Exchange motor.plate.power-factor and motor.plate.efficiency." : "Read it again; an efficiency or a part-load figure may stand in its place.",
            Value = powerFactor,
            Limit = powerFactor < low ? low : high,
            Unit = "1",
        };
    }
}
