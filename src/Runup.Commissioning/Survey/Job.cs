using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>One motor-drive-machine set as surveyed; what was not surveyed is null.</summary>
public sealed record Job
{
    /// <summary>Equipment tag.</summary>
    public required string Tag { get; init; }

    /// <summary>What the set is, in words.</summary>
    public string? Title { get; init; }

    /// <summary>Supply at the drive.</summary>
    public required SupplySurvey Supply { get; init; }

    /// <summary>The motor.</summary>
    public required MotorSurvey Motor { get; init; }

    /// <summary>The drive.</summary>
    public required DriveSurvey Drive { get; init; }

    /// <summary>Cable from drive to motor.</summary>
    public required CableSurvey Cable { get; init; }

    /// <summary>The driven machine.</summary>
    public required MachineSurvey Machine { get; init; }

    /// <summary>How it is to run.</summary>
    public required OperationSurvey Operation { get; init; }

    /// <summary>Where commands come from.</summary>
    public required ControlSurvey Control { get; init; }

    /// <summary>The bus to the control system.</summary>
    public required BusSurvey Bus { get; init; }

    /// <summary>Where it stands.</summary>
    public required PlaceSurvey Place { get; init; }
}

/// <summary>Supply at the drive.</summary>
public sealed record SupplySurvey
{
    /// <summary>Line-to-line voltage.</summary>
    public required Datum<LineVoltage> Voltage { get; init; }

    /// <summary>Frequency.</summary>
    public required Datum<ElectricalFrequency> Frequency { get; init; }

    /// <summary>Phases, 1 or 3.</summary>
    public Datum<int>? Phases { get; init; }

    /// <summary>Fault level at the drive.</summary>
    public Datum<ApparentPower>? FaultLevel { get; init; }

    /// <summary>Feeding transformer.</summary>
    public TransformerSurvey? Transformer { get; init; }

    /// <summary>Feeding generator.</summary>
    public GeneratorSurvey? Generator { get; init; }

    /// <summary>Coupling point of the installation.</summary>
    public CouplingPointSurvey? CouplingPoint { get; init; }

    /// <summary>Voltage unbalance.</summary>
    public Datum<Fraction>? Unbalance { get; init; }

    /// <summary>Earthing system, such as TN-S or IT.</summary>
    public Datum<string>? Earthing { get; init; }

    /// <summary>Radio-interference filter in the drive.</summary>
    public Datum<bool>? Filter { get; init; }

    /// <summary>Residual-current device upstream.</summary>
    public ResidualCurrentDeviceSurvey? ResidualCurrentDevice { get; init; }

    /// <summary>Line reactor as a fraction of the drive's base impedance.</summary>
    public Datum<Fraction>? LineReactorFraction { get; init; }

    /// <summary>Line reactor as an inductance.</summary>
    public Datum<Inductance>? LineReactorInductance { get; init; }
}

/// <summary>A feeding transformer.</summary>
public sealed record TransformerSurvey(Datum<ApparentPower> Rating, Datum<Fraction> Impedance);

/// <summary>A feeding generator.</summary>
public sealed record GeneratorSurvey(Datum<ApparentPower> Rating, Datum<Fraction> SubtransientReactance);

/// <summary>Coupling point of the installation, for IEEE 519.</summary>
public sealed record CouplingPointSurvey(Datum<ApparentPower> FaultLevel, Datum<LineCurrent> DemandCurrent);

/// <summary>A residual-current device upstream.</summary>
public sealed record ResidualCurrentDeviceSurvey(Datum<LineCurrent> Rating, Datum<string>? Type);

/// <summary>Kinds of motor that are told apart.</summary>
public enum MotorKind
{
    /// <summary>Squirrel-cage induction motor.</summary>
    Induction,

    /// <summary>Permanent-magnet synchronous motor.</summary>
    PermanentMagnet,

    /// <summary>Synchronous reluctance motor.</summary>
    SynchronousReluctance,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>The motor.</summary>
public sealed record MotorSurvey
{
    /// <summary>Kind of motor.</summary>
    public Datum<MotorKind> Kind { get; init; } = new(MotorKind.Induction);

    /// <summary>Motors on the one drive.</summary>
    public Datum<int>? Count { get; init; }

    /// <summary>The plate.</summary>
    public required PlateSurvey Plate { get; init; }

