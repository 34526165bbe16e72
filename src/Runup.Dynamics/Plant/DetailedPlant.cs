using System.Numerics;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>Supply, DC bus, inverter, a motor with all that <see cref="PlantDetail"/> adds, and its machine, advanced tick by tick; knows nothing of the control.</summary>
/// <remarks>Classical Runge-Kutta steps, as many in a tick as the fastest rate asks for. What holds of bus, rectifier and chopper in the plain model holds here.</remarks>
internal sealed class DetailedPlant : IDrivePlant<One>
{
    private const double MostRateInStep = 0.8;
    private const double MostAngleInStep = 0.4;
    private const int FewestSteps = 4;
    private const int MostSteps = 200;

    // Of the trip level: there the output stage switches itself off, within microseconds; and what a transistor carries at all (from memory).
    private const double ShortShare = 2;
    private const double TransistorShare = 1.5;

    private readonly EquivalentCircuit motor;
    private readonly PlantDetail detail;
    private readonly DriveFigures figures;
    private readonly DetailedMachine machine;
    private readonly double tickS;
    private readonly double brakeNm;
    private readonly double strayPerSpeed;
    private readonly double transistorA;
    private readonly bool supplyEarthed;
    private readonly TurningFields whole;
    private MotorFields fields;
    private double swingRate;
    private DetailedShaft shaft;
    private BusRates<One> bus;
    private PlantCommand<One> command;
    private DetailedStates states;
    private PlantReading<One> reading;
    private bool chopperOn;

    internal DetailedPlant(DriveSystem system, PlantDetail detail, double tickS)
    {
        motor = system.Motor;
        this.detail = detail;
        this.tickS = tickS;
        figures = new DriveFigures(system);
        machine = new DetailedMachine(motor, detail);
        brakeNm = system.Brake?.NewtonMetres ?? 0;
        bus.PerCapacitanceF = 1 / figures.BusF;
        strayPerSpeed = StrayBraking.PerSpeed(motor);
        transistorA = ShortShare * Math.Sqrt(2) * system.Drive.OvercurrentTrip.Amperes;
        supplyEarthed = system.SupplyEarthed;
        fields = whole = new TurningFields(machine, strayPerSpeed, figures.BusF);
        shaft = Made(system.Machine);
        states = states with { BusV = figures.Rectifier.PeakV };
        Read(0);
    }

    /// <inheritdoc/>
    public ref readonly PlantReading<One> Reading => ref reading;

    /// <inheritdoc/>
    public bool SupplyPhaseLost { get; set; }

    /// <summary>Sum of the three output currents, at the end of the last tick.</summary>
    internal double ResidualA { get; private set; }

    /// <summary>The largest amount of that within the tick.</summary>
    internal double LargestResidualA { get; private set; }

    /// <summary>The output stage switched itself off within the last tick.</summary>
    internal bool OutputBlocked { get; private set; }

    /// <summary>What is wrong with the conductors to the motor; null while nothing is.</summary>
    internal OutputFault? Fault
    {
        get;
        set
        {
            if (fields is FaultyFields faulty)
            {
                states = faulty.Give(states);
                whole.Take(faulty.Fed);
                fields = whole;
            }

            if (value is not null)
            {
                var next = new FaultyFields(value, supplyEarthed, TransistorShare * transistorA, machine, strayPerSpeed, figures.BusF);
                states = next.Take(states, fields.Fed);
                fields = next;
            }

            (fields.Modulation, fields.FrameRadPerS) = (Modulation, FrameRadPerS);
            field = value;
        }
    }

    /// <summary>Torque in the shaft between motor and machine, in N·m; zero where it is stiff.</summary>
    internal double ShaftNm => shaft.ShaftNm(states);

    /// <inheritdoc/>
    public void Couple(IReadOnlyList<DrivenMachine> machines)
    {
        shaft = Made(machines[0]);
        states = states with { MotorRadPerS = 0, LoadRadPerS = 0, TwistRad = 0 };
    }

    /// <summary>What another plant needs to go on from here.</summary>
    internal PlantHandover Give() => new(
        fields is FaultyFields faulty ? faulty.Give(states) : states,
        shaft.Direction,
        fields.Fed,
        chopperOn,
        command.ModulationQ,
        command.ModulationD,
        command.FrequencyHz);

    /// <summary>Goes on where another plant stopped.</summary>
    internal void Take(in PlantHandover from, in PlantReading<One> last)
    {
        states = from.States;
        shaft.Move(from.Direction);
        whole.Take(from.Fed);
        chopperOn = from.ChopperOn;
        command = new PlantCommand<One>(default, from.ModulationQ, from.ModulationD, from.FrequencyHz, false, default, RectifierMode.Conducting);
        (whole.Modulation, whole.FrameRadPerS) = (Modulation, FrameRadPerS);
        reading = last;
    }

