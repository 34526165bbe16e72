using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>How fast a motor on its drive brings a machine from standstill to the speed of an output frequency.</summary>
/// <remarks>
/// <para>
/// t = ∫ dω / α(ω), α(ω) the acceleration (rad/s²) under the largest torque that the motor has at ω (rad/s) at the drive's current limit, less the load's torque through the gear,
/// over the inertia of rotor and machine. Midpoint rule, 256 steps. A ramp of constant rate stays within the limit everywhere if it is no steeper than the smallest
/// α(ω): t_ramp = ω_s / min α, ω_s the synchronous speed at the output frequency.
/// </para>
/// <para>Validity: run-up long against the motor's electrical time constants (0.1 s and more); rigid shaft.</para>
/// <para>Assumptions: as <see cref="MotorOnDrive"/>; the drive finds the best frequency at every speed; the frequency leads the speed by the slip at the limit until the end.</para>
/// </remarks>
[Source("common-practice", "equation of motion, integrated over speed")]
public abstract record Acceleration
{
    private const int Steps = 256;

    private Acceleration()
    {
    }

    /// <summary>The machine comes up.</summary>
    /// <param name="Shortest">Time along the current limit.</param>
    /// <param name="ShortestRamp">Time of the steepest ramp of constant rate, from zero to the output frequency, that never meets the current limit.</param>
    /// <param name="Speed">Speed of the motor at the end.</param>
    public sealed record Reached(Duration Shortest, Duration ShortestRamp, ShaftSpeed Speed) : Acceleration;

    /// <summary>The machine does not come up.</summary>
    /// <param name="At">Speed of the motor at which it stays.</param>
    /// <param name="Available">Largest torque of the motor there.</param>
    /// <param name="Needed">Torque that the machine asks for there, at the motor's shaft; at standstill the breakaway torque.</param>
    public sealed record Stalls(ShaftSpeed At, Torque Available, Torque Needed) : Acceleration;

    /// <summary>From standstill to an output frequency.</summary>
    public static Acceleration Of(DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency)
    {
        var train = new DriveTrain(machine);
        if (!(Available_Nm(motor, 0) > train.Breakaway_Nm()))
        {
            return StallAt(motor, 0, train.Breakaway_Nm());
        }

        var synchronous_radPerS = frequency.SynchronousSpeed(motor.Circuit.Poles).RadiansPerSecond;
        var end_radPerS = SteadySpeed.At(machine, motor.Circuit, motor.Characteristic, frequency)?.Speed.RadiansPerSecond;
        var step_radPerS = (end_radPerS ?? synchronous_radPerS) / Steps;
        var (time_s, smallest) = (0.0, double.PositiveInfinity);
        for (var step = 0; step < Steps; step++)
        {
            var speed_radPerS = (step + 0.5) * step_radPerS;
            var acceleration = train.Acceleration_radPerS2(speed_radPerS, Available_Nm(motor, speed_radPerS));
            if (!(acceleration > 0))
            {
                return StallAt(motor, speed_radPerS, train.Torque_Nm(speed_radPerS, 0));
            }

            smallest = Math.Min(smallest, acceleration);
            time_s += step_radPerS / acceleration;
        }

        // The steepest ramp is decided at one speed, often the last, which no midpoint meets.
        smallest = Math.Min(smallest, train.Acceleration_radPerS2(step_radPerS * Steps, Available_Nm(motor, step_radPerS * Steps)));
        if (!(smallest > 0))
        {
            return StallAt(motor, step_radPerS * Steps, train.Torque_Nm(step_radPerS * Steps, 0));
        }

        // Without a steady state at this frequency the motor is carried past its peak there, whatever the way up looked like.
        return end_radPerS is { } end
            ? new Reached(Duration.FromSeconds(time_s), Duration.FromSeconds(synchronous_radPerS / smallest), ShaftSpeed.FromRadiansPerSecond(end))
            : StallAt(motor, synchronous_radPerS, train.Torque_Nm(synchronous_radPerS, 0));
    }

    private static double Available_Nm(MotorOnDrive motor, double speed_radPerS) =>
        motor.LargestTorque(ShaftSpeed.FromRadiansPerSecond(speed_radPerS)).Torque.NewtonMetres;

    private static Stalls StallAt(MotorOnDrive motor, double speed_radPerS, double needed_Nm) => new(
        ShaftSpeed.FromRadiansPerSecond(speed_radPerS),
        Torque.FromNewtonMetres(Available_Nm(motor, speed_radPerS)),
        Torque.FromNewtonMetres(needed_Nm));
}
