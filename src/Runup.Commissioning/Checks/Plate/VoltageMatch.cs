namespace Runup.Commissioning.Checks.Plate;

/// <summary>How the plate's voltage goes with the supply's.</summary>
internal static class VoltageMatch
{
    // IEC 60038 and IEC 60034-1 allow some 10 % between nominal supply and motor; a drive can only give less than its supply, so more supply does no harm up to the next usual voltage.
    private const double LeastSupply = 0.88;
    private const double MostSupply = 1.28;

    // The technique of running a 230 V delta winding from 400 V up to 87 Hz.
    private const double LeastOverspeed = 1.4;
    private const double Around = 0.14;

    /// <summary>Whether a motor of this voltage is one for the supply.</summary>
    internal static bool Suits(double motor_V, double supply_V) => supply_V / motor_V is >= LeastSupply and <= MostSupply;

    /// <summary>Whether nothing speaks against the plate's voltage: it suits the supply, or the supply is not known.</summary>
    internal static bool IsCredible(PlateContext context) =>
        context.Supply is not { } supply || Suits(context.Figures.Voltage_V, supply.Voltage.Value.Volts);

    /// <summary>
    /// Whether the winding is meant to be run to √3 times its frequency from √3 times its voltage, at the same flux: highest frequency over rated
    /// frequency is about supply voltage over rated voltage.
    /// </summary>
    internal static bool IsMeantBeyondRatedFrequency(PlateContext context)
    {
        if (context.Supply is not { } supply || context.Operation is not { } operation)
        {
            return false;
        }

        var voltages = supply.Voltage.Value.Volts / context.Figures.Voltage_V;
        var frequencies = operation.MaximumFrequency.Value.Hertz / context.Figures.Frequency_Hz;
        return voltages >= LeastOverspeed && frequencies >= LeastOverspeed && Math.Abs(Math.Log(voltages / frequencies)) < Around;
    }

    /// <summary>Whether two voltages are √3 apart, as star and delta of one winding.</summary>
    internal static bool AreRootThreeApart(double higher, double lower) => Math.Abs((higher / lower / Math.Sqrt(3)) - 1) < 0.06;
}
