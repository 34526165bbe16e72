using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>What one size of a drive can carry, from the maker's data.</summary>
public sealed record DriveRating
{
    /// <summary>Rated motor power that the maker prints for the size; a name, not a limit.</summary>
    public required ShaftPower NominalPower { get; init; }

    /// <summary>Lowest and highest nominal supply voltage, line to line.</summary>
    public required (LineVoltage Low, LineVoltage High) SupplyVoltage { get; init; }

    /// <summary>Supply phases, 1 or 3.</summary>
    public required int SupplyPhases { get; init; }

    /// <summary>The overload cycles that the size is rated for; the first is the normal one.</summary>
    public required IReadOnlyList<OverloadCycle> Overloads { get; init; }

    /// <summary>Output current for at most <see cref="PeakTime"/>.</summary>
    public required LineCurrent PeakCurrent { get; init; }

    /// <summary>How long the peak current may flow.</summary>
    public required Duration PeakTime { get; init; }

    /// <summary>Output current at which the drive trips at once, rms of a sine of that peak.</summary>
    public required LineCurrent OvercurrentTrip { get; init; }

    /// <summary>Capacitance of the DC bus.</summary>
    public required Capacitance BusCapacitance { get; init; }

    /// <summary>DC choke as a fraction of the size's base impedance; zero is none.</summary>
    public required Fraction DcChoke { get; init; }

    /// <summary>Lowest braking resistance that the chopper may switch; null where there is no chopper.</summary>
    public Resistance? LowestBrakingResistance { get; init; }

    /// <summary>Bus voltage at which the drive trips on overvoltage.</summary>
    public required DcVoltage OvervoltageTrip { get; init; }

    /// <summary>Bus voltage at which deceleration is stretched.</summary>
    public required DcVoltage OvervoltageControl { get; init; }

    /// <summary>Bus voltage at which the chopper switches on.</summary>
    public required DcVoltage ChopperLevel { get; init; }

    /// <summary>Bus voltage at which the drive trips on undervoltage.</summary>
    public required DcVoltage UndervoltageTrip { get; init; }

    /// <summary>Rise time of an edge of the output voltage; null where the maker gives none.</summary>
    public Duration? OutputRiseTime { get; init; }

    /// <summary>Short-circuit current of the supply that the drive may stand behind, with the maker's fuses or breaker; null where the maker gives none.</summary>
    public LineCurrent? ShortCircuitRating { get; init; }

    /// <summary>What the drive loses as heat at rated current and switching frequency; null where the maker gives none.</summary>
    public ElectricalPower? Losses { get; init; }

    /// <summary>Permitted continuous current against switching frequency, as fractions of rated current, ascending; linear between.</summary>
    public required IReadOnlyList<(SwitchingFrequency Frequency, Fraction Current)> SwitchingDerating { get; init; }

    /// <summary>Reduction of current with ambient temperature.</summary>
    public required LinearDerating<Temperature> AmbientDerating { get; init; }

    /// <summary>Reduction of current with altitude.</summary>
    public required LinearDerating<Length> AltitudeDerating { get; init; }
}

/// <summary>A continuous current with the overload that it allows: so much of it for so long, once in so long.</summary>
/// <param name="Name">normal or heavy.</param>
/// <param name="Current">Continuous output current.</param>
/// <param name="Overload">Overload current over continuous current.</param>
/// <param name="For">How long.</param>
/// <param name="Every">Once in.</param>
public sealed record OverloadCycle(string Name, LineCurrent Current, Fraction Overload, Duration For, Duration Every);

/// <summary>Full current up to a limit, then less by so much for each step, up to a highest permitted value.</summary>
/// <typeparam name="T">What the current depends on.</typeparam>
/// <param name="FullUpTo">Full current up to here.</param>
/// <param name="LossPerSi">Fraction of current lost per SI unit (K or m) beyond.</param>
/// <param name="Highest">Not permitted beyond.</param>
public sealed record LinearDerating<T>(T FullUpTo, double LossPerSi, T Highest);