    /// <inheritdoc/>
    public One Advance(in PlantCommand<One> command)
    {
        var before = states;
        this.command = command;
        states = fields.Switch(states, LaneSet.IsSet(command.InverterOn, 0));
        (fields.Modulation, fields.FrameRadPerS) = (Modulation, FrameRadPerS);
        bus.Rectifier = (SupplyPhaseLost ? figures.TwoPhaseRectifier : figures.Rectifier).In(command.Supply);
        bus.InverterLossA = fields.Fed ? figures.InverterLossWPerA * reading.CurrentA / Math.Max(reading.BusV, 1) : 0;
        shaft.BrakeNm = LaneSet.IsSet(command.BrakeOpen, 0) ? 0 : brakeNm;
        (reading.LargestBusV, reading.LargestCurrentA, reading.ChopperOn) = (default, default, default);
        (LargestResidualA, OutputBlocked) = (0, false);
        var (steps, resistorJ) = (Steps, 0.0);
        var stepS = tickS / steps;
        var largestA = fields.LargestA(states);
        for (var step = 0; step < steps; step++)
        {
            Protect(largestA);
            var conductance = SwitchChopper(command.ChopperEnabled);
            var was = states.BusV;
            Step(stepS);
            resistorJ += 0.5 * stepS * conductance * ((was * was) + (states.BusV * states.BusV));
            states = shaft.GoesOn(states) ? states : shaft.Settled(states, fields.TorqueNm(states));
            reading.LargestBusV = Math.Max(reading.LargestBusV, states.BusV);
            largestA = fields.LargestA(states);
            Note(largestA, fields.ResidualA(states));
        }

        var ranAway = !states.IsFinite;
        states = ranAway ? before : states with { AngleRad = Math.IEEERemainder(states.AngleRad, 2 * Math.PI) };
        Read(resistorJ);
        return ranAway ? LaneSet.Every<One>() : default;
    }

    private double FrameRadPerS => 2 * Math.PI * command.FrequencyHz;

    private Complex Modulation => new(command.ModulationQ, -command.ModulationD);

    private int Steps
    {
        get
        {
            var rate = Math.Max(Math.Max(machine.FastestRate, swingRate), Math.Max(2 * shaft.SwingRate, shaft.DampingRate));
            rate = Math.Max(rate / MostRateInStep, Math.Max(figures.Rectifier.SteepestPerOhm / figures.BusF / 1.6, Math.Abs(FrameRadPerS) / MostAngleInStep));
            return Math.Clamp((int)Math.Ceiling(tickS * rate), FewestSteps, MostSteps);
        }
    }

    private DetailedShaft Made(DrivenMachine driven)
    {
        // A shaft that twists leaves the rotor alone with the field.
        var load = new ShaftLoad(driven, motor);
        var perInertia = detail.Coupling is not null && load.MotorInertia > 0 ? 1 / load.MotorInertia : 1 / ShaftLoad.LeastInertia(driven);
        swingRate = machine.PolePairs * motor.RatedVoltage.Phase.Volts / motor.RatedFrequency.RadiansPerSecond * Math.Sqrt(3 * perInertia / machine.TransientH);
        return new DetailedShaft(load, detail.Coupling);
    }

    private void Step(double h)
    {
        var k1 = Rates(states);
        var k2 = Rates(states.After(0.5 * h, k1));
        var k3 = Rates(states.After(0.5 * h, k2));
        var k4 = Rates(states.After(h, k3));
        states = states.After(h / 6, k1).After(h / 3, k2).After(h / 3, k3).After(h / 6, k4);
    }

    private DetailedStates Rates(in DetailedStates x)
    {
        var field = fields.At(x);
        var (motorRate, loadRate, twistRate) = shaft.Rates(x, field.DrivingNm);
        return new DetailedStates(field.Stator, field.First, field.Second, motorRate, loadRate, twistRate, bus.At(x.BusV, field.InverterA), FrameRadPerS);
    }

    private void Protect(double largestA)
    {
        if (Fault is not null && fields.Fed && largestA > transistorA)
        {
            Note(transistorA, fields.ResidualA(states));
            OutputBlocked = true;
            states = fields.Switch(states, on: false);
        }
    }

    private void Note(double largestA, double residualA)
    {
        reading.LargestCurrentA = Math.Max(reading.LargestCurrentA, Math.Sqrt(0.5) * largestA);
        LargestResidualA = Math.Max(LargestResidualA, Math.Abs(residualA));
    }

    private double SwitchChopper(bool enabled)
    {
        chopperOn = enabled && figures.ResistorConductance > 0 && states.BusV >= (chopperOn ? figures.ChopperOffV : figures.ChopperOnV);
        var conductance = chopperOn ? figures.ResistorConductance : 0;
        bus.ConductanceS = figures.OwnConductance + conductance;
        reading.ChopperOn = chopperOn ? LaneSet.Every<One>() : reading.ChopperOn;
        return conductance;
    }

    private void Read(double resistorJ)
    {
        var current = fields.OutputA(states);
        var volts = Modulation * states.BusV;
        reading.BusV = states.BusV;
        reading.LargestBusV = Math.Max(reading.LargestBusV, states.BusV);
        reading.SpeedRadPerS = states.MotorRadPerS;
        reading.CurrentA = Math.Sqrt(0.5) * current.Magnitude;
        reading.AlongA = Math.Sqrt(0.5) * current.Real;
        reading.AcrossA = -Math.Sqrt(0.5) * current.Imaginary;
        reading.OutputV = fields.Fed ? Math.Sqrt(1.5) * volts.Magnitude : 0;
        reading.OutputW = 1.5 * (volts * Complex.Conjugate(current)).Real;
        reading.TorqueNm = fields.TorqueNm(states);
        ResidualA = fields.ResidualA(states);
        reading.ResistorJ = resistorJ;
        reading.ChopperShare = figures.ResistorConductance > 0 ? Math.Min(resistorJ / (tickS * figures.ResistorConductance * Math.Max(states.BusV * states.BusV, 1)), 1) : 0;
        reading.RippleV = bus.Rectifier.RippleOhm(figures.BusF, figures.SupplyHz) * bus.Rectifier.CurrentA(states.BusV);
    }
}
