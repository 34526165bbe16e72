using Runup.Dynamics;
using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.SimulatedDrive;

/// <summary>
/// A drive that is not there: the registers of its profile, the state machine of IEC 61800-7-201, and the physics of motor
/// and machine at 1 kHz of its own clock.
/// </summary>
/// <remarks>
/// It is as rude as real ones: control words are ignored without a word while commands come from elsewhere, what was not
/// stored is lost at power-off, and any valid frame restarts its bus time-out.
/// </remarks>
public sealed partial class VirtualDrive : IModbusDevice
{
    private static readonly TimeSpan TickTime = TimeSpan.FromMilliseconds(1);

    private static readonly Setting[] Ramps = [Setting.AccelerationTime, Setting.DecelerationTime];

    private readonly DriveProfile profile;
    private readonly DriveSize size;
    private readonly DriveSystem plant;
    private readonly CommandInterface command;
    private readonly RegisterMap map;
    private readonly DriveMemory memory;
    private readonly DriveSimulation simulation;
    private readonly BusWatch watch = new();
    private readonly Lock gate = new();
    private PowerState state = PowerState.SwitchOnDisabled;
    private ControlWord word;
    private long referenceRaw;
    private long ticks;
    private bool runsAtPanel;
    private PowerState beforeTrip = PowerState.SwitchOnDisabled;

    /// <summary>A drive on its plant, powered, with factory values.</summary>
    /// <param name="profile">Its family.</param>
    /// <param name="size">Its size.</param>
    /// <param name="plant">What stands behind its terminals.</param>
    /// <exception cref="ArgumentException">The profile tells no command interface.</exception>
    public VirtualDrive(DriveProfile profile, DriveSize size, DriveSystem plant)
    {
        this.profile = profile;
        this.size = size;
        this.plant = plant;
        command = profile.Command ?? throw new ArgumentException($"{profile.Title} tells no command word, reference and status word.", nameof(profile));
        map = new RegisterMap(profile);
        memory = new DriveMemory(profile, size);
        simulation = new DriveSimulation(plant, Control());
        Identification = profile.Identity is { } identity
            ? new DeviceIdentification(identity.Vendor, identity.Product, identity.Revision)
            : null;
    }

    /// <summary>What prevents such a drive on such a plant; empty where nothing does.</summary>
    public static IReadOnlyList<SystemProblem> Problems(DriveProfile profile, DriveSize size, DriveSystem plant)
    {
        ArgumentNullException.ThrowIfNull(size);
        return SystemCheck.Of(plant, ControlSettings.From(new DriveMemory(profile, size).Settings, size.Rating));
    }

    /// <inheritdoc/>
    public DeviceIdentification? Identification { get; }

    /// <summary>What it reads of itself at this moment.</summary>
    public Dynamics.DriveReadings Now
    {
        get
        {
            lock (gate)
            {
                return simulation.Readings;
            }
        }
    }

    /// <summary>State after IEC 61800-7-201.</summary>
    public PowerState State
    {
        get
        {
            lock (gate)
            {
                return state;
            }
        }
    }

    /// <summary>How long no valid frame came, in its own time.</summary>
    public TimeSpan Silence
    {
        get
        {
            lock (gate)
            {
                return watch.Silence;
            }
        }
    }

    /// <summary>What is wrong with the conductors to the motor; null while nothing is.</summary>
    public OutputFault? Fault
    {
        get
        {
            lock (gate)
            {
                return simulation.Fault;
            }
        }

        set
        {
            lock (gate)
            {
                simulation.Fault = value;
            }
        }
    }

    /// <summary>A point of its supply is earthed.</summary>
    public bool SupplyEarthed => plant.SupplyEarthed;

    /// <summary>Whether it turns the motor for somebody on the bus, so that a silence there matters.</summary>
    public bool AwaitsPeer
    {
        get
        {
            lock (gate)
            {
                return RunsFromBus && simulation.Readings.State is (DriveState.Running or DriveState.Stopping or DriveState.QuickStopping);
            }
        }
    }

