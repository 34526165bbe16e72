namespace Runup.Commissioning.Checks.Plate;

/// <summary>The number of poles against frequency and speed.</summary>
internal sealed class PoleNumber() : PlateCheck("plate.poles")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (context.Figures.PrintedPoles is { } printed && context.Figures.BuildablePoles is null)
        {
            return NoSuchNumber(context, printed);
        }

        return context.Speed switch
        {
            SpeedReading.WrongPoles wrong => Finding(context, wrong.Printed, wrong.Fitting, wrong.SlipAsPrinted, wrong.Slip),
            SpeedReading.WrongFrequency { PolesToo: true } both => Finding(context, context.Figures.PrintedPoles!.Value, both.PoleCount, both.SlipAsPrinted, both.Slip),
            SpeedReading.Unusable => NotAnInductionPlate(context),
            SpeedReading.Impossible => Unknown("a full-load speed that can be (plate.speed)", "whether the number of poles is right"),
            SpeedReading.Synchronous synchronous when context.Figures.PrintedPoles is { } poles && poles != synchronous.PoleCount =>
                Finding(context, poles, synchronous.PoleCount, context.Figures.SlipAt(context.Figures.Frequency_Hz, poles), 0),
            { Poles: { } poles } when context.Figures.PrintedPoles is not null => Fine($"{poles} poles go with {Said.Number(context.Figures.Speed_rpm, 4)} rpm"),
            { Poles: { } poles } => Fine($"not printed; {poles} poles follow from {Said.Number(context.Figures.Speed_rpm, 4)} rpm"),
            _ => Unknown("the number of poles (motor.plate.poles)", "what the synchronous speed is"),
        };
    }

    private CheckResult.Violated NoSuchNumber(PlateContext context, int printed) =>
        new(Id, Severity.Blocker, Blocks, new Basis.Physics("poles come in pairs"))
        {
            Title = "No machine has this number of poles",
            Explanation = $"{printed} cannot be a number of poles: they come in pairs{(context.Speed.Poles is { } fitting ? $"; the speed is that of {fitting}" : string.Empty)}.",
            Remedy = "Enter poles, not pole pairs; without a printed number leave the key out and it follows from the speed.",
            Value = printed,
            Limit = context.Speed.Poles,
            Unit = "1",
        };

    private CheckResult.Violated Finding(PlateContext context, int printed, int fitting, double slipAsPrinted, double slip)
    {
        var figures = context.Figures;
        var pairs = printed * 2 == fitting ? " (pole pairs taken for poles?)" : string.Empty;
        return new(Id, Severity.Blocker, Blocks, SlipBasis.Of(figures, slipAsPrinted))
        {
            Title = "Poles and speed do not go together",
            Explanation = $"{printed} poles at {Said.Number(figures.Frequency_Hz)} Hz have a field of {Said.Number(PlateFigures.Synchronous_rpm(figures.Frequency_Hz, printed), 4)} rpm, which does not go with {Said.Number(figures.Speed_rpm, 4)} rpm; {fitting} poles do, with {Said.Percent(Math.Max(slip, 0), 2)} slip{pairs}.{context.Likely.Sentence}",
            Remedy = $"Enter {fitting} poles if speed and frequency are right, else correct those.",
            Value = printed,
            Limit = fitting,
            Unit = "1",
        };
    }
}
