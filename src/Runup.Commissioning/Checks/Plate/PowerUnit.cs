namespace Runup.Commissioning.Checks.Plate;

/// <summary>Horsepower against kilowatts, and thousandfold slips of the unit.</summary>
internal sealed class PowerUnit() : PlateCheck("plate.power-unit")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Magnitudes switch
    {
        MagnitudeReading.Unusable => NotAnInductionPlate(context),
        MagnitudeReading.Slip slip when slip.Kind.IsOfOutput() => Finding(context, slip),
        MagnitudeReading.Slip or MagnitudeReading.Unexplained => Unknown(
            "a plate whose voltage and current are beyond doubt (plate.power-balance, plate.line-phase-current, plate.voltage-connection)",
            "whether the output's unit is right"),
        MagnitudeReading.EitherUnit either => Unknown(
            "power factor and efficiency (motor.plate.power-factor, motor.plate.efficiency)",
            $"whether the output is {Written(context)} or {InOtherUnit(context, either.OtherOutput_W)}: without them both would be usual for {Said.Number(context.Figures.Current_A)} A"),
        MagnitudeReading.Misread misread => Fine($"power factor or efficiency was misread (plate.power-balance), not the output's unit: {Said.Number(misread.Ratio)}"),
        MagnitudeReading.Agree agree => Fine($"P/(√3·U·I) is {Said.Number(context.Figures.ImpliedProduct)}, {Said.Number(agree.Ratio)} of what is expected"),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private CheckResult.Violated Finding(PlateContext context, MagnitudeReading.Slip slip)
    {
        var figures = context.Figures;
        var meant_W = figures.Output_W / slip.Factor;
        var written = Written(context);
        var meant = InOtherUnit(context, meant_W);
        return new(Id, slip.Basis.MayBlock ? Severity.Blocker : Severity.Caution, Blocks, slip.Basis)
        {
            Title = slip.Kind is MagnitudeSlip.HorsepowerAsKilowatts or MagnitudeSlip.KilowattsAsHorsepower ? "Horsepower and kilowatts mixed up" : "Unit of the output",
            Explanation = $"{Said.Number(figures.Voltage_V)} V and {Said.Number(figures.Current_A)} A would mean η·cos φ = {Said.Number(figures.ImpliedProduct)} for {written}, {Said.Number(slip.Ratio)} times what it should be; for {meant} it is right, so the number was put down with the wrong unit.{context.Likely.Sentence}",
            Remedy = $"Look at the plate again: if it says {meant}, correct motor.plate.output.",
            Value = figures.Output_W / 1000,
            Limit = meant_W / 1000,
            Unit = "kW",
        };
    }

    private static string Written(PlateContext context) => context.Plate.Output.AsWritten
        ?? (PowerWording.Of(context.Plate.Output).InHorsepower ? Horsepower(context.Figures.Output_W) : Said.Kilowatts(context.Figures.Output_W));

    /// <summary>The other output in the unit in which its number is the one written.</summary>
    private static string InOtherUnit(PlateContext context, double watts) =>
        PowerWording.Of(context.Plate.Output).InHorsepower ? Said.Kilowatts(watts) : $"{Horsepower(watts)} ({Said.Kilowatts(watts)})";

    private static string Horsepower(double watts) => $"{Said.Number(watts / PlateFigures.WattsPerHorsepower)} hp";
}
