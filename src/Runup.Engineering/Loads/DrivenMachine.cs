using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>The driven machine as the motor's shaft feels it through its gear, with the motor's own inertia.</summary>
public sealed record DrivenMachine
{
    /// <summary>Load torque at the machine's shaft.</summary>
    public required LoadCurve Load { get; init; }

    /// <summary>Inertia at the machine's shaft.</summary>
    public required Inertia MachineInertia { get; init; }

    /// <summary>Inertia of the motor's rotor.</summary>
    public required Inertia MotorInertia { get; init; }

    /// <summary>Torque at the machine's shaft to break it away; null where none is known.</summary>
    public Torque? Breakaway { get; init; }

    /// <summary>Motor speed over machine speed.</summary>
    public double GearRatio { get; init; } = 1;

    /// <summary>Efficiency of the gear when the motor drives.</summary>
    public Efficiency GearEfficiency { get; init; } = Efficiency.FromRatio(1);

    /// <summary>Efficiency of the gear when the load drives.</summary>
    public Efficiency GearEfficiencyBack { get; init; } = Efficiency.FromRatio(1);

    /// <summary>Inertia at the motor's shaft: J_motor + J_machine / i².</summary>
    public Inertia TotalInertia =>
        Inertia.FromKilogramSquareMetres(MotorInertia.KilogramSquareMetres + (MachineInertia.KilogramSquareMetres / (GearRatio * GearRatio)));

    /// <summary>Speed of the machine's shaft at a speed of the motor's.</summary>
    public ShaftSpeed MachineSpeed(ShaftSpeed motor) => ShaftSpeed.FromRadiansPerSecond(motor.RadiansPerSecond / GearRatio);

    /// <summary>Torque of the load at the motor's shaft: T/(i·η) while the motor drives, T·η_back/i while the load drives.</summary>
    public Torque LoadTorque(ShaftSpeed motor)
    {
        var machine = Load.At(MachineSpeed(motor)).NewtonMetres;
        var motorDrives = machine * motor.RadiansPerSecond >= 0;
        var efficiency = motorDrives ? 1 / GearEfficiency.Ratio : GearEfficiencyBack.Ratio;
        return Torque.FromNewtonMetres(machine * efficiency / GearRatio);
    }
}
