using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics.Plant;

/// <summary>What turns with the motor's shaft and opposes it, in plain numbers: rotor, driven machine behind its gear, the motor's own friction.</summary>
/// <remarks>At rest the shaft is held between the torques at which the machine sets off, widened by the motor's bearings; once it moves, only the load curve counts.</remarks>
internal sealed class ShaftLoad
{
    private const int Samples = 1025;
    private const double NearlyZero = 1e-9;

    private readonly DrivenMachine machine;
    private readonly double highestRadPerS;

    /// <summary>The load of a motor's shaft.</summary>
    /// <param name="machine">The driven machine.</param>
    /// <param name="motor">The motor.</param>
    /// <param name="neighbour">Another that may have the same machine, whose curve is then not sampled anew.</param>
    internal ShaftLoad(DrivenMachine machine, EquivalentCircuit motor, ShaftLoad? neighbour = null)
    {
        this.machine = machine;
        MotorInertia = machine.MotorInertia.KilogramSquareMetres;
        InertiaBehindGear = BehindGear(machine);
        MotorDrives = 1 / machine.GearEfficiency.Ratio;
        MachineDrives = machine.GearEfficiencyBack.Ratio;
        var friction = FrictionLaw.Of(motor);
        BearingsNm = friction.Bearings.NewtonMetres;
        WindagePerSquare = friction.Windage(ShaftSpeed.FromRadiansPerSecond(1)).NewtonMetres;
        highestRadPerS = 3 * motor.RatedFrequency.SynchronousSpeed(motor.Poles).RadiansPerSecond;
        (Forward, Backward) = neighbour?.machine == machine && neighbour.highestRadPerS == highestRadPerS
            ? (neighbour.Forward, neighbour.Backward)
            : (LoadBranch.Through(Sample(machine, highestRadPerS), highestRadPerS), LoadBranch.Through(Sample(machine, -highestRadPerS), -highestRadPerS));
        var (lowest, highest) = machine.HeldBetween;
        (HoldLowestNm, HoldHighestNm) = (lowest.NewtonMetres - BearingsNm, highest.NewtonMetres + BearingsNm);
    }

    /// <summary>Inertia of the rotor, in kg·m².</summary>
    internal double MotorInertia { get; }

    /// <summary>Inertia of the machine over the square of the gear ratio, without the gear's losses, in kg·m².</summary>
    internal double InertiaBehindGear { get; }

    /// <summary>What the motor's shaft gives for one at the gear's other side while the motor drives: 1/η.</summary>
    internal double MotorDrives { get; }

    /// <summary>What the motor's shaft receives for one at the gear's other side while the machine drives: η_back.</summary>
    internal double MachineDrives { get; }

    internal double BearingsNm { get; }

    internal double WindagePerSquare { get; }

    /// <summary>Torque of the machine over the gear ratio, without the gear's losses, during forward motion.</summary>
    internal LoadBranch Forward { get; }

    /// <summary>The same during backward motion, friction with a negative sign.</summary>
    internal LoadBranch Backward { get; }

    internal double HoldLowestNm { get; }

    internal double HoldHighestNm { get; }

    /// <summary>The least inertia that the motor's shaft can feel, in kg·m².</summary>
    internal static double LeastInertia(DrivenMachine machine) => machine.MotorInertia.KilogramSquareMetres
        + (BehindGear(machine) * Math.Min(1 / machine.GearEfficiency.Ratio, machine.GearEfficiencyBack.Ratio));

    private static double BehindGear(DrivenMachine machine) => machine.MachineInertia.KilogramSquareMetres / (machine.GearRatio * machine.GearRatio);

    // The first sample stands just beside zero, where the direction of motion is known and the torque is not yet that of rest.
    private static List<double> Sample(DrivenMachine machine, double highestRadPerS) =>
        [.. Enumerable.Range(0, Samples).Select(i =>
            machine.Load.At(machine.MachineSpeed(ShaftSpeed.FromRadiansPerSecond(highestRadPerS * Math.Max(i / (Samples - 1.0), NearlyZero)))).NewtonMetres / machine.GearRatio)];
}
