namespace Runup.Quantities;

/// <summary>The set of units in which a person wants to read.</summary>
public enum UnitSystem
{
    /// <summary>SI units and the trade's metric ones.</summary>
    Metric,

    /// <summary>Horsepower, pound-feet, feet, gauges, degrees Fahrenheit.</summary>
    UnitedStates,
}
