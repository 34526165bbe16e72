using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Dynamics;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Rehearsal;

/// <summary>From a surveyed set to what the time-domain engine simulates.</summary>
public static class RehearsalSystem
{
    // What the engine takes too where nothing is known: 1 % of the drive's base impedance.
    private const double UnknownSource = 0.01;
    private const double BrakeOverRated = 2;

    /// <summary>Supply, drive, motor and machine of a job; null where no circuit fits the plate, or load or inertia of the machine are not known.</summary>
    /// <remarks>Several equal motors, each with such a machine, are taken as one of as many times the admittance, inertia and load.</remarks>
    public static DriveSystem? Of(JobContext context)
    {
        if (context.Circuit is not { } circuit || context.Machine is not { Machine: { } machine, InertiaIsKnown: true })
        {
            return null;
        }

        var count = context.MotorCount;
        return new DriveSystem
        {
            Motor = Parallel(circuit, count),
            Machine = machine.Times(count),
            Brake = BrakeOf(context),
            Drive = context.Rating,
            SupplyVoltage = context.Job.Supply.Voltage.Value,
            SupplyFrequency = context.Job.Supply.Frequency.Value,
            SupplyReactance = SourceReactance(context.Job, context.Rating),
            SupplyEarthed = !string.Equals(context.Job.Supply.Earthing?.Value, "IT", StringComparison.Ordinal),
            BrakingResistor = context.Rating.LowestBrakingResistance is null ? null : context.Job.Drive.BrakingResistor?.Resistance.Value,
        };
    }

    /// <summary>What the motor of a job has beyond the plain model: the second cage of its circuit, where its figures of starting tell of one, and iron that saturates.</summary>
    /// <remarks>No plate tells how much of the magnetizing current the iron takes; 0 to 30 % are usual (docs/calculations/motor-ensemble.md), and the middle of that is taken; common practice, no source.</remarks>
    public static PlantDetail UsualDetail { get; } = new() { IronShare = Fraction.FromPercent(15) };

    /// <summary>What is missing for <see cref="Of"/>, in words; null where nothing is.</summary>
    public static string? Missing(JobContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Circuit is null ? JobCheck.NoCircuit(context)
            : context.Machine.Missing ?? (context.Machine.InertiaIsKnown ? null : "the machine's inertia (machine.inertia)");
    }

    /// <summary>A brake of twice the motors' rated torque, common practice, no source; null where none is fitted. A hoist has one unless it is said to have none.</summary>
    private static Torque? BrakeOf(JobContext context) => (context.Job.Motor.Brake?.Value ?? context.Job.Machine.Load.Value == LoadKind.Hoisting) && context.Nameplate is { } plate
        ? Torque.FromNewtonMetres(BrakeOverRated * context.MotorCount * plate.RatedTorque.NewtonMetres)
        : null;

    /// <summary>The motor alone, as it turns before its machine is coupled.</summary>
    public static DrivenMachine Uncoupled(DrivenMachine machine) => new()
    {
        Load = new LoadCurve.Constant(default),
        MachineInertia = default,
        MotorInertia = machine.MotorInertia,
    };

    /// <summary>Reactance of source and line reactor, each phase; null where the job does not tell the source.</summary>
    /// <remarks>A line reactor in per cent counts on the drive's base impedance U/(√3 I).</remarks>
    private static Reactance? SourceReactance(Job job, DriveRating rating)
    {
        var supply = job.Supply;
        var voltage = supply.Voltage.Value.Volts;
        var source = SupplySource.Reactance_ohm(supply);
        var baseOhms = voltage / (Math.Sqrt(3) * rating.Overloads[0].Current.Amperes);
        double? reactor = supply switch
        {
            { LineReactorInductance: { } inductance } => inductance.Value.ReactanceAt(supply.Frequency.Value).Ohms,
            { LineReactorFraction: { } fraction } => fraction.Value.Ratio * baseOhms,
            _ => null,
        };
        return source is null && reactor is null ? null : Reactance.FromOhms((source ?? (UnknownSource * baseOhms)) + (reactor ?? 0));
    }

    internal static EquivalentCircuit Parallel(EquivalentCircuit one, int count) => count == 1 ? one : one with
    {
        StatorResistance = Resistance.FromOhms(one.StatorResistance.Ohms / count),
        StatorLeakage = Reactance.FromOhms(one.StatorLeakage.Ohms / count),
        Magnetizing = Reactance.FromOhms(one.Magnetizing.Ohms / count),
        RotorLeakage = Reactance.FromOhms(one.RotorLeakage.Ohms / count),
        RotorResistance = Resistance.FromOhms(one.RotorResistance.Ohms / count),
        SecondCage = one.SecondCage is { } second
            ? new RotorCage(Resistance.FromOhms(second.Resistance.Ohms / count), Reactance.FromOhms(second.Leakage.Ohms / count))
            : null,
        CoreLoss = one.CoreLoss is { } core ? Resistance.FromOhms(core.Ohms / count) : null,
        FrictionLoss = ElectricalPower.FromWatts(one.FrictionLoss.Watts * count),
        StrayLoss = ElectricalPower.FromWatts(one.StrayLoss.Watts * count),
        RatedCurrent = one.RatedCurrent is { } rated ? LineCurrent.FromAmperes(rated.Amperes * count) : null,
    };
}
