using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>What the control asks of the plant for one tick.</summary>
/// <param name="InverterOn">Set where the inverter switches; else its output is open.</param>
/// <param name="ModulationQ">Peak of the phase voltage over the bus voltage, along the axis of the voltage curve.</param>
/// <param name="ModulationD">The same across that axis.</param>
/// <param name="FrequencyHz">Frequency of the output voltage; negative turns the field backward.</param>
/// <param name="ChopperEnabled">The chopper may switch.</param>
/// <param name="BrakeOpen">Set where a mechanical brake on the motor is open.</param>
/// <param name="Supply">How the rectifier is connected.</param>
internal readonly record struct PlantCommand<T>(T InverterOn, T ModulationQ, T ModulationD, T FrequencyHz, bool ChopperEnabled, T BrakeOpen, RectifierMode Supply)
    where T : struct, ILanes<T>;
