using System.Globalization;
using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>Full-load currents of three-phase induction motors by horsepower and rated voltage.</summary>
/// <param name="Horsepower">Rated output in horsepower.</param>
/// <param name="Voltage">Rated voltage of the motor.</param>
/// <param name="Current">Full-load current.</param>
[Source("nec", "Table 430.250")]
public sealed record FullLoadCurrent(double Horsepower, LineVoltage Voltage, LineCurrent Current)
{
    private static readonly Lazy<IReadOnlyList<FullLoadCurrent>> AllCurrents = new(Read);

    /// <summary>Every figure of the table.</summary>
    public static IReadOnlyList<FullLoadCurrent> All => AllCurrents.Value;

    /// <summary>The figure for an output and a rated voltage; null where the table has none.</summary>
    public static Tabulated<LineCurrent>? Of(double horsepower, LineVoltage voltage) =>
        All.FirstOrDefault(row => row.Horsepower == horsepower && row.Voltage == voltage) is { } found
            ? new Tabulated<LineCurrent>(found.Current, "NEC Table 430.250", Certainty.Seen)
            : null;

    private static List<FullLoadCurrent> Read()
    {
        var table = StandardTable.Read("nec-430-250");
        var voltages = table.Columns.Where(name => name.StartsWith("A_", StringComparison.Ordinal))
            .Select(name => (Column: name, Voltage: LineVoltage.FromVolts(double.Parse(name[2..^1], CultureInfo.InvariantCulture))))
            .ToList();
        return (from row in table.Rows
                from voltage in voltages
                let current = table.Number(row, voltage.Column)
                where current is not null
                select new FullLoadCurrent(table.Number(row, "hp")!.Value, voltage.Voltage, LineCurrent.FromAmperes(current.Value))).ToList();
    }
}
