using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Braking;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>What motor, drive and machine do together: steady running, run-up and stop.</summary>
/// <remarks>Each is computed when it is first asked for. Not for several threads at once.</remarks>
public sealed class Motion
{
    // Beyond these no drive runs a motor, and arithmetic runs away.
    private const double LowestHz = 0.1;
    private const double HighestHz = 1e5;
    internal const double LongestRampS = 1e7;
    internal const double ShortestRampS = 1e-4;
    private const double LeastOhms = 1e-3;
    private const double MostOhms = 1e9;

    private readonly Lazy<CircuitSolution?> steady;
    private readonly Lazy<Acceleration?> acceleration;
    private readonly Lazy<Deceleration?> onLosses;
    private readonly Lazy<Deceleration?> asEquipped;
    private readonly Lazy<BrakingDemand?> braking;
    private readonly Lazy<Regeneration?> regeneration;

    private Motion(Job job, DriveRating rating, MotorOnDrive motor, MachineReading reading, DrivenMachine machine)
    {
        (Motor, Machine, InertiaIsKnown) = (motor, machine, reading.InertiaIsKnown);
        MaximumFrequency = job.Operation.MaximumFrequency.Value;
        var (loss, lossAssumption) = DriveLosses.WhileBraking(rating);
        var count = Math.Max(1, job.Motor.Count?.Value ?? 1);

        // Of several motors, each with its machine, one is reckoned with: it has its share of what the drive takes.
        DriveLoss = ElectricalPower.FromWatts(loss.Watts / count);
        Assumptions = InertiaIsKnown ? [lossAssumption] : [];
        steady = new(() => SteadySpeed.At(machine, motor.Circuit, motor.Characteristic, MaximumFrequency));
        acceleration = new(() => InertiaIsKnown ? Acceleration.Of(machine, motor, MaximumFrequency) : null);
        onLosses = new(() => Slowest(driven => Deceleration.OnLosses(driven, motor, MaximumFrequency, DriveLoss)));
        var resistor = job.Drive.BrakingResistor?.Resistance.Value is { Ohms: > LeastOhms and < MostOhms } ohms && rating.LowestBrakingResistance is not null ? ohms : (Resistance?)null;
        asEquipped = new(() => resistor is { } fitted
            ? Slowest(driven => Deceleration.OnResistor(driven, motor, MaximumFrequency, DriveLoss, rating.ChopperLevel, Resistance.FromOhms(count * fitted.Ohms)))
            : onLosses.Value);
        var asked = job.Operation.Deceleration?.Value is { Seconds: > ShortestRampS and < LongestRampS } time ? time : (Duration?)null;
        braking = new(() => asked is { } stop && InertiaIsKnown
            ? Ways.Select(driven => BrakingDemand.Of(driven, motor, MaximumFrequency, stop, DriveLoss)).MaxBy(demand => demand?.Peak.Watts)?.Times(count)
            : null);
        regeneration = new(() => Regeneration.Of(Ways, motor, MaximumFrequency, DriveLoss));
    }

    /// <summary>The motor at the drive's current limit.</summary>
    public MotorOnDrive Motor { get; }

    /// <summary>The machine.</summary>
    public DrivenMachine Machine { get; }

    /// <summary>The machine as it is stopped: one way, and a hoist lowering besides, which is the harder.</summary>
    public IReadOnlyList<DrivenMachine> Ways => Machine.Load is LoadCurve.Hoisting ? [Machine, Machine.Reversed] : [Machine];

    /// <summary>Whether ramps can be told.</summary>
    public bool InertiaIsKnown { get; }

    /// <summary>Highest output frequency of the job.</summary>
    public ElectricalFrequency MaximumFrequency { get; }

    /// <summary>What the drive takes from its bus while the motor brakes; of several motors, the share of one.</summary>
    public ElectricalPower DriveLoss { get; }

    /// <summary>What was taken because nobody said it.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; }

    /// <summary>Steady state at the highest frequency; null where the motor does not carry the machine there.</summary>
    public CircuitSolution? Steady => steady.Value;

    /// <summary>Run-up at the current limit; null where the machine's inertia is not known.</summary>
    public Acceleration? Acceleration => acceleration.Value;

    /// <summary>Stop on the losses alone; null as before.</summary>
    public Deceleration? DecelerationOnLosses => onLosses.Value;

    /// <summary>Stop with the resistor that the job names, if it names one; null as before.</summary>
    public Deceleration? DecelerationAsEquipped => asEquipped.Value;

    /// <summary>What the stop asked for brings to the bus, of all motors together; null where none is asked for, or as before.</summary>
    public BrakingDemand? Braking => braking.Value;

    /// <summary>The most that comes back to the bus in steady running; null where nothing does.</summary>
    public Regeneration? Regeneration => regeneration.Value;

    /// <summary>Speed of the motor's shaft at an output frequency with its load; where the motor does not carry it there, with the slip speed of its plate.</summary>
    public ShaftSpeed SpeedAt(ElectricalFrequency frequency)
    {
        if (SteadySpeed.At(Machine, Motor.Circuit, Motor.Characteristic, frequency) is { } steady)
        {
            return steady.Speed;
        }

        var circuit = Motor.Circuit;
        var rated = circuit.RatedFrequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond;
        var slipSpeed = rated - (circuit.RatedSpeed?.RadiansPerSecond ?? rated);
        var synchronous = frequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond;
        return ShaftSpeed.FromRadiansPerSecond(Math.Max(synchronous - slipSpeed, synchronous / 2));
    }

    private Deceleration? Slowest(Func<DrivenMachine, Deceleration> stop) => !InertiaIsKnown ? null : Ways.Select(stop).MaxBy(answer => answer switch
    {
        Deceleration.GetsAway => double.PositiveInfinity,
        Deceleration.Stops stops => stops.ShortestRamp.Seconds,
        Deceleration.NeverRan => double.NegativeInfinity,
        _ => throw new System.Diagnostics.UnreachableException(),
    });

    /// <summary>What can be told of a job; null without a circuit or a load.</summary>
    internal static Motion? Of(Job job, DriveRating rating, Reckoning reckoning) =>
        reckoning.OnDrive is { } motor && reckoning.Machine.Machine is { } machine && job.Operation.MaximumFrequency.Value.Hertz is > LowestHz and < HighestHz
        && machine.TotalInertia.KilogramSquareMetres > 0 && motor.CurrentLimit.Amperes > 0
            ? new Motion(job, rating, motor, reckoning.Machine, machine)
            : null;
}
