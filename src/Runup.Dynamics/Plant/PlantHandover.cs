namespace Runup.Dynamics.Plant;

/// <summary>All that a plant needs to go on where another stopped.</summary>
/// <param name="States">Its states, in the control's frame.</param>
/// <param name="Direction">Direction of the shaft; 0 where friction holds it.</param>
/// <param name="Fed">The inverter switches.</param>
/// <param name="ChopperOn">The chopper is on.</param>
/// <param name="ModulationQ">Of the last command.</param>
/// <param name="ModulationD">Of the last command.</param>
/// <param name="FrequencyHz">Of the last command.</param>
internal readonly record struct PlantHandover(
    DetailedStates States, int Direction, bool Fed, bool ChopperOn, double ModulationQ, double ModulationD, double FrequencyHz);
