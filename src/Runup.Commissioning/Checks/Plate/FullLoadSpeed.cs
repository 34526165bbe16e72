namespace Runup.Commissioning.Checks.Plate;

/// <summary>A full-load speed that is synchronous, or that cannot be.</summary>
internal sealed class FullLoadSpeed() : PlateCheck("plate.speed")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Speed switch
    {
        SpeedReading.Fits fits => Fine($"{Said.Percent(fits.Slip, 2)} slip at {Said.Number(context.Figures.Speed_rpm, 4)} rpm"),
        SpeedReading.Synchronous synchronous => Synchronous(context, synchronous.PoleCount),
        SpeedReading.Impossible impossible => Impossible(context, impossible),
        SpeedReading.HighSlip high => HighSlip(context, high),
        SpeedReading.Unusable => NotAnInductionPlate(context),
        _ => Fine($"{Said.Number(context.Figures.Speed_rpm, 4)} rpm is the full-load speed of {context.Speed.Poles} poles; what else disagrees has its own finding"),
    };

    private CheckResult.Violated Synchronous(PlateContext context, int poles)
    {
        var figures = context.Figures;
        return new(Id, Severity.Blocker, Blocks, new Basis.Physics("torque needs slip: n < 120·f/p at full load"))
        {
            Title = "Synchronous speed in place of the full-load speed",
            Explanation = $"{Said.Number(figures.Speed_rpm, 4)} rpm is the speed of the field of {poles} poles at {Said.Number(figures.Frequency_Hz)} Hz; a loaded induction motor turns slower.",
            Remedy = "Enter the full-load speed from the plate; the drive reckons the slip from it.",
            Value = figures.Speed_rpm,
            Limit = PlateFigures.Synchronous_rpm(figures.Frequency_Hz, poles),
            Unit = "rpm",
        };
    }

    private CheckResult.Violated Impossible(PlateContext context, SpeedReading.Impossible impossible)
    {
        var figures = context.Figures;
        var field = PlateFigures.Synchronous_rpm(figures.Frequency_Hz, figures.BuildablePoles ?? figures.PolesFromSpeed(figures.Frequency_Hz));
        var meant = impossible.PerhapsMeant_rpm is { } rpm ? $"; {Said.Number(rpm, 4)} rpm would be usual" : string.Empty;
        return new(Id, Severity.Blocker, Blocks, SlipBasis.Of(figures, impossible.Slip))
        {
            Title = "No full-load speed of an induction motor",
            Explanation = $"{Said.Number(figures.Speed_rpm, 4)} rpm does not go with a field of {Said.Number(field, 4)} rpm at {Said.Number(figures.Frequency_Hz)} Hz{meant}.{context.Likely.Sentence}",
            Remedy = "Read speed, frequency and poles from one column of the plate again.",
            Value = figures.Speed_rpm,
            Limit = field,
            Unit = "rpm",
        };
    }

    private CheckResult.Violated HighSlip(PlateContext context, SpeedReading.HighSlip high) =>
        new(Id, Severity.Caution, Blocks, new Basis.CommonPractice($"slip at full load of {Said.Kilowatts(context.Figures.Output_W)} is at most {Said.Percent(high.Usual, 2)}, high-slip designs apart"))
        {
            Title = "Unusually high slip",
            Explanation = $"{Said.Number(context.Figures.Speed_rpm, 4)} rpm is {Said.Percent(high.Slip, 2)} below the field's speed, more than motors of {Said.Kilowatts(context.Figures.Output_W)} usually have.{context.Likely.Sentence}",
            Remedy = "Read the speed again; if it is a high-slip motor, say so by motor.plate.design-letter: D.",
            Value = high.Slip * 100,
            Limit = high.Usual * 100,
            Unit = "%",
        };
}