    /// <summary>Rotor inertia.</summary>
    public Datum<Inertia>? Inertia { get; init; }

    /// <summary>Sensor in the winding: none, ptc or switch.</summary>
    public Datum<string>? ThermalSensor { get; init; }

    /// <summary>Whether a mechanical brake is fitted.</summary>
    public Datum<bool>? Brake { get; init; }

    /// <summary>What was measured on the motor.</summary>
    public MotorMeasurements Measured { get; init; } = new();

    /// <summary>Maker's curve of continuous torque: frequency and torque as a fraction of rated.</summary>
    public IReadOnlyList<(ElectricalFrequency Frequency, Fraction Torque)>? ContinuousTorque { get; init; }

    /// <summary>Maker's figure for peak voltage at the terminals.</summary>
    public PeakVoltageSurvey? PeakVoltage { get; init; }
}

/// <summary>Peak voltage that the maker permits at the terminals, at a rise time.</summary>
public sealed record PeakVoltageSurvey(Datum<DcVoltage> Voltage, Datum<Duration> RiseTime);

/// <summary>A rating for another connection printed on the same plate.</summary>
public sealed record OtherRating(Datum<LineVoltage> Voltage, Datum<WindingConnection>? Connection, Datum<LineCurrent>? Current, Datum<ElectricalFrequency>? Frequency, Datum<ShaftPower>? Output, Datum<ShaftSpeed>? Speed);

/// <summary>The plate in the column of the connection in use.</summary>
public sealed record PlateSurvey
{
    /// <summary>IEC or NEMA.</summary>
    public Datum<string>? Standard { get; init; }

    /// <summary>Rated output.</summary>
    public required Datum<ShaftPower> Output { get; init; }

    /// <summary>Rated voltage.</summary>
    public required Datum<LineVoltage> Voltage { get; init; }

    /// <summary>Connection in use.</summary>
    public Datum<WindingConnection>? Connection { get; init; }

    /// <summary>Rated line current.</summary>
    public required Datum<LineCurrent> Current { get; init; }

    /// <summary>Rated frequency.</summary>
    public required Datum<ElectricalFrequency> Frequency { get; init; }

    /// <summary>Full-load speed.</summary>
    public required Datum<ShaftSpeed> Speed { get; init; }

    /// <summary>Number of poles as printed; any whole number, checks judge it.</summary>
    public Datum<int>? Poles { get; init; }

    /// <summary>Power factor.</summary>
    public Datum<PowerFactor>? PowerFactor { get; init; }

    /// <summary>Efficiency.</summary>
    public Datum<Efficiency>? Efficiency { get; init; }

    /// <summary>Efficiency class.</summary>
    public Datum<string>? EfficiencyClass { get; init; }

    /// <summary>Ratings for other connections.</summary>
    public IReadOnlyList<OtherRating> OtherRatings { get; init; } = [];

    /// <summary>Locked-rotor current over rated.</summary>
    public Datum<Ratio>? LockedRotorCurrent { get; init; }

    /// <summary>NEC code letter.</summary>
    public Datum<string>? CodeLetter { get; init; }

    /// <summary>Design letter.</summary>
    public Datum<string>? DesignLetter { get; init; }

    /// <summary>Locked-rotor torque over rated.</summary>
    public Datum<Ratio>? LockedRotorTorque { get; init; }

    /// <summary>Breakdown torque over rated.</summary>
    public Datum<Ratio>? BreakdownTorque { get; init; }

    /// <summary>Service factor.</summary>
    public Datum<Ratio>? ServiceFactor { get; init; }

    /// <summary>Insulation class.</summary>
    public Datum<string>? InsulationClass { get; init; }

    /// <summary>Cooling, an IC code.</summary>
    public Datum<string>? Cooling { get; init; }

    /// <summary>Duty, S1 to S10.</summary>
    public Datum<string>? Duty { get; init; }

    /// <summary>Marked for inverter duty.</summary>
    public Datum<bool>? InverterDuty { get; init; }
}

/// <summary>What was measured on the motor.</summary>
public sealed record MotorMeasurements
{
    /// <summary>Between two terminals.</summary>
    public Datum<Resistance>? WindingResistance { get; init; }

    /// <summary>Winding temperature at that measurement.</summary>
    public Datum<Temperature>? WindingTemperature { get; init; }

