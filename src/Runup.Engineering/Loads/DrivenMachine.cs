using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>The driven machine as the motor's shaft feels it through its gear, with the motor's own inertia.</summary>
public sealed record DrivenMachine
{
    private const double BesideStandstill = 1e-6;

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

    /// <summary>The same machine seen the other way round, so that backward motion is reckoned as forward; a hoist then lowers.</summary>
    public DrivenMachine Reversed => this with { Load = Load.Reversed };

    /// <summary>Torque at the motor's shaft at which the machine breaks away forward; negative where it sets off by itself.</summary>
    public Torque BreakawayAtMotor => HeldBetween.Highest;

    /// <summary>Torques at the motor's shaft between which the machine stays at rest.</summary>
    /// <remarks>
    /// At the machine's shaft: what does not change its sign with the direction (weight, W) and friction F on either side of it: W ± F, with F from the load just beside standstill, at
    /// least what <see cref="Breakaway"/>, the whole torque to set the machine in motion, has beyond the weight. Each through the gear as for motion in its direction.
    /// </remarks>
    public (Torque Lowest, Torque Highest) HeldBetween
    {
        get
        {
            var forward_Nm = Load.At(ShaftSpeed.FromRadiansPerSecond(BesideStandstill)).NewtonMetres;
            var backward_Nm = Load.At(ShaftSpeed.FromRadiansPerSecond(-BesideStandstill)).NewtonMetres;
            var weight_Nm = 0.5 * (forward_Nm + backward_Nm);
            var friction_Nm = Math.Max(0.5 * Math.Abs(forward_Nm - backward_Nm), (Breakaway?.NewtonMetres ?? 0) - Math.Abs(weight_Nm));
            return (AtMotor(weight_Nm - friction_Nm, -1), AtMotor(weight_Nm + friction_Nm, 1));
        }
    }

    /// <summary>So many equal motors with a machine each, as one.</summary>
    public DrivenMachine Times(int count) => count == 1 ? this : this with
    {
        Load = Load.Times(count),
        MachineInertia = Inertia.FromKilogramSquareMetres(count * MachineInertia.KilogramSquareMetres),
        MotorInertia = Inertia.FromKilogramSquareMetres(count * MotorInertia.KilogramSquareMetres),
        Breakaway = Breakaway is { } one ? Torque.FromNewtonMetres(count * one.NewtonMetres) : null,
    };

    /// <summary>Torque of the load at the motor's shaft: T/(i·η) while the motor drives, T·η_back/i while the load drives.</summary>
    public Torque LoadTorque(ShaftSpeed motor) => AtMotor(Load.At(MachineSpeed(motor)).NewtonMetres, motor.RadiansPerSecond);

    /// <summary>Torque of the motor that turns its shaft at a speed, gaining so much of it in a second: load and acceleration through the gear, and the rotor's acceleration.</summary>
    public Torque TorqueFor(ShaftSpeed motor, ShaftSpeed gainedPerSecond)
    {
        var behindGear_Nm = MachineInertia.KilogramSquareMetres * gainedPerSecond.RadiansPerSecond / GearRatio;
        var machine = AtMotor(Load.At(MachineSpeed(motor)).NewtonMetres + behindGear_Nm, motor.RadiansPerSecond);
        return Torque.FromNewtonMetres(machine.NewtonMetres + (MotorInertia.KilogramSquareMetres * gainedPerSecond.RadiansPerSecond));
    }

    private Torque AtMotor(double machine_Nm, double direction)
    {
        var efficiency = machine_Nm * direction >= 0 ? 1 / GearEfficiency.Ratio : GearEfficiencyBack.Ratio;
        return Torque.FromNewtonMetres(machine_Nm * efficiency / GearRatio);
    }
}
