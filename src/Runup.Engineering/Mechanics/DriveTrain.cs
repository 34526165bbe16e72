using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>Torque at the motor's shaft against acceleration, through a gear that loses on the way; bare numbers for the inner loops.</summary>
/// <remarks>
/// At the machine's shaft x = T_load(ω/i) + J_machine α/i. Where x and ω point the same way the motor drives and the motor's shaft gives x/(i η); else the machine
/// drives and the motor's shaft receives x η_back/i. With the rotor: T = J_motor α + that. Rises with α, so that it can be turned round.
/// </remarks>
internal readonly struct DriveTrain(DrivenMachine machine)
{
    /// <summary>Torque at the motor's shaft for a speed and an acceleration of that shaft; forward speeds.</summary>
    internal double Torque_Nm(double speed_radPerS, double acceleration_radPerS2)
    {
        var x = Load_Nm(speed_radPerS) + (machine.MachineInertia.KilogramSquareMetres * acceleration_radPerS2 / machine.GearRatio);
        return (machine.MotorInertia.KilogramSquareMetres * acceleration_radPerS2) + (x * Transmission(x));
    }

    /// <summary>Acceleration of the motor's shaft under a torque of the motor.</summary>
    internal double Acceleration_radPerS2(double speed_radPerS, double torque_Nm)
    {
        var load = Load_Nm(speed_radPerS);
        var (motor, behindGear) = (machine.MotorInertia.KilogramSquareMetres, machine.MachineInertia.KilogramSquareMetres / machine.GearRatio);

        // Which side drives the gear changes where x = 0; with x > 0 the motor does.
        var motorDrives = behindGear > 0 ? torque_Nm > motor * (-load / behindGear) : load > 0;
        var transmission = Transmission(motorDrives ? 1 : -1);
        return (torque_Nm - (load * transmission)) / (motor + (behindGear * transmission));
    }

    /// <summary>Torque at the motor's shaft that breaks the machine away.</summary>
    internal double Breakaway_Nm() => machine.BreakawayAtMotor.NewtonMetres;

    private double Load_Nm(double speed_radPerS) => machine.Load.At(ShaftSpeed.FromRadiansPerSecond(speed_radPerS / machine.GearRatio)).NewtonMetres;

    private double Transmission(double x) =>
        (x >= 0 ? 1 / machine.GearEfficiency.Ratio : machine.GearEfficiencyBack.Ratio) / machine.GearRatio;
}
