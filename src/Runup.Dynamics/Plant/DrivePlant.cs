using Runup.Dynamics.Integration;
using Runup.Engineering.Loads;

namespace Runup.Dynamics.Plant;

/// <summary>Supply, DC bus, inverter, motor and one turning mass, advanced tick by tick; knows nothing of the control.</summary>
internal sealed class DrivePlant
{
    // Angle of the field in one step, in rad; what is left of a switching transient turns as fast in the frame.
    private const double MostAngleInStep = 0.5;

    private readonly DriveSystem system;
    private readonly InductionMachine machine;
    private readonly DriveFigures figures;
    private readonly double tickS;
    private readonly double brakeNm;
    private int fewestSteps;
    private int steps;
    private double stepS;
    private FedRates fed;
    private CoastingRates coasting;
    private SixStates states;
    private ShaftMotion motion = ShaftMotion.AtRest;
    private bool inverterOn;
    private bool chopperOn;
    private PlantReading reading;

    internal DrivePlant(DriveSystem system, double tickS)
    {
        this.system = system;
        machine = new InductionMachine(system.Motor);
        figures = new DriveFigures(system);
        this.tickS = tickS;
        brakeNm = system.Brake?.NewtonMetres ?? 0;
        fed.Machine = machine;
        fed.StrayPerSpeed = StrayBraking.PerSpeed(system.Motor);
        coasting.RotorRate = machine.OpenRotorRate;
        Couple(system.Machine);
        states.X6 = figures.Rectifier.PeakV;
        reading = ReadingNow(default);
    }

    internal PlantReading Reading => reading;

    internal double IdleBusV => figures.Rectifier.PeakV;

    /// <summary>Puts another machine on the shaft; the shaft comes to rest.</summary>
    internal void Couple(DrivenMachine driven)
    {
        var load = new ShaftLoad(driven, system.Motor);
        fed.Shaft = new Shaft(load);
        coasting.Shaft = new Shaft(load);
        var motor = system.Motor;
        var swingRate = machine.SwingRate(motor.RatedVoltage.Phase.Volts, motor.RatedFrequency.RadiansPerSecond, 1 / load.PerLeastInertia);
        fewestSteps = figures.StepsIn(tickS, machine, swingRate);
        states.X5 = 0;
        motion = ShaftMotion.AtRest;
    }

    /// <summary>Advances by one tick under a command.</summary>
    /// <returns>False when the states ran away; they are then those of the tick before.</returns>
    internal bool Advance(in PlantCommand command)
    {
        var before = states;
        Switch(command.InverterOn);
        Prepare(command);
        reading.LargestBusV = 0;
        reading.LargestCurrentA = 0;
        reading.ChopperOn = false;
        for (var step = 0; step < steps; step++)
        {
            SwitchChopper(command.ChopperEnabled);
            Step();
            NoteExtremes();
        }

        if (!states.IsFinite)
        {
            states = before;
            return false;
        }

        reading = ReadingNow(reading);
        return true;
    }

    private void Switch(bool on)
    {
        if (on == inverterOn)
        {
            return;
        }

        inverterOn = on;
        if (on)
        {
            states.X1 = machine.OpenStatorShare * states.X3;
            states.X2 = machine.OpenStatorShare * states.X4;
            return;
        }

        // The current that flowed dies out through the diodes; the energy of its field goes to the bus.
        var energyJ = 0.75 * machine.TransientH * Currents().StatorSquareA2;
        states.X6 = Math.Sqrt((states.X6 * states.X6) + (2 * energyJ / figures.BusF));
        states.X1 = 0;
        states.X2 = 0;
    }

    private void Prepare(in PlantCommand command)
    {
        var bus = new BusRates
        {
            Rectifier = figures.Rectifier.In(command.Supply),
            PerCapacitanceF = 1 / figures.BusF,
            ConductanceS = figures.OwnConductance,
            InverterLossW = inverterOn ? figures.InverterLossWPerA * reading.CurrentA : 0,
        };
        fed.Bus = bus;
        coasting.Bus = bus;
        fed.ModulationQ = command.ModulationQ;
        fed.ModulationD = command.ModulationD;
        fed.FrameRadPerS = 2 * Math.PI * command.FrequencyHz;
        fed.Share = machine.ShareAt(fed.FrameRadPerS);
        fed.Shaft.BrakeNm = command.BrakeOpen ? 0 : brakeNm;
        coasting.Shaft.BrakeNm = fed.Shaft.BrakeNm;
        steps = Math.Max(fewestSteps, (int)Math.Ceiling(tickS * Math.Abs(fed.FrameRadPerS) / MostAngleInStep));
        stepS = tickS / steps;
    }

    private void SwitchChopper(bool enabled)
    {
        chopperOn = enabled && figures.ResistorConductance > 0 && states.X6 >= (chopperOn ? figures.ChopperOffV : figures.ChopperOnV);
        var conductance = figures.OwnConductance + (chopperOn ? figures.ResistorConductance : 0);
        fed.Bus.ConductanceS = conductance;
        coasting.Bus.ConductanceS = conductance;
        reading.ChopperOn |= chopperOn;
    }

    private void Step()
    {
        if (inverterOn)
        {
            motion.Advance(default(RungeKutta4), ref fed, ref states, stepS);
        }
        else
        {
            motion.Advance(default(RungeKutta4), ref coasting, ref states, stepS);
        }
    }

    private void NoteExtremes()
    {
        reading.LargestBusV = Math.Max(reading.LargestBusV, states.X6);
        if (inverterOn)
        {
            reading.LargestCurrentA = Math.Max(reading.LargestCurrentA, Currents().StatorRmsA);
        }
    }

    private MachineCurrents Currents() => machine.Currents(fed.Share, states.X1, states.X2, states.X3, states.X4);

    private PlantReading ReadingNow(PlantReading extremes)
    {
        var next = extremes;
        next.BusV = states.X6;
        next.LargestBusV = Math.Max(extremes.LargestBusV, states.X6);
        next.SpeedRadPerS = states.X5;
        if (inverterOn)
        {
            ReadOutput(ref next);
        }
        else
        {
            (next.CurrentA, next.AlongA, next.AcrossA, next.OutputV, next.OutputW, next.TorqueNm) = (0, 0, 0, 0, 0, 0);
        }

        return next;
    }

    private void ReadOutput(ref PlantReading next)
    {
        var i = Currents();
        double q = fed.ModulationQ * states.X6, d = fed.ModulationD * states.X6;
        next.CurrentA = i.StatorRmsA;
        next.AlongA = i.QsA * Math.Sqrt(0.5);
        next.AcrossA = i.DsA * Math.Sqrt(0.5);
        next.OutputV = Math.Sqrt(1.5 * ((q * q) + (d * d)));
        next.OutputW = 1.5 * ((q * i.QsA) + (d * i.DsA));
        next.TorqueNm = machine.TorqueNm(i, states.X3, states.X4);
    }
}
