using System.Globalization;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>Figures as a technician would say them.</summary>
internal static class Said
{
    /// <summary>A number with so many significant digits, never in powers of ten.</summary>
    internal static string Number(double value, int digits = 3)
    {
        if (!double.IsFinite(value) || value == 0 || Math.Abs(value) is >= 1e9 or < 1e-6)
        {
            return value.ToString("G3", CultureInfo.InvariantCulture);
        }

        var decimals = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return Math.Round(value, decimals).ToString(decimals == 0 ? "0" : $"0.{new string('#', decimals)}", CultureInfo.InvariantCulture);
    }

    /// <summary>A ratio in per cent.</summary>
    internal static string Percent(double ratio, int digits = 3) => $"{Number(ratio * 100, digits)} %";

    /// <summary>Watts in kW.</summary>
    internal static string Kilowatts(double watts, int digits = 3) => $"{Number(watts / 1000, digits)} kW";

    /// <summary>A torque in N·m, and in the units of the United States in brackets.</summary>
    internal static string Torque(double newtonMetres) => $"{Number(newtonMetres)} N·m ({UnitedStates(Dimension.Torque, newtonMetres)})";

    /// <summary>A temperature in °C, and in °F in brackets.</summary>
    internal static string Celsius(double celsius) => $"{Number(celsius)} °C ({UnitedStates(Dimension.Temperature, Temperature.FromCelsius(celsius).Si)})";

    /// <summary>A length or a height in m, and in feet in brackets.</summary>
    internal static string Metres(double metres) => $"{Number(metres, 4)} m ({UnitedStates(Dimension.Length, metres)})";

    private static string UnitedStates(Dimension dimension, double si) => QuantityText.Write(dimension, si, UnitSystem.UnitedStates, 3);

    /// <summary>Words joined as in speech.</summary>
    internal static string List(IReadOnlyList<string> words) => words.Count switch
    {
        0 => string.Empty,
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
    };
}
