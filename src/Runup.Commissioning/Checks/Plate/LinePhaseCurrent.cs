namespace Runup.Commissioning.Checks.Plate;

/// <summary>Line against phase current: a factor of √3 while the voltage is that of the supply.</summary>
internal sealed class LinePhaseCurrent() : PlateCheck("plate.line-phase-current")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Magnitudes switch
    {
        MagnitudeReading.Unusable => NotAnInductionPlate(context),
        MagnitudeReading.Slip { Kind: MagnitudeSlip.RootThreeTooLow or MagnitudeSlip.RootThreeTooHigh } slip when VoltageMatch.IsCredible(context) =>
            Finding(context, slip),
        MagnitudeReading.Slip or MagnitudeReading.Unexplained => Unknown(
            "a plate whose output and voltage are beyond doubt (plate.power-unit, plate.voltage-connection)", "whether the current is the line current"),
        _ => Fine($"{Said.Number(context.Figures.Current_A)} A goes with output and voltage as a line current"),
    };

    private CheckResult.Violated Finding(PlateContext context, MagnitudeReading.Slip slip)
    {
        var figures = context.Figures;
        var low = slip.Kind == MagnitudeSlip.RootThreeTooLow;
        var meant = figures.Current_A * slip.Factor;
        var column = OtherColumn.WithCurrent(context.Plate, figures.Current_A) is { } other
            ? $"; it is the current printed for {Said.Number(other.Voltage.Value.Volts)} V"
            : string.Empty;
        return new(Id, slip.Basis.MayBlock ? Severity.Blocker : Severity.Caution, Blocks, slip.Basis)
        {
            Title = "Current of the phase or of the other connection",
            Explanation = $"{Said.Number(figures.Current_A)} A at {Said.Number(figures.Voltage_V)} V is √3 too {(low ? "little" : "much")} for {Said.Kilowatts(figures.Output_W)}{column}: the line current in the connection in use should be near {Said.Number(meant)} A.{context.Likely.Sentence}",
            Remedy = low
                ? "Enter the line current of the connection in use (in delta it is √3 times the current of a winding), not that of the winding or of the star column."
                : "Enter the line current of the connection in use, not that of the delta column or a winding's current multiplied by √3.",
            Value = figures.Current_A,
            Limit = meant,
            Unit = "A",
        };
    }
}
