using Runup.Commissioning.Survey;
using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Slips of having copied one figure from another column of the plate, where that column is entered too.</summary>
/// <remarks>What should stand in its place is reckoned from the rest of the plate, so that it fits by itself; the coincidence of two figures is what speaks for the slip.</remarks>
[Source("common-practice", "how often a figure is copied from the column beside")]
internal sealed class ColumnSlips(PlateContext context)
{
    private const double Prior = 0.2;
    private const double Same = 0.004;
    private const double NearestRating = 0.06;
    private const double NearestFactor = 0.09;

    private readonly PlateFigures figures = context.Figures;

    internal IEnumerable<SlipCandidate> All() => context.Plate.OtherRatings.SelectMany(Of);

    /// <summary>Whether the plate has a column of that frequency, and output and voltage in use are not its own.</summary>
    internal bool Contradicts(double frequency_Hz)
    {
        var columns = context.Plate.OtherRatings.Where(other => IsSame(other.Frequency?.Value.Hertz, frequency_Hz)).ToList();
        return columns.Count > 0 && !columns.Exists(other => IsSame(other.Voltage.Value.Volts, figures.Voltage_V));
    }

    private IEnumerable<SlipCandidate> Of(OtherRating other)
    {
        var name = Name(other);
        var over = figures.ImpliedProduct / ExpectedProduct();
        if (IsSame(other.Voltage.Value.Volts, figures.Voltage_V))
        {
            var meant = UsualVoltages.Nearest(figures.Voltage_V * over);
            yield return Copied($"the voltage is {Said.Number(meant)} V ({Said.Number(figures.Voltage_V)} V is that of another column)", figures with { Voltage_V = meant }, KindOf(over));
        }

        if (IsSame(other.Current?.Value.Amperes, figures.Current_A))
        {
            var meant = figures.Current_A * over;
            yield return Copied($"the current is about {Said.Number(meant, 2)} A ({Said.Number(figures.Current_A)} A is printed for {name})", figures with { Current_A = meant }, KindOf(over));
        }

        if (IsSame(other.Output?.Value.Watts, figures.Output_W))
        {
            var meant = UsualMotors.NearestRating_W(figures.Output_W / over, NearestRating);
            yield return Copied($"the output is {Said.Kilowatts(meant)} ({Said.Kilowatts(figures.Output_W)} is printed for {name})", figures with { Output_W = meant });
        }

        if (IsSame(other.Speed?.Value.Rpm, figures.Speed_rpm) && other.Frequency?.Value.Hertz is { } frequency && !IsSame(frequency, figures.Frequency_Hz))
        {
            // Slip in rpm changes little from column to column.
            var poles = figures.BuildablePoles ?? figures.PolesFromSpeed(frequency);
            var meant = figures.Speed_rpm - PlateFigures.Synchronous_rpm(frequency, poles) + PlateFigures.Synchronous_rpm(figures.Frequency_Hz, poles);
            yield return Copied($"the speed is about {Said.Number(meant, 3)} rpm ({Said.Number(figures.Speed_rpm, 4)} rpm is printed for {name})", figures with { Speed_rpm = meant });
        }
    }

    /// <summary>η·cos φ as printed, else the middle of the usual band.</summary>
    private double ExpectedProduct()
    {
        var (low, high) = UsualMotors.Product(figures.Output_W, context.Speed.Poles ?? 4);
        return figures.PrintedProduct ?? Math.Sqrt(low * high);
    }

    private static SlipCandidate Copied(string what, PlateFigures meant, MagnitudeSlip? kind = null) => new(what, meant, Prior, kind) { IsReckoned = true };

    /// <summary>The slip whose factor this is, where the columns are √3 or 2 apart.</summary>
    private static MagnitudeSlip? KindOf(double over) => SlipCandidates.Columns
        .Where(column => Math.Abs(Math.Log(over / column.Factor)) < NearestFactor)
        .Select(column => (MagnitudeSlip?)column.Kind)
        .FirstOrDefault();

    private static string Name(OtherRating other) => other.Frequency is { } frequency
        ? $"{Said.Number(other.Voltage.Value.Volts)} V, {Said.Number(frequency.Value.Hertz)} Hz"
        : $"{Said.Number(other.Voltage.Value.Volts)} V";

    private static bool IsSame(double? one, double other) => one is { } value && Math.Abs((value / other) - 1) < Same;
}
