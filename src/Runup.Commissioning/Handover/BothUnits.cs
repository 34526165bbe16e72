using Runup.Quantities;

namespace Runup.Commissioning.Handover;

/// <summary>Values for readers of either habit: <c>7.5 kW (10.1 hp)</c>.</summary>
public static class BothUnits
{
    private const int Digits = 4;
    private const int DigitsInBrackets = 3;

    /// <summary>Writes a quantity in metric units, and in the United States' ones behind where they differ.</summary>
    public static string Write<T>(T quantity)
        where T : struct, IQuantity<T> => Write(T.Dimension, quantity.Si);

    /// <summary>Writes an SI value of a dimension likewise.</summary>
    public static string Write(Dimension dimension, double si)
    {
        var metric = QuantityText.Write(dimension, si, UnitSystem.Metric, Digits);
        var other = QuantityText.Write(dimension, si, UnitSystem.UnitedStates, DigitsInBrackets);
        return UnitOf(metric) == UnitOf(other) ? metric : $"{metric} ({other})";
    }

    private static ReadOnlySpan<char> UnitSpan(string text) => text.AsSpan(text.LastIndexOf(' ') + 1);

    private static string UnitOf(string text) => UnitSpan(text).ToString();
}