    /// <summary>At rated voltage and frequency.</summary>
    public Datum<LineCurrent>? NoLoadCurrent { get; init; }

    /// <summary>From auto-tune, per phase of the star equivalent.</summary>
    public Datum<Resistance>? StatorResistance { get; init; }

    /// <summary>From auto-tune, per phase of the star equivalent.</summary>
    public Datum<Inductance>? LeakageInductance { get; init; }

    /// <summary>From auto-tune.</summary>
    public Datum<LineCurrent>? MagnetizingCurrent { get; init; }
}

/// <summary>The drive.</summary>
public sealed record DriveSurvey
{
    /// <summary>Name of the drive profile.</summary>
    public required Datum<string> Profile { get; init; }

    /// <summary>Name of the size within the profile.</summary>
    public required Datum<string> Size { get; init; }

    /// <summary>Overload cycle: normal or heavy.</summary>
    public Datum<string>? OverloadCycle { get; init; }

    /// <summary>Switching frequency.</summary>
    public Datum<SwitchingFrequency>? SwitchingFrequency { get; init; }

    /// <summary>Braking resistor.</summary>
    public BrakingResistorSurvey? BrakingResistor { get; init; }

    /// <summary>Overrides the profile: DC choke.</summary>
    public Datum<Fraction>? DcChoke { get; init; }

    /// <summary>Overrides the profile: bus capacitance.</summary>
    public Datum<Capacitance>? BusCapacitance { get; init; }

    /// <summary>Overrides the profile: overvoltage trip.</summary>
    public Datum<DcVoltage>? OvervoltageTrip { get; init; }

    /// <summary>Overrides the profile: chopper level.</summary>
    public Datum<DcVoltage>? ChopperLevel { get; init; }

    /// <summary>Overrides the profile: rise time of the output.</summary>
    public Datum<Duration>? RiseTime { get; init; }

    /// <summary>Overrides the profile: largest output current.</summary>
    public Datum<LineCurrent>? CurrentLimit { get; init; }
}

/// <summary>A braking resistor.</summary>
public sealed record BrakingResistorSurvey(Datum<Resistance> Resistance, Datum<ElectricalPower>? ContinuousPower);

/// <summary>Cable from drive to motor.</summary>
public sealed record CableSurvey
{
    /// <summary>Length.</summary>
    public Datum<Length>? Length { get; init; }

    /// <summary>Conductor cross-section.</summary>
    public Datum<CrossSection>? Section { get; init; }

    /// <summary>Conductor: copper or aluminium.</summary>
    public Datum<string>? Conductor { get; init; }

    /// <summary>Whether screened.</summary>
    public Datum<bool>? Screened { get; init; }

    /// <summary>Surge impedance.</summary>
    public Datum<Resistance>? SurgeImpedance { get; init; }

    /// <summary>Speed of a wave.</summary>
    public Datum<LinearSpeed>? WaveSpeed { get; init; }

    /// <summary>none, reactor, dv-dt-filter or sine-filter.</summary>
    public Datum<string>? OutputDevice { get; init; }

    /// <summary>Whether there is a switch between drive and motor.</summary>
    public Datum<bool>? OutputSwitch { get; init; }
}

/// <summary>Shapes of load torque that a job names.</summary>
public enum LoadKind
{
    /// <summary>The same torque at every speed.</summary>
    Constant,

    /// <summary>Proportional to speed.</summary>
    Linear,

    /// <summary>With the square of speed.</summary>
    Quadratic,

    /// <summary>Inverse to speed.</summary>
    ConstantPower,

    /// <summary>A lifted mass.</summary>
    Hoisting,

    /// <summary>From a table.</summary>
    Table,
}

/// <summary>The driven machine.</summary>
public sealed record MachineSurvey
{
    /// <summary>Shape of the load torque.</summary>
    public required Datum<LoadKind> Load { get; init; }

    /// <summary>Torque at the machine's shaft.</summary>
    public Datum<Torque>? Torque { get; init; }

    /// <summary>Speed of the machine's shaft at which the torque holds.</summary>
    public Datum<ShaftSpeed>? AtSpeed { get; init; }

    /// <summary>Table of speed and torque at the machine's shaft.</summary>
    public IReadOnlyList<(ShaftSpeed Speed, Torque Torque)>? Curve { get; init; }

