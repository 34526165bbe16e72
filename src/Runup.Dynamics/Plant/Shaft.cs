using System.Runtime.CompilerServices;

namespace Runup.Dynamics.Plant;

/// <summary>The turning mass at the motor's shaft: the one equation of motion, whether the inverter feeds the motor or not.</summary>
/// <remarks>
/// With T the driving torque less the motor's friction and L = T_load/i the load at the gear's other side: x = L + J_machine/i² · α; T = J_motor α + x/η while the motor drives the gear
/// (x with the motion), T = J_motor α + x η_back while the machine does. Which of them it is shows in the sign of T · J_machine/i² + L · J_motor; α is the same on both sides of the change.
/// A closed brake acts on the motor's side, as friction.
/// </remarks>
internal struct Shaft
{
    private ShaftLoad put;
    private LoadBranch load;
    private double motorInertia;
    private double behindGear;
    private double motorDrives;
    private double machineDrives;
    private double perInertiaMotorDrives;
    private double perInertiaMachineDrives;
    private double ownNm;
    private double windage;
    private int direction;

    internal Shaft(ShaftLoad put)
    {
        this.put = put;
        (motorInertia, behindGear, motorDrives, machineDrives) = (put.MotorInertia, put.InertiaBehindGear, put.MotorDrives, put.MachineDrives);
    }

    /// <summary>Torque of the mechanical brake while it is closed; zero while it is open.</summary>
    internal double BrakeNm { get; set; }

    internal readonly double HoldLowestNm => put.HoldLowestNm - BrakeNm;

    internal readonly double HoldHighestNm => put.HoldHighestNm + BrakeNm;

    /// <summary>From now on the shaft is held at zero speed.</summary>
    internal void Hold() => perInertiaMotorDrives = perInertiaMachineDrives = 0;

    /// <summary>From now on the shaft moves in a direction: +1 or −1.</summary>
    internal void Release(int towards)
    {
        direction = towards;
        load = towards > 0 ? put.Forward : put.Backward;
        ownNm = towards * (put.BearingsNm + BrakeNm);
        windage = towards * put.WindagePerSquare;
        perInertiaMotorDrives = 1 / (motorInertia + (behindGear * motorDrives));
        perInertiaMachineDrives = 1 / (motorInertia + (behindGear * machineDrives));
    }

    /// <summary>Acceleration under a driving torque, in rad/s².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly double AccelerationRadPerS2(double drivingNm, double speedRadPerS)
    {
        var torqueNm = drivingNm - ownNm - (windage * speedRadPerS * speedRadPerS);
        var loadNm = load.At(speedRadPerS);
        return direction * ((torqueNm * behindGear) + (loadNm * motorInertia)) > 0
            ? perInertiaMotorDrives * (torqueNm - (loadNm * motorDrives))
            : perInertiaMachineDrives * (torqueNm - (loadNm * machineDrives));
    }
}
