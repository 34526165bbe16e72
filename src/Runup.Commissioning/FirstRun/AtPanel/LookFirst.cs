using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>At what a drives technician looks first when a reading lies outside. Common practice, no source; no diagnosis.</summary>
internal static class LookFirst
{
    /// <summary>At steady running.</summary>
    public static string At(ReadingKind kind, bool above, Coupling coupling) => (kind, above, coupling) switch
    {
        (ReadingKind.OutputFrequency, _, _) => "the frequency that was set, the drive's lowest and highest frequency, a skipped band, and whether the current limit holds it down",
        (ReadingKind.OutputCurrent, true, Coupling.Uncoupled) => "a brake that is on, a coupling that is not open; the connection in the terminal box against the plate; motor voltage, base frequency and boost as entered",
        (ReadingKind.OutputCurrent, false, Coupling.Uncoupled) => "all three phases with a clamp meter, for one that is open; star in the terminal box instead of delta; base frequency as entered",
        (ReadingKind.OutputCurrent, true, Coupling.Coupled) => "the machine: brake, valve, damper, belt, something jammed; then the motor's data and the boost as entered",
        (ReadingKind.OutputCurrent, false, Coupling.Coupled) => "whether the machine does its work: direction, a pump that is dry, a belt or coupling that slips",
        (ReadingKind.DcBusVoltage, true, _) => "the supply, all three line voltages; a load that drives the motor; the ramp down",
        (ReadingKind.DcBusVoltage, false, _) => "the supply, all three line voltages and fuses: a phase may be missing",
        (ReadingKind.OutputVoltage, true, _) => "the meter, which reads a drive's output too high unless it is made for it; motor voltage and base frequency as entered",
        (ReadingKind.OutputVoltage, false, _) => "whether the current limit acts; motor voltage and base frequency as entered; the supply",
        (ReadingKind.Speed, true, _) => "poles and speed as entered, a tachometer beside the display; a load that drives the motor",
        (ReadingKind.Speed, false, _) => "poles and speed as entered, a tachometer beside the display; a load that is too heavy",
        (ReadingKind.Torque, true, Coupling.Uncoupled) => "a brake that is on, bearings, a coupling that is not open; the motor's data as entered",
        (ReadingKind.Torque, true, Coupling.Coupled) => "the machine: brake, valve, damper, belt, something jammed; then the motor's data as entered",
        (ReadingKind.Torque, false, _) => "whether the machine does its work and which way it turns; the motor's data as entered",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such reading."),
    };

    /// <summary>At a run-up and stop.</summary>
    public static string OnRamps(RampReading reading, bool above) => (reading, above) switch
    {
        (RampReading.PeakCurrent, _) => "the machine for something that brakes or jams, its inertia in the survey, the time up as entered",
        (RampReading.PeakDcBus, _) => "the time down as entered, the brake resistor and its connection, the supply",
        (RampReading.TimeToSpeed, true) => "whether the current limit acts on the way; the time up as entered; inertia and load in the survey",
        (RampReading.TimeToSpeed, false) => "the time up as entered, and whether the drive reckons it to its base or its highest frequency",
        (RampReading.TimeToStop, true) => "whether it coasted instead of following the ramp; whether the drive holds the DC bus down by stretching the ramp; the time down as entered",
        (RampReading.TimeToStop, false) => "the time down as entered, and whether the machine brakes by itself",
        _ => throw new ArgumentOutOfRangeException(nameof(reading), reading, "There is no such reading."),
    };

    /// <summary>At standstill.</summary>
    public static string AtStandstill(ReadingKind kind, bool above) => kind switch
    {
        ReadingKind.DcBusVoltage => At(kind, above, Coupling.Uncoupled),
        ReadingKind.OutputCurrent => "whether it stands at all; else the drive's measuring of current, against a clamp meter",
        ReadingKind.OutputFrequency => "where a run command comes from: terminals, bus or panel",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "It is not read at standstill."),
    };
}
