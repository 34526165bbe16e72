namespace Runup.Commissioning.Checks.Drive;

/// <summary>The levels of the DC bus against the supply and one another: undervoltage below it, the chopper above it, the trip above both.</summary>
internal sealed class BusLevels() : Check("drive.bus-levels", Stage.Entry)
{
    private static readonly Basis Ratio = new Basis.Physics("peak of the line voltage = √2 · U, to which the idle bus is charged");

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (DriveVoltage.IsOutside(context))
        {
            return Unknown("a supply within the drive's range (drive.voltage)", "whether the levels of the DC bus suit it");
        }

        var rating = context.Rating;
        var idle_V = Math.Sqrt(2) * context.Job.Supply.Voltage.Value.Volts;
        var (trip_V, under_V, chopper_V) = (rating.OvervoltageTrip.Volts, rating.UndervoltageTrip.Volts, rating.ChopperLevel.Volts);
        var resistor = context.Job.Drive.BrakingResistor is not null && rating.LowestBrakingResistance is not null;
        return trip_V <= idle_V ? Finding("The bus trips before anything turns", $"Idle, the bus stands at {Said.Number(idle_V)} V, and the overvoltage trip is put down as {Said.Number(trip_V)} V.", "drive.overvoltage-trip", trip_V, idle_V)
            : under_V >= idle_V ? Finding("The bus never reaches its undervoltage level", $"Idle, the bus stands at {Said.Number(idle_V)} V, and the undervoltage trip is put down as {Said.Number(under_V)} V.", "the profile's undervoltage trip", under_V, idle_V)
            : resistor && chopper_V <= idle_V ? Finding("The braking resistor would never be switched off", $"Idle, the bus stands at {Said.Number(idle_V)} V, above the chopper's {Said.Number(chopper_V)} V: the resistor would burn all the time.", "drive.chopper-level", chopper_V, idle_V)
            : resistor && chopper_V >= trip_V ? Finding("The drive trips before the braking resistor is switched on", $"The chopper is put down as {Said.Number(chopper_V)} V, and the overvoltage trip as {Said.Number(trip_V)} V.", "drive.chopper-level and drive.overvoltage-trip", chopper_V, trip_V)
            : Fine($"{Said.Number(under_V)} V, idle bus {Said.Number(idle_V)} V, trip {Said.Number(trip_V)} V, in this order");
    }

    private CheckResult.Violated Finding(string title, string explanation, string what, double value_V, double limit_V) => new(Id, Severity.Blocker, Blocks, Ratio)
    {
        Title = title,
        Explanation = explanation,
        Remedy = $"Read {what} again in the drive's manual; the profile knows the usual levels, which stand where the job says nothing.",
        Value = value_V,
        Limit = limit_V,
        Unit = "V",
    };
}