    /// <summary>Breakaway torque at the machine's shaft.</summary>
    public Datum<Torque>? BreakawayTorque { get; init; }

    /// <summary>Inertia at the machine's shaft.</summary>
    public Datum<Inertia>? Inertia { get; init; }

    /// <summary>Motor speed over machine speed.</summary>
    public Datum<Ratio>? GearRatio { get; init; }

    /// <summary>Efficiency of the gear when the motor drives.</summary>
    public Datum<Efficiency>? GearEfficiency { get; init; }

    /// <summary>Efficiency of the gear when the load drives.</summary>
    public Datum<Efficiency>? GearEfficiencyBack { get; init; }

    /// <summary>Hoisted mass.</summary>
    public Datum<Mass>? Mass { get; init; }

    /// <summary>Diameter of the drum.</summary>
    public Datum<Length>? DrumDiameter { get; init; }

    /// <summary>Largest permitted speed of the machine's shaft.</summary>
    public Datum<ShaftSpeed>? LargestSpeed { get; init; }
}

/// <summary>One part of a repeating duty cycle, at the machine's shaft.</summary>
public sealed record CyclePart(Datum<Duration> Time, Datum<ShaftSpeed> Speed, Datum<Torque> Torque);

/// <summary>How the set is to run.</summary>
public sealed record OperationSurvey
{
    /// <summary>Lowest running frequency.</summary>
    public Datum<ElectricalFrequency>? MinimumFrequency { get; init; }

    /// <summary>Highest frequency.</summary>
    public required Datum<ElectricalFrequency> MaximumFrequency { get; init; }

    /// <summary>From 0 to the highest frequency.</summary>
    public Datum<Duration>? Acceleration { get; init; }

    /// <summary>From the highest frequency to 0.</summary>
    public Datum<Duration>? Deceleration { get; init; }

    /// <summary>forward or both.</summary>
    public Datum<string>? Directions { get; init; }

    /// <summary>Stops in an hour.</summary>
    public Datum<Ratio>? StopsPerHour { get; init; }

    /// <summary>Repeating duty cycle.</summary>
    public IReadOnlyList<CyclePart> Cycle { get; init; } = [];

    /// <summary>Whether it starts by itself when power returns.</summary>
    public Datum<bool>? RestartAfterPowerLoss { get; init; }
}

/// <summary>Scaling of an analogue input.</summary>
public sealed record AnalogueSurvey(Datum<string>? Signal, Datum<ElectricalFrequency>? Low, Datum<ElectricalFrequency>? High, Datum<string>? OnLoss);

/// <summary>Where commands come from.</summary>
public sealed record ControlSurvey
{
    /// <summary>panel, terminals or bus.</summary>
    public Datum<string>? RunFrom { get; init; }

    /// <summary>maintained or pulse.</summary>
    public Datum<string>? RunContact { get; init; }

    /// <summary>panel, analogue-1, analogue-2, bus, fixed or process.</summary>
    public Datum<string>? ReferenceFrom { get; init; }

    /// <summary>First analogue input.</summary>
    public AnalogueSurvey? Analogue1 { get; init; }

    /// <summary>Second analogue input.</summary>
    public AnalogueSurvey? Analogue2 { get; init; }
}

/// <summary>The bus to the control system.</summary>
public sealed record BusSurvey
{
    /// <summary>modbus-tcp, modbus-rtu or none.</summary>
    public Datum<string>? Kind { get; init; }

    /// <summary>Unit on the bus.</summary>
    public Datum<int>? Address { get; init; }

    /// <summary>Bits per second.</summary>
    public Datum<int>? Baud { get; init; }

    /// <summary>none, even or odd.</summary>
    public Datum<string>? Parity { get; init; }

    /// <summary>Longest silence.</summary>
    public Datum<Duration>? TimeOut { get; init; }

    /// <summary>none, coast, ramp or hold.</summary>
    public Datum<string>? OnLoss { get; init; }
}

/// <summary>Where the set stands.</summary>
public sealed record PlaceSurvey
{
    /// <summary>Air around the drive.</summary>
    public Datum<Temperature>? Ambient { get; init; }

    /// <summary>Above the sea.</summary>
    public Datum<Length>? Altitude { get; init; }

    /// <summary>none, or the zone of an explosive atmosphere.</summary>
    public Datum<string>? ExplosiveZone { get; init; }
}
