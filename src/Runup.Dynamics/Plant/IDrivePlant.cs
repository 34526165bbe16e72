using Runup.Dynamics.Lanes;
using Runup.Engineering.Loads;

namespace Runup.Dynamics.Plant;

/// <summary>Supply, drive, motor and machine, as far as the control has to do with them: a command goes in, readings come out.</summary>
internal interface IDrivePlant<T>
    where T : struct, ILanes<T>
{
    /// <summary>What can be measured at the end of the last tick.</summary>
    ref readonly PlantReading<T> Reading { get; }

    /// <summary>One phase of the supply is missing.</summary>
    bool SupplyPhaseLost { get; set; }

    /// <summary>Puts other machines on the shafts; these come to rest.</summary>
    void Couple(IReadOnlyList<DrivenMachine> machines);

    /// <summary>Advances by one tick under a command; set where the states ran away, which are then those of the tick before.</summary>
    T Advance(in PlantCommand<T> command);
}
