using Runup.Engineering.Drives;
using Runup.Engineering.Standards;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>The settings by which the drive's control works, each with a value.</summary>
/// <remarks>Make-independent: what a make can't set keeps the default that <see cref="From"/> states.</remarks>
public sealed record ControlSettings
{
    /// <summary>Rated output of the motor.</summary>
    public required ShaftPower MotorRatedPower { get; init; }

    /// <summary>Rated voltage of the motor.</summary>
    public required LineVoltage MotorRatedVoltage { get; init; }

    /// <summary>Rated current of the motor.</summary>
    public required LineCurrent MotorRatedCurrent { get; init; }

    /// <summary>Rated frequency of the motor.</summary>
    public required ElectricalFrequency MotorRatedFrequency { get; init; }

    /// <summary>Full-load speed of the motor; null where it was not set.</summary>
    public ShaftSpeed? MotorRatedSpeed { get; init; }

    /// <summary>Full-load power factor of the motor.</summary>
    public required PowerFactor MotorPowerFactor { get; init; }

    /// <summary>Where the voltage reaches <see cref="MaximumOutputVoltage"/>.</summary>
    public required ElectricalFrequency BaseFrequency { get; init; }

    /// <summary>Output voltage at and above the base frequency.</summary>
    public required LineVoltage MaximumOutputVoltage { get; init; }

    /// <summary>Highest output frequency.</summary>
    public required ElectricalFrequency MaximumFrequency { get; init; }

    /// <summary>Lowest frequency while running.</summary>
    public required ElectricalFrequency MinimumFrequency { get; init; }

    /// <summary>Shape of voltage against frequency.</summary>
    public required VoltageShape VoltageShape { get; init; }

    /// <summary>Of rated voltage, added at 0 Hz, falling to 0 at base frequency.</summary>
    public required Fraction TorqueBoost { get; init; }

    /// <summary>From 0 to maximum frequency.</summary>
    public required Duration Acceleration { get; init; }

    /// <summary>From maximum frequency to 0.</summary>
    public required Duration Deceleration { get; init; }

    /// <summary>From maximum frequency to 0 in a quick stop.</summary>
    public required Duration QuickStop { get; init; }

    /// <summary>Highest output current, motoring and regenerating.</summary>
    public required LineCurrent CurrentLimit { get; init; }

    /// <summary>Current of the motor's thermal model.</summary>
    public required LineCurrent MotorOverloadCurrent { get; init; }

    /// <summary>Longest time to trip at 7.2 times that current from cold.</summary>
    public required Duration OverloadTripTime { get; init; }

    /// <summary>Stretch the deceleration as the DC bus rises.</summary>
    public required bool OvervoltageControl { get; init; }

    /// <summary>The braking chopper is in use.</summary>
    public required bool BrakingChopper { get; init; }

    /// <summary>1 is full rated slip at rated torque.</summary>
    public required Fraction SlipCompensation { get; init; }

    /// <summary>On the voltage curve the frequency yields by this share of the rated slip to a quick change of the active current by its rated value; zero: not at all.</summary>
    public Fraction SwingDamping { get; init; }

    /// <summary>How a stop is made.</summary>
    public required StoppingMethod StoppingMethod { get; init; }

    /// <summary>Of motor rated current.</summary>
    public required Fraction DcBrakingCurrent { get; init; }

    /// <summary>Length of DC braking.</summary>
    public required Duration DcBrakingTime { get; init; }

    /// <summary>DC braking begins below this frequency.</summary>
    public required ElectricalFrequency DcBrakingFrequency { get; init; }

    /// <summary>The motor may also run in reverse.</summary>
    public required bool ReversePermitted { get; init; }

    /// <summary>Runs again by itself when power returns while the run order stands.</summary>
    public required bool RestartAfterPowerLoss { get; init; }

    /// <summary>Rounding at each end of a ramp; zero is none.</summary>
    public Duration SCurve { get; init; }

    /// <summary>From 0 to maximum frequency on the second ramps.</summary>
    public Duration? SecondAcceleration { get; init; }

