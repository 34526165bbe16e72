namespace Runup.Commissioning.Checks.Drive;

/// <summary>The supply against the drive's supply range.</summary>
internal sealed class DriveVoltage() : Check("drive.voltage", Stage.Entry)
{
    // Makers' ranges are of nominal voltages; a supply swings by some 10 % about its own (IEC 60038).
    private const double Swing = 0.1;

    /// <summary>Whether this supply is none for this size.</summary>
    internal static bool IsOutside(JobContext context) =>
        context.Job.Supply.Voltage.Value.Volts is var supply
        && (supply < context.Rating.SupplyVoltage.Low.Volts * (1 - Swing) || supply > context.Rating.SupplyVoltage.High.Volts * (1 + Swing));

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var supply = context.Job.Supply.Voltage.Value.Volts;
        var (low, high) = (context.Rating.SupplyVoltage.Low.Volts, context.Rating.SupplyVoltage.High.Volts);
        if (!IsOutside(context))
        {
            return Fine($"{Said.Number(supply)} V within {Said.Number(low)} V to {Said.Number(high)} V");
        }

        var below = supply < low;
        return new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.MakersData("supply voltage"))
        {
            Title = below ? "Supply below the drive's range" : "Supply above the drive's range",
            Explanation = $"The supply has {Said.Number(supply)} V and this size is for {Said.Number(low)} V to {Said.Number(high)} V: {(below ? "it would trip on undervoltage" : "it would be destroyed")}.",
            Remedy = "A size for this supply, or the supply's voltage read again.",
            Value = supply,
            Limit = below ? low : high,
            Unit = "V",
        };
    }
}