    /// <summary>How many control words came over the bus that would enable operation, whether the drive followed them or not.</summary>
    public int EnableWordsSeen { get; private set; }

    private bool RunsFromBus => string.Equals(memory.Settings.Choice(Setting.RunCommandSource) ?? "bus", "bus", StringComparison.Ordinal);

    private bool Watched => state == PowerState.OperationEnabled && RunsFromBus && watch.TimeOut > TimeSpan.Zero;

    /// <summary>Moves its clock to a time since it was made.</summary>
    public void MoveTo(TimeSpan time)
    {
        var due = time.Ticks / TickTime.Ticks;
        lock (gate)
        {
            for (; ticks < due; ticks++)
            {
                Tick();
            }
        }
    }

    /// <summary>A person loosens or closes the coupling; only at standstill.</summary>
    /// <exception cref="InvalidOperationException">The shaft turns.</exception>
    public void Couple(Engineering.Loads.DrivenMachine machine)
    {
        lock (gate)
        {
            simulation.Couple(machine);
        }
    }

    /// <summary>The same, by a person who first looks whether the shaft stands and the output is off.</summary>
    public PanelAnswer CoupleAtRest(Engineering.Loads.DrivenMachine machine)
    {
        lock (gate)
        {
            if (!simulation.MayTune)
            {
                return new PanelAnswer.Ignored("the shaft turns, or the drive is not ready and stopped");
            }

            simulation.Couple(machine);
            return new PanelAnswer.Followed();
        }
    }

    /// <summary>A person resets a trip at the drive's panel.</summary>
    public void ResetAtPanel()
    {
        lock (gate)
        {
            simulation.ResetTrip();
            state = state is PowerState.Fault or PowerState.FaultReactionActive ? PowerState.SwitchOnDisabled : state;
            word = ControlWord.DisableVoltage;
        }
    }

    /// <summary>A person at the drive's panel asks it to run, or to go to another frequency.</summary>
    public PanelAnswer RunAtPanel(ElectricalFrequency frequency, Rotation rotation)
    {
        lock (gate)
        {
            if (PanelObjection(rotation) is { } why)
            {
                return new PanelAnswer.Ignored(why);
            }

            runsAtPanel = true;
            state = PowerState.OperationEnabled;
            Tell(new DriveOrder(true, rotation == Rotation.Reverse ? -frequency.Hertz : frequency.Hertz, StopKind.ByMethod));
            return new PanelAnswer.Followed();
        }
    }

    /// <summary>A person at the drive's panel stops it.</summary>
    public PanelAnswer StopAtPanel()
    {
        lock (gate)
        {
            if (!runsAtPanel)
            {
                return new PanelAnswer.Ignored("it does not run from its panel");
            }

            Tell(new DriveOrder(false, 0, StopKind.ByMethod));
            return new PanelAnswer.Followed();
        }
    }

    /// <summary>The supply goes, while the drive lives on what its bus holds, or comes back; what was not stored is gone once the drive has died of it.</summary>
    /// <param name="present">Whether it is there.</param>
    public void SetSupply(bool present)
    {
        lock (gate)
        {
            simulation.SupplyPresent = present;
        }
    }

    /// <summary>A phase of its supply goes missing; of a supply of one phase none can.</summary>
    public PanelAnswer LoseSupplyPhase()
    {
        lock (gate)
        {
            if (size.Rating.SupplyPhases != 3)
            {
                return new PanelAnswer.Ignored("its supply has one phase only");
            }

            simulation.SupplyPhaseLost = true;
            return new PanelAnswer.Followed();
        }
    }

    /// <summary>All phases of the supply are there again.</summary>
    public void RestoreSupplyPhase()
    {
        lock (gate)
        {
            simulation.SupplyPhaseLost = false;
        }
    }

