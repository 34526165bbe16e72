namespace Runup.Dynamics.Plant;

/// <summary>What the control asks of the plant for one tick.</summary>
/// <param name="InverterOn">The inverter switches; else its output is open.</param>
/// <param name="ModulationQ">Peak of the phase voltage over the bus voltage, along the axis of the voltage curve.</param>
/// <param name="ModulationD">The same across that axis.</param>
/// <param name="FrequencyHz">Frequency of the output voltage; negative turns the field backward.</param>
/// <param name="ChopperEnabled">The chopper may switch.</param>
/// <param name="BrakeOpen">A mechanical brake on the motor is open.</param>
/// <param name="Supply">How the rectifier is connected.</param>
internal readonly record struct PlantCommand(bool InverterOn, double ModulationQ, double ModulationD, double FrequencyHz, bool ChopperEnabled, bool BrakeOpen, RectifierMode Supply);
