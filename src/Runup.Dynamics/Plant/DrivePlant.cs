using System.Numerics;
using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>Supply, DC bus, inverter, motor and one turning mass, advanced tick by tick; knows nothing of the control.</summary>
/// <remarks>
/// One motor and machine for each lane; supply, drive and brake are the same for all. A tick is taken in as few steps as motor and shaft allow, the bus by its decay; a member that meets an
/// event in it, or whose bus leaves the decay, takes the tick again in short steps. Each member's own figures alone decide that.
/// </remarks>
internal sealed partial class DrivePlant<T> : IDrivePlant<T>
    where T : struct, ILanes<T>
{
    // Angle of the field in one step, in rad; what is left of a switching transient turns as fast in the frame.
    private const double MostAngleInStep = 0.5;

    // Of the idle bus: by so much the stages of a long step may fall apart. Beyond it a rectifier begins or ends to conduct within the step.
    private const double MostRoughness = 5e-5;

    // Where the bus stands above the idle one from begin to end no rectifier has a part in it, and the bus may move as fast as braking moves it.
    private const double MostRoughnessAbove = 2e-3;

    private readonly IReadOnlyList<EquivalentCircuit> motors;
    private readonly DriveFigures figures;
    private readonly double tickS;
    private readonly double brakeNm;
    private int fewestLongSteps;
    private int fewestShortSteps;
    private bool suppliedAnew;
    private int stepsForAngle;
    private DriveRates<T> rates;
    private SixStates<T> states;
    private ExponentialRungeKutta4<T> stepper;
    private T outputPerBusV;
    private T chopperOn;
    private T resistorS;
    private RectifierMode supply;
    private bool lost;
    private double rippleOhm;
    private PlantReading<T> reading;

    /// <summary>Makes it at rest, its bus charged.</summary>
    /// <param name="system">What the members have in common.</param>
    /// <param name="motors">A motor for each lane; the last stands for the lanes that are left.</param>
    /// <param name="machines">A machine for each lane, likewise.</param>
    /// <param name="tickS">Length of a tick.</param>
    internal DrivePlant(DriveSystem system, IReadOnlyList<EquivalentCircuit> motors, IReadOnlyList<DrivenMachine> machines, double tickS)
    {
        this.motors = motors;
        figures = new DriveFigures(system);
        this.tickS = tickS;
        brakeNm = system.Brake?.NewtonMetres ?? 0;
        rates = new DriveRates<T>(motors);
        Couple(machines);
        rates.Bus.PerCapacitanceF = 1 / figures.BusF;
        LoadBus();
        states.X6 = T.Of(figures.Rectifier.PeakV);
        Read();
    }

    /// <inheritdoc/>
    public ref readonly PlantReading<T> Reading => ref reading;

    /// <summary>Takes every tick in so many short steps, for comparison; null lets each member choose.</summary>
    internal int? ShortStepsOnly { get; set; }

    internal double IdleBusV => figures.Rectifier.PeakV;

    /// <inheritdoc/>
    public bool SupplyPhaseLost { get; set; }

    /// <inheritdoc/>
    public void Couple(IReadOnlyList<DrivenMachine> machines)
    {
        var loads = new List<ShaftLoad>(T.Count);
        for (var lane = 0; lane < T.Count; lane++)
        {
            loads.Add(new ShaftLoad(machines[Math.Min(lane, machines.Count - 1)], motors[Math.Min(lane, motors.Count - 1)], loads.LastOrDefault()));
        }

        rates.Shaft = new Shaft<T>(loads);
        var inertia = LaneSet.From<T, DrivenMachine>(machines, ShaftLoad.LeastInertia);
        var phaseV = LaneSet.From<T, EquivalentCircuit>(motors, m => m.RatedVoltage.Phase.Volts);
        var radPerS = LaneSet.From<T, EquivalentCircuit>(motors, m => m.RatedFrequency.RadiansPerSecond);
        var (fastest, swing) = (LaneSet.Largest(rates.Machine.FastestRate), LaneSet.Largest(rates.Machine.SwingRate(phaseV, radPerS, inertia)));
        fewestLongSteps = DriveFigures.LongStepsIn(tickS, fastest, swing);
        fewestShortSteps = figures.StepsIn(tickS, fastest, swing);
        states.X5 = default;
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public T Advance(in PlantCommand<T> command)
    {
        if (T.Any(T.Choose(rates.Fed, T.Not(command.InverterOn), command.InverterOn)))
        {
            Switch(command.InverterOn);
        }

        Prepare(command);
        reading.LargestBusV = default;
        reading.LargestCurrentA = default;
        reading.ChopperOn = default;
        reading.ResistorJ = default;
        T ranAway = default;
        var begun = states;
        var wasOn = chopperOn;
        var rough = ShortStepsOnly is null && !suppliedAnew ? TakeLongSteps(command.ChopperEnabled) : LaneSet.Every<T>();
        if (T.Any(rough))
        {
            var smooth = states;
            states = begun;
            chopperOn = T.Choose(rough, wasOn, chopperOn);
            TakeShortSteps(command.ChopperEnabled, rough);
            states = SixStates<T>.Choose(rough, states, smooth);
            ranAway = T.Not(states.Finite);
            if (T.Any(ranAway))
            {
                Restore(ranAway, begun);
            }
        }

        Read();
        return ranAway;
    }

    /// <summary>What another plant needs to go on where the first member stands.</summary>
    internal PlantHandover Give(double angleRad) => new(
        new DetailedStates(
            new Complex(states.X1[0], -states.X2[0]), new Complex(states.X3[0], -states.X4[0]), default, states.X5[0], states.X5[0], 0, states.X6[0], angleRad),
        (int)rates.Direction[0],
        rates.Fed.IsSet(0),
        chopperOn.IsSet(0),
        rates.ModulationQ[0],
        rates.ModulationD[0],
        rates.FrameRadPerS[0] / (2 * Math.PI));

    /// <summary>Goes on, every member, where another plant stopped.</summary>
    internal void Take(in PlantHandover from, in PlantReading<T> last)
    {
        var x = from.States;
        states = new SixStates<T>
        {
            X1 = T.Of(x.Stator.Real),
            X2 = T.Of(-x.Stator.Imaginary),
            X3 = T.Of(x.First.Real),
            X4 = T.Of(-x.First.Imaginary),
            X5 = T.Of(x.MotorRadPerS),
            X6 = T.Of(x.BusV),
        };
        for (var lane = 0; lane < T.Count; lane++)
        {
            rates.Move(lane, from.Direction);
        }

        rates.Fed = from.Fed ? LaneSet.Every<T>() : default;
        chopperOn = from.ChopperOn ? LaneSet.Every<T>() : default;
        (rates.ModulationQ, rates.ModulationD) = (T.Of(from.ModulationQ), T.Of(from.ModulationD));
        rates.FrameRadPerS = T.Of(2 * Math.PI * from.FrequencyHz);
        rates.Share = rates.Machine.ShareAt(rates.FrameRadPerS);
        reading = last;
    }

    // Members for which these steps will not do are told; their states are those of begun again.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T TakeLongSteps(bool chopperEnabled)
    {
        var steps = Math.Max(fewestLongSteps, stepsForAngle);
        var stepS = tickS / steps;
        T rough = default;
        if (figures.ResistorConductance > 0)
        {
            SwitchChopper(chopperEnabled, LaneSet.Every<T>());
        }

        for (var step = 0; step < steps; step++)
        {
            if (step > 0)
            {
                NoteLargest();
            }

            rates.Shaft.FollowTables(states.X5);
            if (chopperEnabled && figures.ResistorConductance > 0)
            {
                rough = T.Or(rough, StepWithChopper(T.Of(stepS)));
            }
            else
            {
                var beginV = states.X6;
                stepper.Follow(rates.Bus.SettlingPerS(beginV), T.Of(stepS));
                stepper.Step(ref rates, ref states);
                rough = T.Or(rough, Rough(beginV, states, stepper.Roughness));
            }
        }

        rough = T.Or(rough, T.Not(states.Finite));
        if (T.Any(rough))
        {
            reading.LargestBusV = T.Choose(rough, default, reading.LargestBusV);
            reading.LargestCurrentA = T.Choose(rough, default, reading.LargestCurrentA);
            reading.ChopperOn = T.And(reading.ChopperOn, T.Not(rough));
            reading.ResistorJ = T.Choose(rough, default, reading.ResistorJ);
        }

        return rough;
    }

    // A step met an event of a shaft, or the bus left the decay.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Rough(T beginV, in SixStates<T> end, T roughness)
    {
        var idle = figures.Rectifier.PeakV;
        var above = T.Less(T.Of(idle), T.Min(beginV, end.X6));
        return T.Or(
            ShaftMotion.Ended<DriveRates<T>, T>(ref rates, end),
            T.Less(T.Choose(above, T.Of(MostRoughnessAbove * idle), T.Of(MostRoughness * idle)), roughness));
    }

    private void TakeShortSteps(bool chopperEnabled, T some)
    {
        var steps = ShortStepsOnly ?? Math.Max(fewestShortSteps, stepsForAngle);
        var stepS = tickS / steps;
        for (var step = 0; step < steps; step++)
        {
            SwitchChopper(chopperEnabled && figures.ResistorConductance > 0, some);
            rates.Shaft.FollowTables(states.X5);
            var (begun, directions) = (states, rates.Direction);
            ShaftMotion.AdvanceSome<RungeKutta4<T>, DriveRates<T>, T>(default, ref rates, ref states, stepS, some);

            // Where a shaft came to rest in the same short step, the chopper waits for its end.
            var goesOn = T.Not(T.Less(default, T.Abs(rates.Direction - directions)));
            var switches = chopperEnabled && figures.ResistorConductance > 0 ? T.And(T.And(some, goesOn), ChopperWouldSwitch()) : default;
            reading.ResistorJ += T.Choose(T.And(some, T.Not(switches)), (0.5 * stepS) * resistorS * ((begun.X6 * begun.X6) + (states.X6 * states.X6)), default);
            if (T.Any(switches))
            {
                SwitchChopperWithin(stepS, begun, switches);
            }

            reading.ChopperOn = T.Or(reading.ChopperOn, T.And(some, chopperOn));
            reading.LargestBusV = T.Max(reading.LargestBusV, T.Choose(some, states.X6, default));
            reading.LargestCurrentA = T.Max(reading.LargestCurrentA, T.Choose(some, OutputA(), default));
        }
    }

    private void Restore(T ranAway, in SixStates<T> before)
    {
        for (var lane = 0; lane < T.Count; lane++)
        {
            if (ranAway.IsSet(lane))
            {
                states.Put(lane, before);
            }
        }
    }

    // Apart, as what seldom happens: the tick that meets nothing keeps its registers.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Switch(T on)
    {
        var turnedOn = T.And(on, T.Not(rates.Fed));
        if (T.Any(turnedOn))
        {
            states.X1 = T.Choose(turnedOn, rates.Machine.OpenStatorShare * states.X3, states.X1);
            states.X2 = T.Choose(turnedOn, rates.Machine.OpenStatorShare * states.X4, states.X2);
        }

        var turnedOff = T.And(rates.Fed, T.Not(on));
        if (T.Any(turnedOff))
        {
            // The current that flowed dies out through the diodes; the energy of its field goes to the bus.
            var energyJ = 0.75 * (rates.Machine.TransientH * Currents().StatorSquareA2);
            var busV = T.Sqrt((states.X6 * states.X6) + ((2 / figures.BusF) * energyJ));
            states.X6 = T.Choose(turnedOff, busV, states.X6);
            states.X1 = T.Choose(turnedOff, default, states.X1);
            states.X2 = T.Choose(turnedOff, default, states.X2);
        }

        rates.Fed = on;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Prepare(in PlantCommand<T> command)
    {
        // A supply that comes back finds the bus far below where it settles: a long step would go past that, and see nothing of it.
        suppliedAnew = command.Supply != supply || SupplyPhaseLost != lost;
        if (suppliedAnew)
        {
            (supply, lost) = (command.Supply, SupplyPhaseLost);
            rates.Bus.Rectifier = (lost ? figures.TwoPhaseRectifier : figures.Rectifier).In(supply);
            rippleOhm = rates.Bus.Rectifier.RippleOhm(figures.BusF, figures.SupplyHz);
        }

        rates.Bus.InverterLossA = T.Choose(rates.Fed, figures.InverterLossWPerA * reading.CurrentA / T.Max(reading.BusV, T.Of(1)), default);
        rates.ModulationQ = command.ModulationQ;
        rates.ModulationD = command.ModulationD;
        rates.BusShareQ = 1.5 * command.ModulationQ;
        rates.BusShareD = 1.5 * command.ModulationD;

        // Here and not with the reading, so that it goes on beside the step.
        outputPerBusV = T.Sqrt(1.5 * ((command.ModulationQ * command.ModulationQ) + (command.ModulationD * command.ModulationD)));
        rates.FrameRadPerS = (2 * Math.PI) * command.FrequencyHz;
        rates.Share = rates.Machine.ShareAt(rates.FrameRadPerS);
        if (brakeNm > 0)
        {
            rates.Shaft.BrakeNm = T.Choose(command.BrakeOpen, default, T.Of(brakeNm));
        }

        var radPerS = T.Abs(rates.FrameRadPerS);
        stepsForAngle = T.Any(T.Less(T.Of(MostAngleInStep / tickS), radPerS)) ? (int)Math.Ceiling(tickS * LaneSet.Largest(radPerS) / MostAngleInStep) : 1;
    }

    // What lies between two steps; the end of the tick is noted with the reading.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void NoteLargest()
    {
        reading.LargestBusV = T.Max(reading.LargestBusV, states.X6);
        reading.LargestCurrentA = T.Max(reading.LargestCurrentA, OutputA());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T OutputA() => T.Choose(rates.Fed, Currents().StatorRmsA, default);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private MachineCurrents<T> Currents() => rates.Machine.Currents(rates.Share, states.X1, states.X2, states.X3, states.X4);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Read()
    {
        var i = Currents();
        reading.BusV = states.X6;
        reading.LargestBusV = T.Max(reading.LargestBusV, states.X6);
        reading.SpeedRadPerS = states.X5;
        reading.CurrentA = WhileFed(i.StatorRmsA);
        reading.LargestCurrentA = T.Max(reading.LargestCurrentA, reading.CurrentA);
        reading.AlongA = WhileFed(Math.Sqrt(0.5) * i.QsA);
        reading.AcrossA = WhileFed(Math.Sqrt(0.5) * i.DsA);
        reading.OutputV = WhileFed(outputPerBusV * states.X6);
        reading.OutputW = WhileFed(states.X6 * T.MultiplyAdd(rates.BusShareQ, i.QsA, rates.BusShareD * i.DsA));
        reading.TorqueNm = WhileFed(rates.Machine.TorqueNm(i, states.X3, states.X4));
        reading.RippleV = rippleOhm * rates.Bus.Rectifier.CurrentA(states.X6);
        reading.ChopperShare = figures.ResistorConductance > 0
            ? T.Min(reading.ResistorJ / ((tickS * figures.ResistorConductance) * T.Max(states.X6 * states.X6, T.Of(1))), T.Of(1))
            : default;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T WhileFed(T value) => T.Choose(rates.Fed, value, default);
}
