namespace Runup.Commissioning.Checks.Plate;

/// <summary>How the plate's voltage goes with the supply's.</summary>
internal static class VoltageMatch
{
    // IEC 60038 and IEC 60034-1 allow some 10 % between nominal supply and motor; a drive can only give less than its supply, so more supply does no harm up to the next usual voltage.
    private const double LeastSupply = 0.88;
    private const double MostSupply = 1.28;

    /// <summary>Whether a motor of this voltage is one for the supply.</summary>
    internal static bool Suits(double motor_V, double supply_V) => supply_V / motor_V is >= LeastSupply and <= MostSupply;

    /// <summary>Whether nothing speaks against the plate's voltage: it suits the supply, or the supply is not known.</summary>
    internal static bool IsCredible(PlateContext context) =>
        context.Supply is not { } supply || Suits(context.Figures.Voltage_V, supply.Voltage.Value.Volts);

    /// <summary>Whether two voltages are √3 apart, as star and delta of one winding.</summary>
    internal static bool AreRootThreeApart(double higher, double lower) => Math.Abs((higher / lower / Math.Sqrt(3)) - 1) < 0.06;
}
