namespace Runup.Commissioning.Checks.Plate;

/// <summary>The 50 Hz against the 60 Hz column.</summary>
internal sealed class BaseFrequency() : PlateCheck("plate.base-frequency")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Speed switch
    {
        SpeedReading.WrongFrequency wrong => Finding(context, wrong),
        SpeedReading.Fits fits => Fine($"{Said.Number(context.Figures.Speed_rpm, 4)} rpm at {Said.Number(context.Figures.Frequency_Hz)} Hz is {fits.PoleCount} poles with {Said.Percent(fits.Slip, 2)} slip"),
        SpeedReading.Unusable => NotAnInductionPlate(context),
        SpeedReading.NoSuchPoles or SpeedReading.WrongPoles or SpeedReading.Synchronous or SpeedReading.HighSlip =>
            Fine($"the speed is not that of the other frequency's column"),
        SpeedReading.Impossible => Unknown("a full-load speed that can be (plate.speed)", "whether the frequency is that of the column in use"),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private CheckResult.Violated Finding(PlateContext context, SpeedReading.WrongFrequency wrong)
    {
        var figures = context.Figures;
        var slip = wrong.SlipAsPrinted <= 0
            ? "faster than its field"
            : $"with {Said.Percent(wrong.SlipAsPrinted, 2)} slip";
        if (context.Likely.Clear is { } clear && clear.Meant.Frequency_Hz == figures.Frequency_Hz)
        {
            return SpeedOfOtherColumn(context, wrong, slip);
        }

        return new(Id, Severity.Blocker, Blocks, SlipBasis.Of(figures, wrong.SlipAsPrinted))
        {
            Title = "Frequency of the other column",
            Explanation = $"{Said.Number(figures.Speed_rpm, 4)} rpm at {Said.Number(figures.Frequency_Hz)} Hz would turn {slip}; at {Said.Number(wrong.Other_Hz)} Hz it is {wrong.PoleCount} poles with {Said.Percent(wrong.Slip, 2)} slip, so the frequency is from the other column of the plate.{context.Likely.Sentence}",
            Remedy = $"Enter the frequency of the column that the speed, voltage and current are from ({Said.Number(wrong.Other_Hz)} Hz): with the wrong one the motor gets {Said.Percent(wrong.Other_Hz / figures.Frequency_Hz, 2)} of its flux.",
            Value = figures.Frequency_Hz,
            Limit = wrong.Other_Hz,
            Unit = "Hz",
        };
    }

    private CheckResult.Violated SpeedOfOtherColumn(PlateContext context, SpeedReading.WrongFrequency wrong, string slip)
    {
        var figures = context.Figures;
        return new(Id, Severity.Blocker, Blocks, SlipBasis.Of(figures, wrong.SlipAsPrinted))
        {
            Title = "Speed and frequency from two columns of the plate",
            Explanation = $"{Said.Number(figures.Speed_rpm, 4)} rpm at {Said.Number(figures.Frequency_Hz)} Hz would turn {slip}; it is a speed for {Said.Number(wrong.Other_Hz)} Hz, while the rest of the plate goes with {Said.Number(figures.Frequency_Hz)} Hz.{context.Likely.Sentence}",
            Remedy = $"Enter the full-load speed of the column for {Said.Number(figures.Frequency_Hz)} Hz, or all figures of the column for {Said.Number(wrong.Other_Hz)} Hz.",
            Value = figures.Frequency_Hz,
            Limit = wrong.Other_Hz,
            Unit = "Hz",
        };
    }
}
