using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>A job's survey, part by part, for a reader.</summary>
public static class SurveyTable
{
    /// <summary>All parts that hold anything or lack something.</summary>
    public static IReadOnlyList<SurveyPart> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. ((SurveyPart[])[Supply(job.Supply), Plate(job.Motor), Measured(job.Motor.Measured), Drive(job.Drive), Cable(job.Cable), Machine(job.Machine), Operation(job.Operation), Control(job.Control, job.Bus), Place(job.Place)])
            .Where(part => part.Rows.Count + part.Missing.Count > 0)];
    }

    /// <summary>The names of all photos of a job, each once: those of data in the order of the table, then those of the set.</summary>
    public static IReadOnlyList<string> PhotosOf(Job job) =>
        [.. Of(job).SelectMany(part => part.Rows).Select(row => row.Photo).OfType<string>().Concat(job.Photos.Select(p => p.File)).Distinct(StringComparer.Ordinal)];

    private static SurveyPart Supply(SupplySurvey s) => new SurveyPartBuilder("Supply")
        .Quantity("Voltage", s.Voltage).Quantity("Frequency", s.Frequency).Count("Phases", s.Phases)
        .Optional(b => b.Quantity("Fault level", s.FaultLevel)
            .Quantity("Transformer", s.Transformer?.Rating).Quantity("Transformer impedance", s.Transformer?.Impedance)
            .Quantity("Generator", s.Generator?.Rating).Quantity("Subtransient reactance", s.Generator?.SubtransientReactance)
            .Quantity("Fault level at the coupling point", s.CouplingPoint?.FaultLevel).Quantity("Demand current", s.CouplingPoint?.DemandCurrent))
        .Quantity("Unbalance", s.Unbalance).Word("Earthing", s.Earthing).YesNo("Radio-interference filter", s.Filter)
        .Optional(b => b.Quantity("Residual-current device", s.ResidualCurrentDevice?.Rating).Word("Its type", s.ResidualCurrentDevice?.Type)
            .Quantity("Line reactor", s.LineReactorFraction).Quantity("Line reactor inductance", s.LineReactorInductance))
        .Part;

    private static SurveyPart Plate(MotorSurvey m)
    {
        var p = m.Plate;
        var part = new SurveyPartBuilder("Motor")
            .OneOf("Kind", m.Kind).Optional(b => b.Count("Motors on the drive", m.Count).Word("Plate after", p.Standard))
            .Quantity("Output", p.Output).Quantity("Voltage", p.Voltage).OneOf("Connection in use", p.Connection).Quantity("Current", p.Current)
            .Quantity("Frequency", p.Frequency).Quantity("Speed", p.Speed).Count("Poles", p.Poles).Quantity("Power factor", p.PowerFactor).Quantity("Efficiency", p.Efficiency)
            .Optional(b => b.Word("Efficiency class", p.EfficiencyClass).Quantity("Locked-rotor current over rated", p.LockedRotorCurrent).Word("Code letter", p.CodeLetter)
                .Word("Design letter", p.DesignLetter).Quantity("Locked-rotor torque over rated", p.LockedRotorTorque).Quantity("Breakdown torque over rated", p.BreakdownTorque).Quantity("Service factor", p.ServiceFactor))
            .Word("Insulation class", p.InsulationClass).Word("Cooling", p.Cooling).Word("Duty", p.Duty).YesNo("Marked for inverter duty", p.InverterDuty);
        foreach (var other in p.OtherRatings)
        {
            var name = $"Also on the plate: {other.Connection?.Value.Words() ?? "other connection"}";
            part.Quantity(name, other.Voltage).Optional(b => b.Quantity($"{name}, current", other.Current).Quantity($"{name}, frequency", other.Frequency)
                .Quantity($"{name}, output", other.Output).Quantity($"{name}, speed", other.Speed));
        }

        return part.Quantity("Rotor inertia", m.Inertia).Word("Sensor in the winding", m.ThermalSensor).YesNo("Mechanical brake", m.Brake)
            .Optional(b => b.Quantity("Permitted peak voltage", m.PeakVoltage?.Voltage).Quantity("At a rise time of", m.PeakVoltage?.RiseTime).Word("Curve of continuous torque", m.ContinuousTorqueFile))
            .Part;
    }

    private static SurveyPart Measured(MotorMeasurements m) => new SurveyPartBuilder("Measured on the motor")
        .Optional(b => b.Quantity("Winding, between two terminals", m.WindingResistance).Quantity("Winding temperature then", m.WindingTemperature).Quantity("No-load current", m.NoLoadCurrent)
            .Quantity("Stator resistance, a phase", m.StatorResistance).Quantity("Leakage inductance, a phase", m.LeakageInductance).Quantity("Magnetizing current", m.MagnetizingCurrent))
        .Part;

    private static SurveyPart Drive(DriveSurvey d) => new SurveyPartBuilder("Drive")
        .Word("Profile", d.Profile).Word("Size", d.Size).Word("Overload cycle", d.OverloadCycle).Quantity("Switching frequency", d.SwitchingFrequency)
        .Optional(b => b.Quantity("Braking resistor", d.BrakingResistor?.Resistance).Quantity("Its continuous power", d.BrakingResistor?.ContinuousPower)
            .Quantity("DC choke", d.DcChoke).Quantity("Bus capacitance", d.BusCapacitance).Quantity("Overvoltage trip", d.OvervoltageTrip)
            .Quantity("Chopper level", d.ChopperLevel).Quantity("Rise time of the output", d.RiseTime).Quantity("Largest output current", d.CurrentLimit))
        .Part;

    private static SurveyPart Cable(CableSurvey c) => new SurveyPartBuilder("Cable")
        .Quantity("Length", c.Length).Quantity("Section", c.Section).Word("Conductor", c.Conductor).YesNo("Screened", c.Screened)
        .Optional(b => b.Quantity("Surge impedance", c.SurgeImpedance).Quantity("Speed of a wave", c.WaveSpeed))
        .Word("At the drive's output", c.OutputDevice).YesNo("Switch between drive and motor", c.OutputSwitch)
        .Part;

    private static SurveyPart Machine(MachineSurvey m) => new SurveyPartBuilder("Driven machine")
        .OneOf("Load torque", m.Load)
        .Optional(b => b.Quantity("Torque at its shaft", m.Torque).Quantity("At its speed", m.AtSpeed).Word("Curve", m.CurveFile).Quantity("Gear, motor over machine", m.GearRatio)
            .Quantity("Gear efficiency", m.GearEfficiency).Quantity("Gear efficiency when the load drives", m.GearEfficiencyBack).Quantity("Hoisted mass", m.Mass).Quantity("Drum diameter", m.DrumDiameter))
        .Text("Critical speeds of its shaft", m.CriticalSpeeds is not { } speeds ? null : speeds.Count == 0 ? "none" : string.Join(", ", speeds.Select(s => BothUnits.Write(s.Speed.Value))))
        .Quantity("Breakaway torque", m.BreakawayTorque).Quantity("Inertia at its shaft", m.Inertia).Quantity("Largest speed of its shaft", m.LargestSpeed)
        .Part;

    private static SurveyPart Operation(OperationSurvey o) => new SurveyPartBuilder("Operation")
        .Quantity("Lowest frequency", o.MinimumFrequency).Quantity("Highest frequency", o.MaximumFrequency).Quantity("Acceleration, 0 to highest", o.Acceleration)
        .Quantity("Deceleration, highest to 0", o.Deceleration).Word("Directions", o.Directions).Quantity("Stops in an hour", o.StopsPerHour)
        .YesNo("Starts by itself when power returns", o.RestartAfterPowerLoss)
        .Text("Duty cycle", o.Cycle.Count == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{o.Cycle.Count} parts of {o.Cycle.Sum(c => c.Time.Value.Si):0.#} s in all"))
        .Part;

    private static SurveyPart Control(ControlSurvey c, BusSurvey bus) => Terminals(new SurveyPartBuilder("Control and bus")
        .Word("Run command from", c.RunFrom).Optional(b => b.Word("Run contact", c.RunContact)).Word("Reference from", c.ReferenceFrom)
        .Optional(b => Analogue(Analogue(b, "Analogue input 1", c.Analogue1), "Analogue input 2", c.Analogue2)
            .Count("Relay that opens the brake", c.BrakeRelay).Word("Bus", bus.Kind).Count("Unit on the bus", bus.Address).Count("Baud", bus.Baud).Word("Parity", bus.Parity).Quantity("Longest silence", bus.TimeOut).Word("On loss of the bus", bus.OnLoss)), c)
        .Part;

    // Only what is stated: nobody misses a terminal that is not wired.
    private static SurveyPartBuilder Terminals(SurveyPartBuilder part, ControlSurvey c)
    {
        foreach (var stated in c.FixedFrequencies)
        {
            part.Quantity(Called(stated.Setting), stated.Frequency);
        }

        foreach (var wired in c.Terminals?.Functions ?? [])
        {
            part.Word(Called(wired.Terminal), wired.Function);
        }

        return part;
    }

    private static string Called(Setting setting) => string.Concat(setting.Name[..1].ToUpperInvariant(), setting.Name[1..].Replace('-', ' '));

    private static SurveyPartBuilder Analogue(SurveyPartBuilder b, string name, AnalogueSurvey? a) =>
        b.Word($"{name}, signal", a?.Signal).Quantity($"{name}, lowest", a?.Low).Quantity($"{name}, highest", a?.High).Word($"{name}, on loss", a?.OnLoss);

    private static SurveyPart Place(PlaceSurvey p) => new SurveyPartBuilder("Place")
        .Quantity("Air around the drive", p.Ambient).Quantity("Above the sea", p.Altitude).Word("Explosive atmosphere", p.ExplosiveZone)
        .Part;
}