    /// <summary>From maximum frequency to 0 on the second ramps.</summary>
    public Duration? SecondDeceleration { get; init; }

    /// <summary>Frequencies at which the motor does not stay.</summary>
    public IReadOnlyList<SkipBand> SkipBands { get; init; } = [];

    /// <summary>A start looks for a motor that already turns, and catches it.</summary>
    public bool FlyingRestart { get; init; }

    /// <summary>While the supply is gone the load's energy keeps the DC bus up.</summary>
    public bool UndervoltageRideThrough { get; init; }

    /// <summary>The motor is controlled by its flux and torque instead of by a voltage curve.</summary>
    public bool Vector { get; init; }

    /// <summary>The encoder by which flux and torque are controlled; null: without one.</summary>
    public EncoderSettings? Encoder { get; init; }

    /// <summary>Circuit that an auto-tune found; null: reckoned from the motor's rated values.</summary>
    public TunedMotor? Tuned { get; init; }

    /// <summary>What watches over the set besides the drive's own limits.</summary>
    public ProtectionSettings Protection { get; init; } = new();

    /// <summary>How a relay opens a mechanical brake; null where none does, so that a brake is the machine's own control's.</summary>
    public BrakeSettings? Brake { get; init; }

    /// <summary>The control's settings from make-independent ones.</summary>
    /// <remarks>
    /// What is missing: motor voltage 400 V, or 230 V, whichever the drive's supply range holds, else its lower end; power and current the drive's own;
    /// 50 Hz; power factor 0.8; base frequency and output voltage the motor's; maximum frequency the base frequency; minimum 0; linear curve
    /// with 2 % boost (points are taken as linear); ramps 5 s; quick stop the deceleration, at most 2 s; current limit 150 % of motor current, and never above the drive's peak current;
    /// overload current the motor's, class 10; overvoltage control on; chopper off; no slip compensation; swings damped by 0.25; stop by ramp;
    /// DC braking 50 %, 1 s, below 3 Hz; forward only; no restart; no S-curve, second ramps as the first, no skipped bands (width 2 Hz where a centre alone is set),
    /// no flying restart, no ride-through, V/f. Quick stop is no setting of the vocabulary: set it with <c>with</c>.
    /// </remarks>
    public static ControlSettings From(SettingSet settings, DriveRating drive)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(drive);
        var frequencyHz = settings.Number(Setting.MotorRatedFrequency) ?? settings.Number(Setting.BaseFrequency) ?? 50;
        var baseHz = settings.Number(Setting.BaseFrequency) ?? frequencyHz;
        var motorV = settings.Number(Setting.MotorRatedVoltage) ?? UsualVoltage(drive);
        var motorA = settings.Number(Setting.MotorRatedCurrent) ?? drive.Overloads[0].Current.Amperes;
        var limitA = settings.Number(Setting.CurrentLimit) ?? (1.5 * motorA);
        var decelerationS = settings.Number(Setting.DecelerationTime) ?? 5;
        return new ControlSettings
        {
            MotorRatedPower = ShaftPower.FromWatts(settings.Number(Setting.MotorRatedPower) ?? drive.NominalPower.Watts),
            MotorRatedVoltage = LineVoltage.FromVolts(motorV),
            MotorRatedCurrent = LineCurrent.FromAmperes(motorA),
            MotorRatedFrequency = ElectricalFrequency.FromHertz(frequencyHz),
            MotorRatedSpeed = settings.Number(Setting.MotorRatedSpeed) is { } speed ? ShaftSpeed.FromRadiansPerSecond(speed) : null,
            MotorPowerFactor = PowerFactor.FromRatio(settings.Number(Setting.MotorPowerFactor) ?? 0.8),
            BaseFrequency = ElectricalFrequency.FromHertz(baseHz),
            MaximumOutputVoltage = LineVoltage.FromVolts(settings.Number(Setting.MaximumOutputVoltage) ?? motorV),
            MaximumFrequency = ElectricalFrequency.FromHertz(settings.Number(Setting.MaximumFrequency) ?? baseHz),
            MinimumFrequency = ElectricalFrequency.FromHertz(settings.Number(Setting.MinimumFrequency) ?? 0),
            VoltageShape = settings.Choice(Setting.VfCharacteristic) is "quadratic" ? VoltageShape.Quadratic : VoltageShape.Linear,
            TorqueBoost = Fraction.FromRatio(settings.Number(Setting.TorqueBoost) ?? 0.02),
            Acceleration = Duration.FromSeconds(settings.Number(Setting.AccelerationTime) ?? 5),
            Deceleration = Duration.FromSeconds(decelerationS),
            QuickStop = Duration.FromSeconds(Math.Min(decelerationS, 2)),
            CurrentLimit = LineCurrent.FromAmperes(Math.Min(limitA, drive.PeakCurrent.Amperes)),
            MotorOverloadCurrent = LineCurrent.FromAmperes(settings.Number(Setting.MotorOverloadCurrent) ?? motorA),
            OverloadTripTime = TripClass.Of(settings.Choice(Setting.OverloadTripClass) ?? "10")!.Within,
            OvervoltageControl = settings.Choice(Setting.OvervoltageControl) is not "off",
            BrakingChopper = settings.Choice(Setting.BrakingChopper) is "on",
            SlipCompensation = Fraction.FromRatio(settings.Number(Setting.SlipCompensation) ?? 0),
            SwingDamping = Fraction.FromRatio(UsualSwingDamping),
            StoppingMethod = settings.Choice(Setting.StoppingMethod) switch
            {
                "coast" => StoppingMethod.Coast,
                "dc-braking" => StoppingMethod.DcBraking,
                _ => StoppingMethod.Ramp,
            },
            DcBrakingCurrent = Fraction.FromRatio(settings.Number(Setting.DcBrakingCurrent) ?? 0.5),
            DcBrakingTime = Duration.FromSeconds(settings.Number(Setting.DcBrakingTime) ?? 1),
            DcBrakingFrequency = ElectricalFrequency.FromHertz(settings.Number(Setting.DcBrakingFrequency) ?? 3),
            ReversePermitted = settings.Choice(Setting.PermittedDirection) is "both",
            RestartAfterPowerLoss = settings.Choice(Setting.RestartAfterPowerLoss) is "on",
            SCurve = Duration.FromSeconds(settings.Number(Setting.SCurve) ?? 0),
            SecondAcceleration = Optional(settings.Number(Setting.SecondAccelerationTime)),
            SecondDeceleration = Optional(settings.Number(Setting.SecondDecelerationTime)),
            SkipBands = SkipBand.From(settings),
            FlyingRestart = settings.Choice(Setting.FlyingRestart) is "on",
            UndervoltageRideThrough = settings.Choice(Setting.UndervoltageRideThrough) is "on",
            Vector = settings.Choice(Setting.ControlMethod) is "sensorless-vector" or "encoder-vector",
            Encoder = EncoderSettings.From(settings, ElectricalFrequency.FromHertz(frequencyHz)),
            Protection = ProtectionSettings.From(settings),
            Brake = BrakeSettings.From(settings, motorA),
        };
    }

    // Motors of 0.75 to 75 kW stand still with half as much at every frequency, empty and loaded (common practice, no source).
    private const double UsualSwingDamping = 0.25;

    private static Duration? Optional(double? seconds) => seconds is { } s ? Duration.FromSeconds(s) : null;

    private static double UsualVoltage(DriveRating drive)
    {
        var (low, high) = (drive.SupplyVoltage.Low.Volts, drive.SupplyVoltage.High.Volts);
        return Array.Find([400.0, 230.0], v => v >= low && v <= high) is var usual and > 0 ? usual : low;
    }
}

/// <summary>How the drive makes a stop.</summary>
public enum StoppingMethod
{
    /// <summary>On the deceleration ramp.</summary>
    Ramp,

    /// <summary>Output off at once.</summary>
    Coast,

    /// <summary>On the ramp to a low frequency, then by direct current.</summary>
    DcBraking,
}