    /// <summary>Power is lost and returns: what was not stored is gone.</summary>
    public void PowerCycle()
    {
        lock (gate)
        {
            LeavePanel();
            simulation.PowerOff();
            Forget();
            simulation.PowerOn();
        }
    }

    private void Forget()
    {
        memory.LosePower();
        TryReconfigure();
        state = PowerState.NotReadyToSwitchOn;
        word = ControlWord.DisableVoltage;
        referenceRaw = 0;
        watch.Restart();
    }

    /// <inheritdoc/>
    public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
    {
        lock (gate)
        {
            watch.Restart();
            if (map.Within(range.Start.Value, range.Count) is not { } parameters)
            {
                return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
            }

            var shown = Shown();
            var at = 0;
            foreach (var parameter in parameters)
            {
                var raw = shown.GetValueOrDefault(parameter.Number, memory.Values[parameter.Number] ?? 0);
                RegisterImage.Words(parameter, raw).CopyTo(values[at..]);
                at += parameter.RegisterCount;
            }

            return DeviceAnswer.Done;
        }
    }

    /// <inheritdoc/>
    public DeviceAnswer ReadInputRegisters(RegisterRange range, Span<ushort> values) => ReadHoldingRegisters(range, values);

    /// <inheritdoc/>
    public DeviceAnswer WriteRegister(RegisterAddress address, ushort value) => Write(address.Value, [value]);

