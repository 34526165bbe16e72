using Runup.Dynamics.Control;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>A drive with motor and machine in simulated time, a millisecond at each tick: the one engine of rehearsal and simulated drive.</summary>
/// <remarks>
/// Average-value inverter, mean rectifier current, one turning mass: no switching ripple, no 300 Hz ripple, no torsion. Deterministic;
/// not safe for several threads at once.
/// </remarks>
public sealed class DriveSimulation
{
    /// <summary>Seconds in one tick.</summary>
    public const double TickSeconds = ControlFigures.TickS;

    // Of the undervoltage trip; below it the drive's own supply dies (common practice, no source).
    private const double AliveShare = 0.6;

    private readonly DriveControl<One> control;
    private readonly OutputWatch outputWatch;
    private readonly ThermalStates thermal;
    private DriveSystem system;
    private IDrivePlant<One> plant;
    private double turns;
    private double along;
    private double across;
    private bool diedOfSupply;
    private TuneSequence? tune;
    private double? ratedTorqueNm;
    private long ticks;

    /// <summary>Makes the drive at rest, powered, its bus charged, ready.</summary>
    /// <exception cref="ArgumentException">The system can't be simulated: see <see cref="SystemCheck"/>.</exception>
    public DriveSimulation(DriveSystem system, ControlSettings settings)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(settings);
        SystemCheck.Require(SystemCheck.Of(system, settings), nameof(system));
        this.system = system;
        control = new DriveControl<One>(settings, system.Drive);
        plant = system.Detail is { } detail
            ? new DetailedPlant(system, detail, TickSeconds)
            : Plain(system);
        outputWatch = new OutputWatch(system.Drive);
        thermal = new ThermalStates(system.Motor, system);
        ratedTorqueNm = RatedTorque(settings);
    }

    /// <summary>What came of the last auto-tune; null while one goes on, and where there was none.</summary>
    public AutoTuneOutcome? TuneOutcome { get; private set; }

    /// <summary>An auto-tune goes on.</summary>
    public bool IsTuning => tune is not null;

    /// <summary>The supply is there. Without it the control lives on the bus, until that is too low; when the supply returns the bus is charged again.</summary>
    public bool SupplyPresent
    {
        get => control.SupplyPresent;
        set
        {
            control.SupplyPresent = value;
            if (value && diedOfSupply)
            {
                diedOfSupply = false;
                PowerOn();
            }
        }
    }

    /// <summary>One phase of a three-phase supply is missing.</summary>
    public bool SupplyPhaseLost
    {
        get => plant.SupplyPhaseLost;
        set => plant.SupplyPhaseLost = value;
    }

    /// <summary>What is wrong with the conductors to the motor; null while nothing is. It comes and goes at once, whatever runs.</summary>
    public OutputFault? Fault
    {
        get => (plant as DetailedPlant)?.Fault;
        set
        {
            if (value is not null && plant is DrivePlant<One> plain)
            {
                // One cage and iron in a straight line, as the plain plant has.
                plant = Succeed(new DetailedPlant(system, new PlantDetail { TwoCages = false }, TickSeconds), plain);
            }

            if (plant is DetailedPlant detailed)
            {
                detailed.Fault = value;
                plant = value is null && system.Detail is null ? Succeed(Plain(system), detailed) : detailed;
            }
        }
    }

    /// <summary>What the drive is told now; it stands until changed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not a finite number.</exception>
    public DriveOrder Order
    {
        get;
        set => field = double.IsFinite(value.FrequencyHz)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value.FrequencyHz, "A frequency must be finite.");
    }

    /// <summary>Where and why the simulation broke down; null while it has not. From then on the ticks do nothing but count.</summary>
    public SimulationBreakdown? Breakdown { get; private set; }

    /// <summary>Settings at work.</summary>
    public ControlSettings Settings => control.Settings;

    /// <summary>True while the ramp has arrived at the frequency asked for.</summary>
    public bool AtTarget => control.AtTarget.IsSet(0);

    /// <summary>What the drive would show now.</summary>
    public DriveReadings Readings
    {
        get
        {
            ref readonly var at = ref plant.Reading;
            return new DriveReadings(
                ticks * TickSeconds,
                control.FrequencyHz,
                at.CurrentA,
                at.BusV,
                at.OutputV,
                at.TorqueNm,
                100 * (double)at.TorqueNm / ratedTorqueNm,
                30 / Math.PI * at.SpeedRadPerS,
                IsTuning ? DriveState.Running : control.Of(0).State,
                control.Of(0).Trip,
                control.CurrentLimitActive.IsSet(0),
                control.OvervoltageControlActive.IsSet(0),
                at.ChopperOn.IsSet(0),
                control.MotorThermalPercent,
                control.RideThroughActive.IsSet(0),
                thermal.WindingC,
                thermal.HeatSinkC,
                thermal.ResistorC);
        }
    }

    /// <summary>Takes every tick in so many short steps, for comparison; null lets the plant choose.</summary>
    internal int? ShortStepsOnly
    {
        set
        {
            if (plant is DrivePlant<One> plain)
            {
                plain.ShortStepsOnly = value;
            }
        }
    }

    /// <summary>Largest output current within the last tick, rms of a sine of that amplitude, in A; where the phases differ, of the one that carries most.</summary>
    public double LargestCurrentA => plant.Reading.LargestCurrentA;

    /// <summary>Largest DC bus voltage within the last tick, in V.</summary>
    public double LargestDcBusV => plant.Reading.LargestBusV;

    /// <summary>Changes the settings, at standstill or while running.</summary>
    /// <exception cref="ArgumentException">The settings contradict themselves.</exception>
    public void Apply(ControlSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        SystemCheck.Require(SystemCheck.Of(system, settings), nameof(settings));
        control.Configure(settings);
        ratedTorqueNm = RatedTorque(settings);
    }

    /// <summary>Puts another machine on the motor's shaft, or takes it off.</summary>
    /// <exception cref="InvalidOperationException">The shaft turns or the output is on.</exception>
    /// <exception cref="ArgumentException">The machine can't be simulated.</exception>
    public void Couple(DrivenMachine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        if (control.Of(0).State is DriveState.Running or DriveState.Stopping or DriveState.QuickStopping || !Standstill.At(Readings.SpeedRpm, system.Motor))
        {
            throw new InvalidOperationException("A machine is coupled or uncoupled only at standstill with the output off.");
        }

        var coupled = system with { Machine = machine };
        SystemCheck.Require(SystemCheck.Of(coupled, control.Settings), nameof(machine));
        system = coupled;
        plant.Couple([machine]);
    }

    /// <summary>One millisecond.</summary>
    public void Tick()
    {
        ticks++;
        if (Breakdown is not null)
        {
            return;
        }

        if (plant is DetailedPlant { Fault: not null } faulty)
        {
            Trip(outputWatch.Sample(plant.Reading, faulty, along, across, 2 * Math.PI * turns, control.FrequencyHz, control.Settings));
        }

        var measured = new Measurement<One>(in plant.Reading, thermal.WindingC, thermal.HeatSinkC);
        var command = tune?.Sample(measured) ?? control.Sample(measured, Order);
        if (tune?.Outcome is { } outcome)
        {
            EndTune(outcome);
        }

        if (plant.Advance(command).IsSet(0))
        {
            Breakdown = new SimulationBreakdown(ticks * TickSeconds, "the states of motor, shaft and DC bus left the range of numbers.");
            control.Of(0).TripBy(TripCause.External);
        }

        (along, across) = (command.ModulationQ, command.ModulationD);
        turns += TickSeconds * command.FrequencyHz;
        turns -= Math.Round(turns);
        thermal.Pass(TickSeconds, plant.Reading.CurrentA, plant.Reading.ResistorJ);
        if (!SupplyPresent && !diedOfSupply && plant.Reading.BusV < AliveShare * system.Drive.UndervoltageTrip.Volts)
        {
            diedOfSupply = true;
            control.Of(0).PowerOff();
        }
    }

    /// <summary>Whether an auto-tune may begin: at standstill, with the drive ready and no run order.</summary>
    public bool MayTune => !IsTuning && !Order.Run && control.Of(0).State == DriveState.Stopped && Standstill.At(Readings.SpeedRpm, system.Motor);

    /// <summary>Begins an auto-tune; it takes some twenty seconds, and a rotating one its ramps besides.</summary>
    /// <exception cref="InvalidOperationException">The drive is not ready, a run is ordered, or the shaft turns.</exception>
    public void BeginTune(AutoTune kind)
    {
        if (!MayTune)
        {
            throw new InvalidOperationException("An auto-tune begins only at standstill, with the drive ready and no run order.");
        }

        TuneOutcome = null;
        tune = new TuneSequence(kind, new ControlFigures(control.Settings, system.Drive));
    }

    private void EndTune(AutoTuneOutcome outcome)
    {
        TuneOutcome = outcome;
        tune = null;
    }

    /// <summary>A trip from outside, such as a bus time-out; nothing if already tripped or without power.</summary>
    public void Trip(TripCause cause)
    {
        if (IsTuning && cause != TripCause.None)
        {
            EndTune(new AutoTuneOutcome.Failed("the drive tripped."));
        }

        control.Of(0).TripBy(cause);
    }

    /// <summary>Resets a trip; a new start needs the run order to go off and on again. Stays tripped while the motor's thermal model is at its trip level.</summary>
    public void ResetTrip() => control.ResetTrip(0);

    /// <summary>Supply off: control and output die at once, the DC bus discharges, the shaft coasts.</summary>
    public void PowerOff()
    {
        diedOfSupply = false;
        if (IsTuning)
        {
            EndTune(new AutoTuneOutcome.Failed("the power went off."));
        }

        control.Of(0).PowerOff();
    }

    /// <summary>Supply on: the DC bus is charged for half a second, then the drive is ready. A trip is forgotten.</summary>
    public void PowerOn() => control.Of(0).PowerOn();

    private static DrivePlant<One> Plain(DriveSystem system) => new(system, [system.Motor], [system.Machine], TickSeconds);

    private DetailedPlant Succeed(DetailedPlant next, DrivePlant<One> last)
    {
        next.SupplyPhaseLost = last.SupplyPhaseLost;
        next.Take(last.Give(2 * Math.PI * turns), last.Reading);
        return next;
    }

    private static DrivePlant<One> Succeed(DrivePlant<One> next, DetailedPlant last)
    {
        next.SupplyPhaseLost = last.SupplyPhaseLost;
        next.Take(last.Give(), last.Reading);
        return next;
    }

    private static double? RatedTorque(ControlSettings settings) =>
        settings.MotorRatedSpeed is { RadiansPerSecond: > 0 } speed ? settings.MotorRatedPower.Watts / speed.RadiansPerSecond : null;
}
