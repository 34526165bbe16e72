using Runup.Commissioning.Diagnosis;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>What follows from a plate in its job: circuit, boost, limit, run-up and stop, each computed once when it is first asked for.</summary>
/// <remarks>Not for several threads at once.</remarks>
public sealed class Reckoning
{
    private const double UsualCurrentLimit = 1.5;

    private readonly Job job;
    private readonly DriveConditions conditions;
    private readonly Lazy<CircuitFit?> fit;
    private readonly Lazy<KnownMotor?> known;
    private readonly Lazy<MachineReading> machine;
    private readonly Lazy<BoostChoice?> boost;
    private readonly Lazy<Motion?> motion;

    internal Reckoning(Job job, DriveRating rating, DriveConditions conditions, Nameplate? plate)
    {
        (this.job, this.conditions, Nameplate) = (job, conditions, plate);
        Output = IntendedOutput.Of(job, plate);
        fit = new(() => plate is not null && job.Motor.Kind.Value == MotorKind.Induction ? CircuitFit.Of(plate) : null);
        known = new(() => Circuit is not null && plate is not null ? KnownMotor.Of(job.Motor, plate) : null);
        machine = new(() => MachineReading.Of(job, plate));
        boost = new(() => Circuit is { } circuit && plate is not null
            ? BoostChoice.For(circuit, Output.Characteristic(VoltageShape.Linear, default, plate.Voltage), plate.Current, BreakawayAtMotor, Known?.Now, BearableAtRest)
            : null);
        motion = new(() => Motion.Of(job, rating, this));
    }

    /// <summary>The plate; null where its figures are not those of something that turns.</summary>
    public Nameplate? Nameplate { get; }

    /// <summary>To which voltage and frequency the motor is led.</summary>
    public IntendedOutput Output { get; }

    /// <summary>The circuit's fit; null for a motor of another kind or an unusable plate.</summary>
    public CircuitFit? Fit => fit.Value;

    /// <summary>The motor's circuit; null where none fits.</summary>
    public EquivalentCircuit? Circuit => (Fit as CircuitFit.Fitted)?.Circuit;

    /// <summary>The motors that the plate may stand for; null without a circuit.</summary>
    public KnownMotor? Known => known.Value;

    /// <summary>The driven machine.</summary>
    public MachineReading Machine => machine.Value;

    /// <summary>Voltage added at standstill; null without a circuit.</summary>
    public BoostChoice? Boost => boost.Value;

    /// <summary>Run-up and stop; null where motor or machine are not known well enough.</summary>
    public Motion? Motion => motion.Value;

    /// <summary>Motors on the drive.</summary>
    public int MotorCount => Math.Max(1, job.Motor.Count?.Value ?? 1);

    /// <summary>Rated current of all motors.</summary>
    public LineCurrent RatedCurrent => LineCurrent.FromAmperes(MotorCount * (Nameplate?.Current ?? job.Motor.Plate.Current.Value).Amperes);

    /// <summary>Rated output of all motors.</summary>
    public ShaftPower RatedOutput => ShaftPower.FromWatts(MotorCount * (Nameplate?.Output ?? job.Motor.Plate.Output.Value).Watts);

    /// <summary>Torque at the motor's shaft to set the machine in motion: the breakaway torque, at least what the load asks for from standstill; null where neither is known.</summary>
    public Torque? BreakawayAtMotor
    {
        get
        {
            if (Machine.Machine is not { } known)
            {
                return null;
            }

            var needed = known.BreakawayAtMotor;
            return needed.NewtonMetres > 1e-3 * (Nameplate?.RatedTorque.NewtonMetres ?? 1) ? needed : null;
        }
    }

    /// <summary>The current at which a start of one motor hangs: half as much again as its rated current, and no more than the drive's overload current.</summary>
    public LineCurrent BearableAtRest => LineCurrent.FromAmperes(Math.Min(conditions.Overload.Amperes, UsualCurrentLimit * RatedCurrent.Amperes) / MotorCount);

    /// <summary>The current limit that the plan sets: the drive's overload current, at most 150 % of the motors' rated current unless breaking away needs more.</summary>
    public LineCurrent CurrentLimit
    {
        get
        {
            var needed_A = 1.1 * MotorCount * (Boost?.Current?.Amperes ?? 0);
            return LineCurrent.FromAmperes(Math.Min(conditions.Overload.Amperes, Math.Max(UsualCurrentLimit * RatedCurrent.Amperes, needed_A)));
        }
    }

    /// <summary>One motor on the drive at the current limit; null without a circuit.</summary>
    public MotorOnDrive? OnDrive => Circuit is { } circuit && Nameplate is { } plate && Boost is { } choice
        ? new MotorOnDrive(circuit, Output.Characteristic(VoltageShape.Linear, choice.Boost, plate.Voltage), LineCurrent.FromAmperes(CurrentLimit.Amperes / MotorCount))
        : null;

    /// <summary>What was taken because nobody said it.</summary>
    public IReadOnlyList<Assumption> Assumptions => [.. PlateAssumptions.Of(Fit), .. Machine.Assumptions, .. Motion?.Assumptions ?? []];
}
