using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>The units that a profile may print: the trade's units of every dimension, and pole pairs.</summary>
public static class ProfileUnit
{
    // Rarely more than a dozen symbols occur in a profile; the order decides where two dimensions share a spelling (metre before minute has none).
    private static readonly Dimension[] Dimensions =
    [
        Dimension.Voltage, Dimension.Current, Dimension.Frequency, Dimension.RotationalSpeed, Dimension.Power, Dimension.Torque,
        Dimension.Fraction, Dimension.Time, Dimension.Resistance, Dimension.Inductance, Dimension.Capacitance, Dimension.Temperature,
        Dimension.Inertia, Dimension.Energy, Dimension.ApparentPower, Dimension.Length,
    ];

    private static readonly Unit PolePairs = new("pole pairs", 2, 0, ["pairs"]);
    private static readonly Unit One = new("", 1, 0, ["1"]);
    private static readonly Unit BitRate = new("bit/s", 1, 0, ["Bd", "baud"]);

    /// <summary>The unit of a symbol with its dimension, or null; a unit without dimension of its own is a pure number's.</summary>
    public static (Dimension Dimension, Unit Unit)? Find(string symbol)
    {
        foreach (var unit in (ReadOnlySpan<Unit>)[One, PolePairs, BitRate])
        {
            if (Is(unit, symbol))
            {
                return (Dimension.PureNumber, unit);
            }
        }

        foreach (var dimension in Dimensions)
        {
            foreach (var unit in dimension.Units)
            {
                if (Is(unit, symbol))
                {
                    return (dimension, unit);
                }
            }
        }

        return null;
    }

    private static bool Is(Unit unit, string symbol)
    {
        if (string.Equals(unit.Symbol, symbol, StringComparison.Ordinal))
        {
            return true;
        }

        foreach (var spelling in unit.Spellings)
        {
            if (string.Equals(spelling, symbol, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
