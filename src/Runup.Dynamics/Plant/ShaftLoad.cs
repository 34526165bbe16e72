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

    internal ShaftLoad(DrivenMachine machine, EquivalentCircuit motor)
    {
        MotorInertia = machine.MotorInertia.KilogramSquareMetres;
        InertiaBehindGear = machine.MachineInertia.KilogramSquareMetres / (machine.GearRatio * machine.GearRatio);
        MotorDrives = 1 / machine.GearEfficiency.Ratio;
        MachineDrives = machine.GearEfficiencyBack.Ratio;
        var friction = FrictionLaw.Of(motor);
        BearingsNm = friction.Bearings.NewtonMetres;
        WindagePerSquare = friction.Windage(ShaftSpeed.FromRadiansPerSecond(1)).NewtonMetres;
        var highestRadPerS = 3 * motor.RatedFrequency.SynchronousSpeed(motor.Poles).RadiansPerSecond;
        Forward = LoadBranch.Through(Sample(machine, highestRadPerS), highestRadPerS);
        Backward = LoadBranch.Through(Sample(machine, -highestRadPerS), -highestRadPerS);
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

    /// <summary>One over the least inertia that the motor's shaft can feel, in 1/(kg·m²).</summary>
    internal double PerLeastInertia => 1 / (MotorInertia + (InertiaBehindGear * Math.Min(MotorDrives, MachineDrives)));

    // The first sample stands just beside zero, where the direction of motion is known and the torque is not yet that of rest.
    private static List<double> Sample(DrivenMachine machine, double highestRadPerS) =>
        [.. Enumerable.Range(0, Samples).Select(i =>
            machine.Load.At(machine.MachineSpeed(ShaftSpeed.FromRadiansPerSecond(highestRadPerS * Math.Max(i / (Samples - 1.0), NearlyZero)))).NewtonMetres / machine.GearRatio)];
}
