using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>A supply, a drive, a motor and the machine that it drives.</summary>
public sealed record DriveSystem
{
    /// <summary>The motor.</summary>
    public required EquivalentCircuit Motor { get; init; }

    /// <summary>What turns with the motor's shaft.</summary>
    public required DrivenMachine Machine { get; init; }

    /// <summary>The drive's size.</summary>
    public required DriveRating Drive { get; init; }

    /// <summary>Supply voltage, line to line.</summary>
    public required LineVoltage SupplyVoltage { get; init; }

    /// <summary>Supply frequency.</summary>
    public required ElectricalFrequency SupplyFrequency { get; init; }

    /// <summary>Reactance of supply and line reactor, each phase, at supply frequency; null: 1 % of the drive's base impedance is assumed.</summary>
    public Reactance? SupplyReactance { get; init; }

    /// <summary>A point of the supply is earthed, so that a fault to earth drives a current; not so on an IT supply.</summary>
    public bool SupplyEarthed { get; init; } = true;

    /// <summary>The braking resistor, if one is connected.</summary>
    public Resistance? BrakingResistor { get; init; }

    /// <summary>Continuous power of the braking resistor; null where it is not known.</summary>
    public ElectricalPower? BrakingResistorPower { get; init; }

    /// <summary>What motor and shaft have beyond the plain model; null: the plain one.</summary>
    public PlantDetail? Detail { get; init; }

    /// <summary>Torque of the mechanical brake on the motor, which closes without power; null where there is none.</summary>
    public Torque? Brake { get; init; }
}
