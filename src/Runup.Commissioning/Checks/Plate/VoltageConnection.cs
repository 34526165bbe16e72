using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The voltage of the connection in use against the supply, and star against delta.</summary>
internal sealed class VoltageConnection() : PlateCheck("plate.voltage-connection")
{
    private static readonly Basis Columns = new Basis.Physics("a winding in star is for √3 times the line voltage that it is for in delta");

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (!context.Figures.AreUsable)
        {
            return NotAnInductionPlate(context);
        }

        return MixedColumns(context) ?? WrongLinks(context) ?? (context.Supply is { } supply
            ? AgainstSupply(context, supply.Voltage.Value.Volts)
            : Unknown("the supply's voltage, against which the check of the whole job holds it (supply.voltage)", "whether the connection in use is the right one"));
    }

    /// <summary>Voltage of one column, current of another.</summary>
    private CheckResult? MixedColumns(PlateContext context)
    {
        if (context.Magnitudes is not MagnitudeReading.Slip slip || slip.Kind is not (MagnitudeSlip.Halved or MagnitudeSlip.Doubled
            or MagnitudeSlip.RootThreeTooHigh or MagnitudeSlip.RootThreeTooLow))
        {
            return null;
        }

        var rootThree = slip.Kind is MagnitudeSlip.RootThreeTooHigh or MagnitudeSlip.RootThreeTooLow;
        if (rootThree && VoltageMatch.IsCredible(context))
        {
            return null;
        }

        var figures = context.Figures;
        var meant = figures.Voltage_V * slip.Factor;
        var suits = context.Supply is { } supply && VoltageMatch.Suits(meant, supply.Voltage.Value.Volts) && !VoltageMatch.IsCredible(context);
        return new CheckResult.Violated(Id, slip.Basis.MayBlock ? Severity.Blocker : Severity.Caution, Blocks, slip.Basis)
        {
            Title = "Voltage and current from two columns of the plate",
            Explanation = suits
                ? $"With {Said.Number(figures.Voltage_V)} V the output, current, power factor and efficiency disagree by {Said.Number(slip.Ratio)}; with {Said.Number(meant)} V, which the supply has, they agree: the voltage is from another column.{context.Likely.Sentence}"
                : $"At {Said.Number(figures.Voltage_V)} V a current of {Said.Number(figures.Current_A)} A is {Said.Number(1 / slip.Factor)} times what {Said.Kilowatts(figures.Output_W)} takes: voltage and current are from two columns of the plate.{context.Likely.Sentence}",
            Remedy = "Enter voltage, current and connection of one and the same column: the one for the connection in the terminal box.",
            Value = figures.Voltage_V,
            Limit = meant,
            Unit = "V",
        };
    }

    /// <summary>The plate itself says that the column in use is for the other connection.</summary>
    private CheckResult.Violated? WrongLinks(PlateContext context)
    {
        if (context.Plate.Connection?.Value is not { } connection)
        {
            return null;
        }

        var inUse = context.Figures.Voltage_V;
        foreach (var other in context.Plate.OtherRatings)
        {
            // Of columns for two frequencies it is the flux that tells the links: 400 V at 87 Hz and 230 V at 50 Hz are one and the same connection.
            var volts = other.Voltage.Value.Volts;
            var atThisFrequency = volts * context.Figures.Frequency_Hz / (other.Frequency?.Value.Hertz ?? context.Figures.Frequency_Hz);
            WindingConnection? right = VoltageMatch.AreRootThreeApart(atThisFrequency, inUse) ? WindingConnection.Delta
                : VoltageMatch.AreRootThreeApart(inUse, atThisFrequency) ? WindingConnection.Star
                : null;
            if (right is { } named && named != connection)
            {
                return new(Id, Severity.Blocker, Blocks, Columns)
                {
                    Title = "Star and delta interchanged",
                    Explanation = $"The plate has {Said.Number(inUse)} V and {Said.Number(volts)} V, so {Said.Number(inUse)} V is for {Name(named)}, but the motor is said to be in {Name(connection)}.",
                    Remedy = $"Look at the links in the terminal box: for {Said.Number(inUse)} V they must be in {Name(named)}; correct the links or motor.plate.connection.",
                    Value = inUse,
                    Limit = named == WindingConnection.Delta ? atThisFrequency / Math.Sqrt(3) : atThisFrequency * Math.Sqrt(3),
                    Unit = "V",
                };
            }
        }

        return null;
    }

    private CheckResult AgainstSupply(PlateContext context, double supply_V)
    {
        var motor_V = context.Figures.Voltage_V;
        if (VoltageMatch.Suits(motor_V, supply_V))
        {
            return Fine($"{Said.Number(motor_V)} V on a supply of {Said.Number(supply_V)} V");
        }

        if (VoltageBeyondRated.IsMeant(motor_V, context.Figures.Frequency_Hz, context.Supply, context.Operation))
        {
            return Fine($"{Said.Number(motor_V)} V winding on {Said.Number(supply_V)} V, run to {Said.Number(context.Operation!.MaximumFrequency.Value.Hertz)} Hz at rated flux");
        }

        var ratio = supply_V / motor_V;
        return ratio > 1 ? TooMuch(context, supply_V, ratio) : TooLittle(context, supply_V, ratio);
    }

    private CheckResult.Violated TooMuch(PlateContext context, double supply_V, double ratio)
    {
        var motor_V = context.Figures.Voltage_V;
        var better = OtherColumn.Suiting(context.Plate, supply_V);
        var rootThree = VoltageMatch.AreRootThreeApart(supply_V, motor_V);
        var remedy = better is not null
            ? $"The plate has a column for {Said.Number(better.Voltage.Value.Volts)} V{In(better)}: change the links and enter that column, or mean the higher frequency."
            : rootThree
                ? $"Join the winding in star for {Said.Number(motor_V * Math.Sqrt(3))} V if the plate allows, and enter that column; or mean 87 Hz operation and say so by operation.maximum-frequency."
                : "Check the plate's column and the supply.";
        return new(Id, better is not null || rootThree || ratio > 1.8 ? Severity.Blocker : Severity.Caution, Blocks, new Basis.Physics("flux ∝ U/f: rated flux at rated frequency needs rated voltage"))
        {
            Title = "Joined for a lower voltage than the supply's",
            Explanation = $"The motor is joined for {Said.Number(motor_V)} V and the supply has {Said.Number(supply_V)} V, {Said.Number(ratio)} times as much: any drive left at the supply's voltage saturates it.",
            Remedy = remedy,
            Value = motor_V,
            Limit = supply_V,
            Unit = "V",
        };
    }

    private CheckResult.Violated TooLittle(PlateContext context, double supply_V, double ratio)
    {
        var figures = context.Figures;
        var better = OtherColumn.Suiting(context.Plate, supply_V);
        var fullFlux_Hz = figures.Frequency_Hz * ratio;
        var reached = context.Operation?.MaximumFrequency.Value.Hertz <= fullFlux_Hz * 1.05;
        var wrongColumn = better is not null || VoltageMatch.AreRootThreeApart(figures.Voltage_V, supply_V) || ratio < 0.55;
        return new(Id, wrongColumn ? Severity.Blocker : reached ? Severity.Note : Severity.Caution, Blocks, new Basis.Physics("flux ∝ U/f; breakdown torque ∝ (U/f)²"))
        {
            Title = "Joined for a higher voltage than the supply's",
            Explanation = $"The motor is joined for {Said.Number(figures.Voltage_V)} V and the supply has {Said.Number(supply_V)} V: at {Said.Number(figures.Frequency_Hz)} Hz it would have {Said.Percent(ratio, 2)} of its flux and {Said.Percent(ratio * ratio, 2)} of its breakdown torque.",
            Remedy = better is not null
                ? $"The plate has a column for {Said.Number(better.Voltage.Value.Volts)} V{In(better)}: change the links and enter that column."
                : $"Check the links and the column; if it is right, full flux reaches to {Said.Number(fullFlux_Hz)} Hz only.",
            Value = figures.Voltage_V,
            Limit = supply_V,
            Unit = "V",
        };
    }

    private static string In(OtherRating column) => column.Connection is { } connection ? $" in {Name(connection.Value)}" : string.Empty;

    private static string Name(WindingConnection connection) => connection == WindingConnection.Star ? "star" : "delta";
}
