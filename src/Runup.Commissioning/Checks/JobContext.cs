using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>A job with everything that several checks and the plan need, each computed once when it is first asked for.</summary>
/// <remarks>Not for several threads at once.</remarks>
public sealed class JobContext
{
    private const double UsualCurrentLimit = 1.5;

    private readonly Lazy<CircuitFit?> fit;
    private readonly Lazy<MachineReading> machine;
    private readonly Lazy<BoostChoice?> boost;
    private readonly Lazy<Motion?> motion;

    private JobContext(Job job, DriveRating rating)
    {
        (Job, Rating) = (job, rating);
        Plate = PlateContext.For(job);
        Nameplate = NameplateReading.Of(Plate);
        Conditions = DriveConditions.Of(job, rating);
        Output = IntendedOutput.Of(job);
        fit = new(() => Nameplate is { } plate && Plate.IsInduction ? CircuitFit.Of(plate) : null);
        machine = new(() => MachineReading.Of(job, Nameplate));
        boost = new(() => Circuit is { } circuit && Nameplate is { } plate
            ? BoostChoice.For(circuit, Output.Characteristic(VoltageShape.Linear, default, plate.Voltage), plate.Current, BreakawayAtMotor)
            : null);
        motion = new(() => Motion.Of(this));
    }

    /// <summary>The job as surveyed.</summary>
    public Job Job { get; }

    /// <summary>The drive's size with the job's overrides.</summary>
    public DriveRating Rating { get; }

    /// <summary>The motor's plate with what follows from plate arithmetic alone.</summary>
    public PlateContext Plate { get; }

    /// <summary>The plate as the calculations take it; null where its figures are not those of something that turns.</summary>
    public Nameplate? Nameplate { get; }

    /// <summary>Ambient, altitude, switching and overload, and the current left.</summary>
    public DriveConditions Conditions { get; }

    /// <summary>To which voltage and frequency the motor is led.</summary>
    public IntendedOutput Output { get; }

    /// <summary>Motors on the drive.</summary>
    public int MotorCount => Math.Max(1, Job.Motor.Count?.Value ?? 1);

    /// <summary>The circuit's fit; null for a motor of another kind or an unusable plate.</summary>
    public CircuitFit? Fit => fit.Value;

    /// <summary>The motor's circuit; null where none fits.</summary>
    public EquivalentCircuit? Circuit => (Fit as CircuitFit.Fitted)?.Circuit;

    /// <summary>The driven machine.</summary>
    public MachineReading Machine => machine.Value;

    /// <summary>Voltage added at standstill; null without a circuit.</summary>
    public BoostChoice? Boost => boost.Value;

    /// <summary>Run-up and stop; null where motor or machine are not known well enough.</summary>
    public Motion? Motion => motion.Value;

    /// <summary>Torque at the motor's shaft to set the machine in motion: the breakaway torque, at least what the load asks for from standstill; null where neither is known.</summary>
    public Torque? BreakawayAtMotor
    {
        get
        {
            if (Machine.Machine is not { } known)
            {
                return null;
            }

            var atStandstill = known.Load.At(ShaftSpeed.FromRadiansPerSecond(1e-6)).NewtonMetres;
            var needed = Math.Max(known.Breakaway?.NewtonMetres ?? 0, atStandstill) / (known.GearRatio * known.GearEfficiency.Ratio);
            return needed > 1e-3 * (Nameplate?.RatedTorque.NewtonMetres ?? 1) ? Torque.FromNewtonMetres(needed) : null;
        }
    }

    /// <summary>The current limit that the plan sets: the drive's overload current, at most 150 % of the motors' rated current unless breaking away needs more.</summary>
    public LineCurrent CurrentLimit
    {
        get
        {
            var rated_A = MotorCount * Job.Motor.Plate.Current.Value.Amperes;
            var needed_A = 1.1 * MotorCount * (Boost?.Current?.Amperes ?? 0);
            return LineCurrent.FromAmperes(Math.Min(Conditions.Overload.Amperes, Math.Max(UsualCurrentLimit * rated_A, needed_A)));
        }
    }

    /// <summary>One motor on the drive at the current limit; null without a circuit.</summary>
    public MotorOnDrive? OnDrive => Circuit is { } circuit && Nameplate is { } plate && Boost is { } choice
        ? new MotorOnDrive(circuit, Output.Characteristic(VoltageShape.Linear, choice.Boost, plate.Voltage), LineCurrent.FromAmperes(CurrentLimit.Amperes / MotorCount))
        : null;

    /// <summary>Everything that was taken because nobody said it.</summary>
    public IReadOnlyList<Assumption> Assumptions =>
    [
        .. PlateAssumptions.Of(Fit),
        .. Conditions.Assumptions,
        .. Machine.Assumptions,
        .. Motion?.Assumptions ?? [],
    ];

    /// <summary>The context of a job on a size of a drive.</summary>
    /// <param name="job">The job.</param>
    /// <param name="size">The size's rating from its profile; the job's overrides are laid over it.</param>
    public static JobContext For(Job job, DriveRating size) => new(job, DriveOverrides.Apply(job.Drive, size));
}
