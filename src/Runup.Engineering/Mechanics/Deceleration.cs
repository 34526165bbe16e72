using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Mechanics;

/// <summary>How fast a motor on its drive brings a machine to a stop, when the bus can take only so much.</summary>
/// <remarks>
/// <para>
/// t = ∫ dω / |α(ω)|, α(ω) the deceleration (rad/s²) under the load's torque, which helps, and the largest braking torque at which the motor feeds back no more than the drive's own
/// losses take and, with a resistor on the chopper, U_chop²/R (W) besides. Midpoint rule, 256 steps.
/// </para>
/// <para>Validity: as <see cref="Acceleration"/>; from the steady speed at an output frequency down to twice the speed of the motor's rated slip, below which the last
/// deceleration is kept (the output frequency is about to reach zero).</para>
/// <para>
/// Assumptions: as <see cref="MotorOnDrive"/>; the bus stays at the level where the drive stretches the ramp, so that its capacitors take nothing more; the flux is not raised
/// to waste power.
/// </para>
/// </remarks>
[Source("common-practice", "equation of motion, integrated over speed; power balance of the bus")]
public abstract record Deceleration
{
    private const int Steps = 256;

    private Deceleration()
    {
    }

    /// <summary>The machine stops.</summary>
    /// <param name="Shortest">Time when the drive stretches the ramp as needed.</param>
    /// <param name="ShortestRamp">Time of the steepest ramp of constant rate, from the output frequency to zero, that needs no stretching.</param>
    public sealed record Stops(Duration Shortest, Duration ShortestRamp) : Deceleration;

    /// <summary>The load drives on harder than drive and motor can brake.</summary>
    /// <param name="At">Speed of the motor at which it gets away.</param>
    /// <param name="Braking">Largest braking torque there.</param>
    public sealed record GetsAway(ShaftSpeed At, Torque Braking) : Deceleration;

    /// <summary>The motor does not carry the machine at that frequency in the first place.</summary>
    public sealed record NeverRan : Deceleration;

    /// <summary>Without a resistor: the losses of motor and drive take all.</summary>
    public static Deceleration OnLosses(DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency, ElectricalPower driveLoss) =>
        Of(machine, motor, frequency, driveLoss);

    /// <summary>With a resistor on the chopper; its heating is another matter.</summary>
    public static Deceleration OnResistor(
        DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency, ElectricalPower driveLoss, DcVoltage chopperLevel, Resistance resistor) =>
        Of(machine, motor, frequency, ElectricalPower.FromWatts(driveLoss.Watts + (chopperLevel.Volts * chopperLevel.Volts / resistor.Ohms)));

    private static Deceleration Of(DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency, ElectricalPower absorbed)
    {
        if (SteadySpeed.At(machine, motor.Circuit, motor.Characteristic, frequency) is not { } steady)
        {
            return new NeverRan();
        }

        var train = new DriveTrain(machine);
        var highest_radPerS = steady.Speed.RadiansPerSecond;
        var lowest_radPerS = Math.Min(highest_radPerS / 2, 2 * motor.RatedSlipSpeed_radPerS);
        var step_radPerS = (highest_radPerS - lowest_radPerS) / Steps;
        double Rate(double speed_radPerS) =>
            -train.Acceleration_radPerS2(speed_radPerS, LargestBraking(motor, speed_radPerS, absorbed).NewtonMetres);

        // The ends count for the steepest ramp, the midpoints for the time.
        var last = Rate(lowest_radPerS);
        var (time_s, smallest) = (lowest_radPerS / last, Math.Min(last, Rate(highest_radPerS)));
        var slowest_radPerS = smallest == last ? lowest_radPerS : highest_radPerS;
        for (var step = 0; step < Steps && smallest > 0; step++)
        {
            var speed_radPerS = highest_radPerS - ((step + 0.5) * step_radPerS);
            var rate = Rate(speed_radPerS);
            time_s += step_radPerS / rate;
            (smallest, slowest_radPerS) = rate < smallest ? (rate, speed_radPerS) : (smallest, slowest_radPerS);
        }

        var synchronous_radPerS = frequency.SynchronousSpeed(motor.Circuit.Poles).RadiansPerSecond;
        return smallest > 0
            ? new Stops(Duration.FromSeconds(time_s), Duration.FromSeconds(synchronous_radPerS / smallest))
            : new GetsAway(ShaftSpeed.FromRadiansPerSecond(slowest_radPerS), LargestBraking(motor, slowest_radPerS, absorbed));
    }

    private static Torque LargestBraking(MotorOnDrive motor, double speed_radPerS, ElectricalPower absorbed) =>
        motor.LargestBrakingTorque(ShaftSpeed.FromRadiansPerSecond(speed_radPerS), absorbed).Torque;
}
