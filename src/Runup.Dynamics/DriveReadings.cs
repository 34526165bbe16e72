using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>What the drive would show, at one moment and without a display's filtering.</summary>
/// <param name="TimeS">Time since the simulation began, in s.</param>
/// <param name="OutputFrequencyHz">Output frequency in Hz; negative is reverse, 0 while the output is off.</param>
/// <param name="OutputCurrentA">Output current in A, rms of a sine of the present amplitude.</param>
/// <param name="DcBusV">DC bus in V.</param>
/// <param name="OutputVoltageV">Output voltage in V, line to line, rms of the fundamental.</param>
/// <param name="TorqueNm">Torque that the motor develops, before its friction, in N·m.</param>
/// <param name="TorquePercent">The same in % of the motor's rated torque by the settings; null where they don't tell it.</param>
/// <param name="SpeedRpm">Speed of the motor's shaft in rpm; negative is reverse.</param>
/// <param name="State">What the drive is doing.</param>
/// <param name="Trip">Why it tripped; none while it has not.</param>
/// <param name="CurrentLimitActive">The current limit holds the ramp.</param>
/// <param name="OvervoltageControlActive">Overvoltage control stretches the deceleration.</param>
/// <param name="ChopperOn">The braking chopper switched within the last tick.</param>
/// <param name="MotorThermalPercent">Thermal state of the motor, 100 % trips.</param>
/// <param name="RideThroughActive">The load's energy keeps the DC bus up.</param>
/// <param name="WindingC">Temperature of the motor's winding, in °C.</param>
/// <param name="HeatSinkC">Temperature of the drive's heat sink, in °C.</param>
/// <param name="ResistorC">Temperature of the braking resistor, in °C.</param>
public readonly record struct DriveReadings(
    double TimeS,
    double OutputFrequencyHz,
    double OutputCurrentA,
    double DcBusV,
    double OutputVoltageV,
    double TorqueNm,
    double? TorquePercent,
    double SpeedRpm,
    DriveState State,
    TripCause Trip,
    bool CurrentLimitActive,
    bool OvervoltageControlActive,
    bool ChopperOn,
    double MotorThermalPercent,
    bool RideThroughActive = false,
    double WindingC = 40,
    double HeatSinkC = 40,
    double ResistorC = 40);
