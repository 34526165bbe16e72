using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>A trip class of overload protection: how long it may let an overload pass.</summary>
/// <param name="Name">2, 3, 5, 10A, 10, 20, 30 or 40.</param>
/// <param name="LongestFrom150Percent">Trips within, at 1.5 times its setting, warm.</param>
/// <param name="NotBefore">At 7.2 times its setting, cold: trips after; null where nothing is said.</param>
/// <param name="Within">At 7.2 times its setting, cold: trips within.</param>
/// <param name="Certainty">How sure the two last are; the first is from memory in every class.</param>
[Source("iec-60947-4-1", "trip classes and limits of operation")]
public sealed record TripClass(string Name, Duration LongestFrom150Percent, Duration? NotBefore, Duration Within, Certainty Certainty)
{
    private static readonly Lazy<IReadOnlyList<TripClass>> AllClasses = new(Read);

    /// <summary>All classes, quickest first.</summary>
    public static IReadOnlyList<TripClass> All => AllClasses.Value;

    /// <summary>The class of a name; null for a name that the table does not have.</summary>
    public static TripClass? Of(string name) =>
        All.FirstOrDefault(known => known.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>Trip time of the plain I²t law through class seconds at six times the setting: t = class · 36 / (I/I_r)².</summary>
    /// <remarks>
    /// Validity: I above the setting I_r; cold. Stricter than the standard's limits at low overload. Class 10A counts as 10.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The current is not above the setting.</exception>
    [Source("common-practice", "I²t law with six times the setting as its reference")]
    public Duration TripTime(double currentOverSetting) => currentOverSetting > 1
        ? Duration.FromSeconds(Seconds * 36 / (currentOverSetting * currentOverSetting))
        : throw new ArgumentOutOfRangeException(nameof(currentOverSetting), currentOverSetting, "At or below its setting the protection does not trip.");

    private double Seconds => double.Parse(Name.TrimEnd('A'), System.Globalization.CultureInfo.InvariantCulture);

    private static List<TripClass> Read()
    {
        var table = StandardTable.Read("iec-60947-4-1-trip-classes");
        return table.Rows.Select(row => new TripClass(
            table.Text(row, "class"),
            Duration.FromSeconds(60 * table.Number(row, "C_1.5xIr_max_min")!.Value),
            table.Number(row, "D_7.2xIr_trip_min_s_exclusive") is { } notBefore ? Duration.FromSeconds(notBefore) : null,
            Duration.FromSeconds(table.Number(row, "D_7.2xIr_trip_max_s")!.Value),
            table.Text(row, "mark").StartsWith("D seen", StringComparison.Ordinal) ? Certainty.Seen : Certainty.Memory)).ToList();
    }
}
