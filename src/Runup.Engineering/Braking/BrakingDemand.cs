using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Quantities;

namespace Runup.Engineering.Braking;

/// <summary>What a stop in a given time brings to the DC bus.</summary>
/// <remarks>
/// <para>
/// At constant deceleration α = ω₀/t the motor's shaft receives T_b(ω) = −(J_motor (−α) + the machine's share through the gear); where that is negative the motor still drives and nothing
/// comes back. At the bus arrives P(ω) = −P_motor(ω, −T_b) − P_drive, P_motor (W) the motor's input, its losses by kind taken from its circuit at the drive's voltage
/// characteristic. E = ∫ max(0, P) dt, the peak is the largest P, the mean is E/t. Beside them what inertia alone would bring: J ω₀²/2 and J α ω₀ without load and losses.
/// Midpoint rule, 256 steps.
/// </para>
/// <para>Validity: constant rate from the steady speed at an output frequency to standstill; α (rad/s²), ω₀ (rad/s), t (s), J inertia at the motor's shaft (kg·m²).</para>
/// <para>
/// Assumptions: the drive loss is the same at every speed; below twice the speed of the motor's rated slip nothing comes back, since the output frequency is then about to reach zero.
/// </para>
/// </remarks>
[Source("common-practice", "power balance of a stop, integrated over the ramp")]
public sealed record BrakingDemand
{
    private const int Steps = 256;

    private BrakingDemand()
    {
    }

    /// <summary>Energy that comes to the bus in one stop.</summary>
    public required Energy Energy { get; init; }

    /// <summary>The largest power that comes to the bus.</summary>
    public required ElectricalPower Peak { get; init; }

    /// <summary>Energy over the time of the stop.</summary>
    public required ElectricalPower Mean { get; init; }

    /// <summary>Kinetic energy at the motor's shaft: J ω₀²/2.</summary>
    public required Energy KineticEnergy { get; init; }

    /// <summary>Power of inertia alone at the beginning, without load and losses: J α ω₀. Hoists and flywheels are sized by it.</summary>
    public required ElectricalPower InertiaPeak { get; init; }

    /// <summary>The largest braking torque at the motor's shaft.</summary>
    public required Torque LargestBrakingTorque { get; init; }

    /// <summary>Whether the motor has that torque at every speed of the stop.</summary>
    public required bool WithinMotor { get; init; }

    /// <summary>Speed of the motor at the beginning.</summary>
    public required ShaftSpeed From { get; init; }

    /// <summary>Time of the stop.</summary>
    public required Duration Time { get; init; }

    /// <summary>A stop from the steady speed at an output frequency.</summary>
    /// <returns>Null where the motor does not carry the machine at that frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is zero.</exception>
    public static BrakingDemand? Of(DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency, Duration time, ElectricalPower driveLoss)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time.Seconds, nameof(time));
        return SteadySpeed.At(machine, motor.Circuit, motor.Characteristic, frequency) is { } steady
            ? Over(machine, motor, steady.Speed, time, driveLoss)
            : null;
    }

    /// <summary>The same stop of so many equal motors with a machine each: energies and powers add up, torques are those of one.</summary>
    public BrakingDemand Times(int count) => this with
    {
        Energy = Energy.FromJoules(count * Energy.Joules),
        Peak = ElectricalPower.FromWatts(count * Peak.Watts),
        Mean = ElectricalPower.FromWatts(count * Mean.Watts),
        KineticEnergy = Energy.FromJoules(count * KineticEnergy.Joules),
        InertiaPeak = ElectricalPower.FromWatts(count * InertiaPeak.Watts),
    };

    private static BrakingDemand Over(DrivenMachine machine, MotorOnDrive motor, ShaftSpeed from, Duration time, ElectricalPower driveLoss)
    {
        var train = new DriveTrain(machine);
        var rate_radPerS2 = from.RadiansPerSecond / time.Seconds;
        var (energy_J, peak_W, largest_Nm, within) = (0.0, 0.0, 0.0, true);
        for (var step = 0; step < Steps; step++)
        {
            var speed_radPerS = from.RadiansPerSecond * (step + 0.5) / Steps;
            var power_W = Bus(train, motor, speed_radPerS, rate_radPerS2, driveLoss, ref largest_Nm, ref within);
            peak_W = Math.Max(peak_W, power_W);
            energy_J += power_W * time.Seconds / Steps;
        }

        peak_W = Math.Max(peak_W, Bus(train, motor, from.RadiansPerSecond, rate_radPerS2, driveLoss, ref largest_Nm, ref within));
        var inertia = machine.TotalInertia.KilogramSquareMetres;
        return new BrakingDemand
        {
            Energy = Energy.FromJoules(energy_J),
            Peak = ElectricalPower.FromWatts(peak_W),
            Mean = ElectricalPower.FromWatts(energy_J / time.Seconds),
            KineticEnergy = Energy.FromJoules(inertia * from.RadiansPerSecond * from.RadiansPerSecond / 2),
            InertiaPeak = ElectricalPower.FromWatts(inertia * rate_radPerS2 * from.RadiansPerSecond),
            LargestBrakingTorque = Torque.FromNewtonMetres(largest_Nm),
            WithinMotor = within,
            From = from,
            Time = time,
        };
    }

    private static double Bus(
        in DriveTrain train, MotorOnDrive motor, double speed_radPerS, double rate_radPerS2, ElectricalPower driveLoss, ref double largest_Nm, ref bool within)
    {
        var torque_Nm = train.Torque_Nm(speed_radPerS, -rate_radPerS2);
        if (torque_Nm >= 0 || speed_radPerS < 2 * motor.RatedSlipSpeed_radPerS)
        {
            return 0;
        }

        largest_Nm = Math.Max(largest_Nm, -torque_Nm);
        if (motor.AtSpeedAndTorque(speed_radPerS, torque_Nm) is { } flow)
        {
            return Math.Max(0, -flow.Input_W - driveLoss.Watts);
        }

        // Beyond the motor's peak the stop is not had; the power is then stated as if it were, without the motor's losses.
        within = false;
        return Math.Max(0, (-torque_Nm * speed_radPerS) - driveLoss.Watts);
    }
}