    /// <inheritdoc/>
    public DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values) => Write(range.Start.Value, values);

    /// <inheritdoc/>
    public DeviceAnswer ReadWriteRegisters(RegisterRange read, Span<ushort> readValues, RegisterRange write, ReadOnlySpan<ushort> written)
    {
        lock (gate)
        {
            if (map.Within(read.Start.Value, read.Count) is null)
            {
                return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
            }

            var answer = Write(write.Start.Value, written);
            return answer == DeviceAnswer.Done ? ReadHoldingRegisters(read, readValues) : answer;
        }
    }

    private DeviceAnswer Write(ushort first, ReadOnlySpan<ushort> words)
    {
        lock (gate)
        {
            watch.Restart();
            if (map.Within(first, words.Length) is not { } parameters)
            {
                return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
            }

            var writes = new List<(Parameter Parameter, long Raw)>(parameters.Count);
            var at = 0;
            foreach (var parameter in parameters)
            {
                var raw = RegisterImage.Raw(parameter, words.Slice(at, parameter.RegisterCount));
                if (Objection(parameter, raw) is { } code)
                {
                    return DeviceAnswer.Refused(code);
                }

                writes.Add((parameter, raw));
                at += parameter.RegisterCount;
            }

            var before = memory.Values;
            foreach (var (parameter, raw) in writes)
            {
                CarryOut(parameter, raw);
            }

            if (!TryReconfigure())
            {
                memory.Use(before);
                return DeviceAnswer.Refused(ExceptionCode.IllegalDataValue);
            }

            if (writes.Exists(w => w.Parameter == command.Word || w.Parameter == command.Reference))
            {
                Follow();
            }

            return DeviceAnswer.Done;
        }
    }

    private ExceptionCode? Objection(Parameter parameter, long raw)
    {
        if (parameter.Access == ParameterAccess.Command)
        {
            return null;
        }

        if (parameter.Access == ParameterAccess.ReadOnly)
        {
            return ExceptionCode.IllegalDataAddress;
        }

        if (!profile.Accepts(parameter, raw, size, memory.Values) || IsWrongSignature(parameter, raw))
        {
            return ExceptionCode.IllegalDataValue;
        }

        var locked = string.Equals(memory.Settings.Choice(Setting.ParameterLock), "on", StringComparison.Ordinal)
            && parameter.Meaning?.Settings.Contains(Setting.ParameterLock) != true;
        var running = simulation.Readings.State is DriveState.Running or DriveState.Stopping or DriveState.QuickStopping;
        return locked || (running && parameter.Access != ParameterAccess.AnyTime) ? ExceptionCode.ServerDeviceFailure : null;
    }

    // Whoever means to store and writes another value must not believe that it was done; what the parameter shows at rest does nothing.
    private bool IsWrongSignature(Parameter parameter, long raw) =>
        profile.Store is { } store && string.Equals(store.Parameter, parameter.Number, StringComparison.Ordinal)
        && raw != store.Write && raw != parameter.Default;

    private void CarryOut(Parameter parameter, long raw)
    {
        if (parameter == command.Word)
        {
            TakeWord(new ControlWord((ushort)raw));
        }
        else if (parameter == command.Reference)
        {
            referenceRaw = raw;
        }
        else if (parameter.Access == ParameterAccess.Action)
        {
            if (profile.Store is { } store && string.Equals(store.Parameter, parameter.Number, StringComparison.Ordinal) && raw == store.Write)
            {
                memory.Keep();
            }
        }
        else
        {
            memory.Take(parameter, raw);
        }
    }

    /// <summary>Puts the parameters to work; false where they contradict one another, such as an acceleration of no time or of no speed.</summary>
    private bool TryReconfigure()
    {
        var control = Control();
        if (SystemCheck.Of(plant, control).Count > 0 || !Array.TrueForAll(Ramps, r => profile.Carrying(r).Count == 0 || memory.Settings.Number(r) is not null))
        {
            return false;
        }

        simulation.Apply(control);
        Tell(simulation.Order);
        watch.TimeOut = TimeSpan.FromSeconds(memory.Settings.Number(Setting.BusTimeout) ?? 0);
        return true;
    }

    private string? PanelObjection(Rotation rotation)
    {
        if (memory.Settings.Choice(Setting.RunCommandSource) is var source && !string.Equals(source, "panel", StringComparison.Ordinal))
        {
            return $"it takes its run command from: {source ?? "the bus"}";
        }

        if (memory.Settings.Choice(Setting.FrequencyReferenceSource) is { } reference && !string.Equals(reference, "panel", StringComparison.Ordinal))
        {
            return $"it takes its frequency from: {reference}";
        }

        return state switch
        {
            PowerState.Fault or PowerState.FaultReactionActive => "it is tripped",
            PowerState.NotReadyToSwitchOn => "it is starting up",
            _ when simulation.IsTuning => "it is measuring its motor",
            _ when rotation == Rotation.Reverse && string.Equals(memory.Settings.Choice(Setting.PermittedDirection), "forward", StringComparison.Ordinal) => "only forward is permitted",
            _ => null,
        };
    }

    private void LeavePanel()
    {
        if (runsAtPanel)
        {
            runsAtPanel = false;
            Tell(default);
        }
    }

    private void TakeWord(ControlWord now)
    {
        if (PowerMachine.CommandOf(now) == PowerCommand.EnableOperation)
        {
            EnableWordsSeen++;
        }

        var was = word;
        word = now;
        if (!RunsFromBus)
        {
            return;
        }

        var before = state;
        state = PowerMachine.OnControlWord(state, was, now, faultPending: false);
        if (before == PowerState.Fault && state != PowerState.Fault)
        {
            simulation.ResetTrip();
        }
    }

    /// <summary>From state, word and reference to the order that the control follows.</summary>
    private void Follow()
    {
        if (!RunsFromBus)
        {
            return;
        }

        if (state == PowerState.OperationEnabled && CommandCodec.Read(profile, command, word.Bits, referenceRaw, memory.Values) is { } asked
            && CommandCodec.FollowsReference(command, asked.Word))
        {
            var forwardOnly = string.Equals(memory.Settings.Choice(Setting.PermittedDirection), "forward", StringComparison.Ordinal);
            var hertz = asked.Rotation == Rotation.Reverse ? (forwardOnly ? 0 : -asked.Frequency.Hertz) : asked.Frequency.Hertz;
            Tell(new DriveOrder(true, hertz, StopKind.ByMethod));
        }
        else
        {
            var stop = state switch
            {
                PowerState.QuickStopActive => StopKind.QuickStop,
                PowerState.SwitchOnDisabled => StopKind.Coast,
                _ => StopKind.ByMethod,
            };
            Tell(new DriveOrder(false, 0, stop));
        }
    }

    private void Tick()
    {
        watch.Pass(TickTime);
        if (Watched && watch.IsOver)
        {
            LoseBus();
        }

        simulation.Tick();
        TakeTuned();
        var reading = simulation.Readings;
        if (reading.State == DriveState.Unpowered && state != PowerState.NotReadyToSwitchOn)
        {
            LeavePanel();
            Forget();
        }
        else if (state == PowerState.NotReadyToSwitchOn && reading.State != DriveState.Unpowered)
        {
            state = PowerMachine.OnReady(state);
        }
        else if (state == PowerState.Fault && reading.State != DriveState.Tripped)
        {
            // The drive has reset itself, and runs on as it was told.
            state = beforeTrip;
        }
        else if (reading.State == DriveState.Tripped && state != PowerState.Fault)
        {
            beforeTrip = state;
            state = PowerMachine.OnFaultReactionDone(PowerMachine.OnFault(state));
            LeavePanel();
        }
        else if (runsAtPanel && !simulation.Order.Run && reading.State == DriveState.Stopped)
        {
            state = PowerState.SwitchOnDisabled;
            LeavePanel();
        }
        else if (state == PowerState.QuickStopActive && reading.State == DriveState.Stopped)
        {
            state = PowerMachine.OnQuickStopDone(state);
        }
    }

    /// <summary>The profile's action on bus loss: none goes on; coast trips at once; ramp stops by the ramp and then stands switched off.</summary>
    private void LoseBus()
    {
        watch.Restart();
        switch (memory.Settings.Choice(Setting.BusLossAction))
        {
            case "coast":
                simulation.Trip(TripCause.BusTimeout);
                break;
            case "ramp":
                state = PowerState.QuickStopActive;
                word = ControlWord.QuickStop;
                Tell(new DriveOrder(false, 0, StopKind.Ramp));
                break;
            default:
                break;
        }
    }

    private Dictionary<string, long> Shown()
    {
        var now = simulation.Readings;
        var round = new Profiles.DriveReadings
        {
            OutputFrequency = ElectricalFrequency.FromHertz(Math.Abs(now.OutputFrequencyHz)),
            OutputCurrent = LineCurrent.FromAmperes(now.OutputCurrentA),
            DcBus = DcVoltage.FromVolts(Math.Max(0, now.DcBusV)),
            OutputVoltage = LineVoltage.FromVolts(Math.Max(0, now.OutputVoltageV)),
            Torque = Fraction.FromPercent(now.TorquePercent ?? 0),
            Speed = ShaftSpeed.FromRpm(now.SpeedRpm),
            State = state,
            LastTrip = now.Trip,
        };
        var shown = ReadingCodec.Encode(profile, memory.Values, round).ToDictionary(r => r.Parameter.Number, r => r.Raw, StringComparer.Ordinal);
        shown[command.Word.Number] = word.Bits;
        shown[command.Reference.Number] = referenceRaw;
        shown[command.Status.Number] = StatusWord.Of(
            state,
            voltageEnabled: true,
            warning: false,
            remote: RunsFromBus,
            targetReached: now.State == DriveState.Running && simulation.AtTarget,
            internalLimit: now.CurrentLimitActive || now.OvervoltageControlActive).Bits;
        return shown;
    }

    private ControlSettings Control() => ControlSettings.From(memory.Settings, size.Rating) with { Tuned = tuned };
}
