using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics.Plant;

/// <summary>One turning mass at the motor's shaft with what opposes it: the driven machine through its gear, and the motor's own friction.</summary>
/// <remarks>
/// The motor's friction loss is split in halves at rated speed, bearings (the same torque at every speed) and windage (torque with the
/// square of speed): common practice, no source. At rest the shaft is held between the torques that the load would have just moving backward and
/// just moving forward, widened by the machine's breakaway torque; once it moves, only the load curve counts.
/// </remarks>
internal sealed class ShaftLoad
{
    private const int Samples = 1025;
    private const double NearlyZero = 1e-9;

    internal ShaftLoad(DrivenMachine machine, EquivalentCircuit motor)
    {
        PerInertia = 1 / machine.TotalInertia.KilogramSquareMetres;
        var synchronousRadPerS = motor.RatedFrequency.SynchronousSpeed(motor.Poles).RadiansPerSecond;
        var (bearingNm, windage) = Friction(motor, synchronousRadPerS);
        var highestRadPerS = 3 * synchronousRadPerS;
        Forward = LoadBranch.Through(Sample(machine, highestRadPerS), highestRadPerS).Plus(bearingNm, windage);
        Backward = LoadBranch.Through(Sample(machine, -highestRadPerS), -highestRadPerS).Plus(-bearingNm, -windage);

        double forwardNm = Forward.At(0), backwardNm = Backward.At(0);
        var middleNm = 0.5 * (forwardNm + backwardNm);
        var breakawayNm = (machine.Breakaway?.NewtonMetres ?? 0) / (machine.GearRatio * machine.GearEfficiency.Ratio);
        HoldHighestNm = Math.Max(Math.Max(forwardNm, backwardNm), middleNm + breakawayNm);
        HoldLowestNm = Math.Min(Math.Min(forwardNm, backwardNm), middleNm - breakawayNm);
    }

    /// <summary>One over the inertia at the motor's shaft, in 1/(kg·m²).</summary>
    internal double PerInertia { get; }

    /// <summary>What opposes forward motion.</summary>
    internal LoadBranch Forward { get; }

    /// <summary>What acts during backward motion, friction with a negative sign.</summary>
    internal LoadBranch Backward { get; }

    internal double HoldLowestNm { get; }

    internal double HoldHighestNm { get; }

    private static (double BearingNm, double WindagePerSquare) Friction(EquivalentCircuit motor, double synchronousRadPerS)
    {
        var ratedRadPerS = motor.RatedSpeed?.RadiansPerSecond ?? synchronousRadPerS;
        var halfNm = 0.5 * motor.FrictionLoss.Watts / ratedRadPerS;
        return (halfNm, halfNm / (ratedRadPerS * ratedRadPerS));
    }

    // The first sample stands just beside zero, where the direction of motion is known and the torque is not yet that of rest.
    private static List<double> Sample(DrivenMachine machine, double highestRadPerS) =>
        [.. Enumerable.Range(0, Samples).Select(i =>
            machine.LoadTorque(ShaftSpeed.FromRadiansPerSecond(highestRadPerS * Math.Max(i / (Samples - 1.0), NearlyZero))).NewtonMetres)];
}
