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

    private readonly EquivalentCircuit motor;
    private readonly PlantDetail detail;
    private readonly DriveFigures figures;
    private readonly DetailedMachine machine;
    private readonly double tickS;
    private readonly double brakeNm;
    private readonly double strayPerSpeed;
    private double swingRate;
    private DetailedShaft shaft;
    private BusRates<One> bus;
    private PlantCommand<One> command;
    private DetailedStates states;
    private PlantReading<One> reading;
    private bool fed;
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
        shaft = Made(system.Machine);
        states = states with { BusV = figures.Rectifier.PeakV };
        Read(0);
    }

    /// <inheritdoc/>
    public ref readonly PlantReading<One> Reading => ref reading;

    /// <inheritdoc/>
    public bool SupplyPhaseLost { get; set; }

    /// <summary>Torque in the shaft between motor and machine, in N·m; zero where it is stiff.</summary>
    internal double ShaftNm => shaft.ShaftNm(states);

    /// <inheritdoc/>
    public void Couple(IReadOnlyList<DrivenMachine> machines)
    {
        shaft = Made(machines[0]);
        states = states with { MotorRadPerS = 0, LoadRadPerS = 0, TwistRad = 0 };
    }

    /// <inheritdoc/>
    public One Advance(in PlantCommand<One> command)
    {
        var before = states;
        this.command = command;
        Switch(LaneSet.IsSet(command.InverterOn, 0));
        bus.Rectifier = (SupplyPhaseLost ? figures.TwoPhaseRectifier : figures.Rectifier).In(command.Supply);
        bus.InverterLossA = fed ? figures.InverterLossWPerA * reading.CurrentA / Math.Max(reading.BusV, 1) : 0;
        shaft.BrakeNm = LaneSet.IsSet(command.BrakeOpen, 0) ? 0 : brakeNm;
        (reading.LargestBusV, reading.LargestCurrentA, reading.ChopperOn) = (default, default, default);
        var (steps, resistorJ) = (Steps, 0.0);
        var stepS = tickS / steps;
        for (var step = 0; step < steps; step++)
        {
            var conductance = SwitchChopper(command.ChopperEnabled);
            var was = states.BusV;
            Step(stepS);
            resistorJ += 0.5 * stepS * conductance * ((was * was) + (states.BusV * states.BusV));
            states = shaft.Settled(states, TorqueNm(states));
            reading.LargestBusV = Math.Max(reading.LargestBusV, states.BusV);
            reading.LargestCurrentA = Math.Max(reading.LargestCurrentA, Math.Sqrt(0.5) * StatorA(states).Magnitude);
        }

        var ranAway = !states.IsFinite;
        states = ranAway ? before : states;
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

    // Where the inverter is off the frame turns with the rotor, and the cages alone make the field.
    private DetailedStates Rates(in DetailedStates x)
    {
        Span<Complex> cages = [x.First, x.Second];
        cages = cages[..machine.Cages];
        var frame = FrameRadPerS;
        var magnetizing = machine.Magnetizing(x.Stator, cages, fed ? frame : 0, fed);
        var statorA = fed ? machine.StatorA(x.Stator, magnetizing) : default;
        var volts = Modulation * x.BusV;
        var slip = fed ? frame - (machine.PolePairs * x.MotorRadPerS) : 0;
        var torque = fed ? machine.TorqueNm(cages, magnetizing) - (strayPerSpeed * statorA.Magnitude * statorA.Magnitude * x.MotorRadPerS) : 0;
        var (motorRate, loadRate, twistRate) = shaft.Rates(x, torque);
        var inverterA = fed ? 1.5 * (Modulation * Complex.Conjugate(statorA)).Real : 0;
        return new DetailedStates(
            fed ? volts - (machine.StatorOhm * statorA) - (new Complex(0, frame) * x.Stator) : default,
            machine.CageRate(0, x.First, machine.CageA(0, x.First, magnetizing), slip),
            machine.Cages > 1 ? machine.CageRate(1, x.Second, machine.CageA(1, x.Second, magnetizing), slip) : default,
            motorRate,
            loadRate,
            twistRate,
            bus.At(x.BusV, inverterA));
    }

    private void Switch(bool on)
    {
        if (on && !fed)
        {
            states = states with { Stator = Magnetizing(states, fed: false) };
        }
        else if (fed && !on)
        {
            // The current that flowed dies out through the diodes; the energy of its field goes to the bus.
            var energyJ = 0.75 * machine.TransientH * StatorA(states).Magnitude * StatorA(states).Magnitude;
            states = states with { Stator = default, BusV = Math.Sqrt((states.BusV * states.BusV) + (2 * energyJ / figures.BusF)) };
        }

        fed = on;
    }

    private double SwitchChopper(bool enabled)
    {
        chopperOn = enabled && figures.ResistorConductance > 0 && states.BusV >= (chopperOn ? figures.ChopperOffV : figures.ChopperOnV);
        var conductance = chopperOn ? figures.ResistorConductance : 0;
        bus.ConductanceS = figures.OwnConductance + conductance;
        reading.ChopperOn = chopperOn ? LaneSet.Every<One>() : reading.ChopperOn;
        return conductance;
    }

    private Complex Magnetizing(in DetailedStates x, bool fed)
    {
        Span<Complex> cages = [x.First, x.Second];
        return machine.Magnetizing(x.Stator, cages[..machine.Cages], fed ? FrameRadPerS : 0, fed);
    }

    private Complex StatorA(in DetailedStates x) => fed ? machine.StatorA(x.Stator, Magnetizing(x, fed: true)) : default;

    private double TorqueNm(in DetailedStates x)
    {
        Span<Complex> cages = [x.First, x.Second];
        return fed ? machine.TorqueNm(cages[..machine.Cages], Magnetizing(x, fed: true)) : 0;
    }

    private void Read(double resistorJ)
    {
        var current = StatorA(states);
        var volts = Modulation * states.BusV;
        reading.BusV = states.BusV;
        reading.LargestBusV = Math.Max(reading.LargestBusV, states.BusV);
        reading.SpeedRadPerS = states.MotorRadPerS;
        reading.CurrentA = Math.Sqrt(0.5) * current.Magnitude;
        reading.AlongA = Math.Sqrt(0.5) * current.Real;
        reading.AcrossA = -Math.Sqrt(0.5) * current.Imaginary;
        reading.OutputV = fed ? Math.Sqrt(1.5) * volts.Magnitude : 0;
        reading.OutputW = 1.5 * (volts * Complex.Conjugate(current)).Real;
        reading.TorqueNm = TorqueNm(states);
        reading.ResistorJ = resistorJ;
        reading.ChopperShare = figures.ResistorConductance > 0 ? Math.Min(resistorJ / (tickS * figures.ResistorConductance * Math.Max(states.BusV * states.BusV, 1)), 1) : 0;
        reading.RippleV = bus.Rectifier.RippleV<One>(states.BusV, figures.BusF, figures.SupplyHz);
    }
}
