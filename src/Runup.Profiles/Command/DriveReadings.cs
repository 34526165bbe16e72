using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>One round of readings; what the drive does not show, or was not read, is null.</summary>
public sealed record DriveReadings
{
    /// <summary>Output frequency.</summary>
    public ElectricalFrequency? OutputFrequency { get; init; }

    /// <summary>Output current.</summary>
    public LineCurrent? OutputCurrent { get; init; }

    /// <summary>Voltage of the DC bus.</summary>
    public DcVoltage? DcBus { get; init; }

    /// <summary>Output voltage, line to line.</summary>
    public LineVoltage? OutputVoltage { get; init; }

    /// <summary>Torque, of the motor's rated torque.</summary>
    public Fraction? Torque { get; init; }

    /// <summary>Speed of the shaft; negative in reverse.</summary>
    public ShaftSpeed? Speed { get; init; }

    /// <summary>State.</summary>
    public PowerState? State { get; init; }

    /// <summary>Cause of the last trip; null also for a code that the profile does not know.</summary>
    public TripCause? LastTrip { get; init; }

    /// <summary>Code of the last trip as the drive gives it.</summary>
    public long? LastTripCode { get; init; }
}
