namespace Runup.Quantities;

/// <summary>Which units people of each habit read a dimension in, from the smallest up.</summary>
internal static class PeopleUnits
{
    /// <summary>The unit in which a value reads best: the largest that leaves at least one before the point, else the smallest.</summary>
    internal static Unit For(Dimension dimension, double si, UnitSystem system)
    {
        var symbols = Symbols(dimension, system);
        var best = Named(dimension, symbols[0]);
        foreach (var symbol in symbols.AsSpan(1))
        {
            var unit = Named(dimension, symbol);
            if (Math.Abs(unit.FromSi(si)) >= 0.9995)
            {
                best = unit;
            }
        }

        return best;
    }

    private static string[] Symbols(Dimension dimension, UnitSystem system)
    {
        var isMetric = system == UnitSystem.Metric;
        return dimension.Name switch
        {
            "power" => isMetric ? ["W", "kW", "MW"] : ["W", "hp"],
            "torque" => isMetric ? ["N·m", "kN·m"] : ["lb·in", "lb·ft"],
            "inertia" => isMetric ? ["kg·m²"] : ["lb·ft²"],
            "temperature" => isMetric ? ["°C"] : ["°F"],
            "length" => isMetric ? ["mm", "m"] : ["in", "ft"],
            "cross-section" => isMetric ? ["mm²"] : ["kcmil"],
            "mass" => isMetric ? ["kg"] : ["lb"],
            "speed along a line" => isMetric ? ["m/s", "m/µs"] : ["ft/s", "m/µs"],
            "voltage" => ["mV", "V"],
            "current" => ["mA", "A"],
            "frequency" => ["Hz", "kHz"],
            "apparent power" => ["VA", "kVA", "MVA"],
            "resistance" => ["mΩ", "Ω", "kΩ", "MΩ"],
            "inductance" => ["µH", "mH", "H"],
            "capacitance" => ["pF", "nF", "µF", "mF"],
            "time" => ["µs", "ms", "s"],
            "energy" => ["J", "kJ", "MJ"],
            _ => [dimension.Units[0].Symbol],
        };
    }

    private static Unit Named(Dimension dimension, string symbol) => dimension.Units.First(u => string.Equals(u.Symbol, symbol, StringComparison.Ordinal));
}
