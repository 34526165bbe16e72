namespace Runup.Commissioning.Checks.Plate;

/// <summary>Output, voltage, current, power factor and efficiency against one another.</summary>
internal sealed class PowerBalance() : PlateCheck("plate.power-balance")
{
    // Beyond this no sloppy rounding, tolerance or service factor explains it: something printed on the plate was misread.
    private const double Gross = 0.25;

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Magnitudes switch
    {
        MagnitudeReading.Unusable => NotAnInductionPlate(context),
        MagnitudeReading.Unexplained unexplained => Finding(context, unexplained.Ratio, unexplained.Basis, null),
        MagnitudeReading.Misread misread => Finding(
            context,
            misread.Ratio,
            new Basis.Physics("P = √3·U·I·cos φ·η"),
            $"{(misread.PowerFactor ? $"a power factor of {Said.Number(misread.Implied)}" : $"an efficiency of {Said.Percent(misread.Implied)}")} would agree"),
        MagnitudeReading.Slip { Kind: MagnitudeSlip.TenTooMuch or MagnitudeSlip.TenTooLittle } ten => Finding(context, ten.Ratio, ten.Basis, "a decimal point may have slipped"),
        MagnitudeReading.Slip => Unknown("the correction of the slip that another finding names", "whether the rest of the plate agrees"),
        MagnitudeReading.Agree { Printed: true } agree => Fine($"P/(√3·U·I·cos φ·η) = {Said.Number(agree.Ratio)}"),
        _ => Unknown(Missing(context), "whether output, voltage and current agree to better than the width of usual motors"),
    };

    private CheckResult.Violated Finding(PlateContext context, double ratio, Basis basis, string? hint)
    {
        var figures = context.Figures;
        var gross = Math.Abs(Math.Log(ratio)) > Gross && context.Magnitudes is not MagnitudeReading.Misread;
        var known = figures.PrintedProduct is not null ? ", power factor and efficiency" : string.Empty;
        return new(Id, gross && basis.MayBlock ? Severity.Blocker : Severity.Caution, Blocks, basis)
        {
            Title = "The plate's figures disagree",
            Explanation = $"{Said.Kilowatts(figures.Output_W)} is {Said.Number(ratio)} times what {Said.Number(figures.Voltage_V)} V and {Said.Number(figures.Current_A)} A{known} would give{(hint is null ? string.Empty : "; " + hint)}: one of them was misread.{context.Likely.Sentence}",
            Remedy = "Read all of them from one column of the plate again; until then the output, voltage, speed and current are believed.",
            Value = ratio,
            Limit = 1 + (Math.Sign(ratio - 1) * PrintedMagnitudes.LargestDisagreement),
            Unit = "1",
        };
    }

    private static string Missing(PlateContext context)
    {
        var figures = context.Figures;
        return (figures.PowerFactor, figures.Efficiency) switch
        {
            (null, null) => "power factor and efficiency (motor.plate.power-factor, motor.plate.efficiency)",
            (null, _) => "power factor (motor.plate.power-factor)",
            _ => "efficiency (motor.plate.efficiency)",
        };
    }
}
