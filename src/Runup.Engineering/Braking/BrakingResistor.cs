using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Braking;

/// <summary>Which resistors a chopper may have for a stop.</summary>
/// <remarks>
/// R ≥ the drive's lowest resistance; R ≤ U_chop²/P_peak, so that the resistor takes the peak while the bus stays at the chopper's level. U_chop chopper level (V DC), P_peak (W).
/// Validity: chopper fully on at the peak. Assumption: resistance when hot.
/// </remarks>
/// <param name="Lowest">The drive's lowest resistance; null where it has no chopper.</param>
/// <param name="Highest">Highest resistance for the peak at the bus; null where nothing comes back.</param>
/// <param name="HighestForInertiaAlone">Highest resistance for J·α·ω₀, where the load cannot be counted upon to help; null where there is no inertia.</param>
[Source("common-practice", "braking resistor between the chopper's lowest resistance and U²/P")]
public sealed record BrakingResistor(Resistance? Lowest, Resistance? Highest, Resistance? HighestForInertiaAlone)
{
    /// <summary>For a drive and a stop.</summary>
    public static BrakingResistor For(DriveRating drive, BrakingDemand demand) => new(
        drive.LowestBrakingResistance,
        Taking(demand.Peak, drive.ChopperLevel),
        Taking(demand.InertiaPeak, drive.ChopperLevel));

    /// <summary>Mean power of a resistor that takes an energy so many times an hour.</summary>
    public static ElectricalPower MeanPower(Energy energy, double stopsPerHour) =>
        ElectricalPower.FromWatts(energy.Joules * stopsPerHour / 3600);

    private static Resistance? Taking(ElectricalPower peak, DcVoltage level) =>
        peak.Watts > 0 ? Resistance.FromOhms(level.Volts * level.Volts / peak.Watts) : null;
}
