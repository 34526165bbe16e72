using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Curves;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the motor.</summary>
internal sealed class MotorSection(KeyList keys) : Section<MotorSurvey>(keys)
{
    private readonly Key<Datum<MotorKind>> kind = keys.Choice("kind", "induction", "kind of motor", Words.MotorKinds);
    private readonly Key<Datum<int>> count = keys.Whole("count", "1", "motors on the one drive, each with such a machine", 1, 100);
    private readonly Key<PlateSurvey> plate = keys.Part("plate", "rating plate, the column of the connection in use", new PlateSection(new()), Need.Yes);
    private readonly Key<Datum<Inertia>> inertia = keys.Quantity<Inertia>("inertia", "0.035 kg·m²", "of the rotor", Bound.AboveZero);
    private readonly Key<Datum<string>> thermalSensor = keys.Choice("thermal-sensor", "ptc", "in the winding", Choices.Words("none", "ptc", "switch"));
    private readonly Key<Datum<bool>> brake = keys.Flag("brake", "no", "mechanical brake on the motor");
    private readonly Key<MotorMeasurements> measured = keys.Part("measured", "what was measured on the motor", new MeasurementsSection(new()));
    private readonly Key<Curve<(ElectricalFrequency Frequency, Fraction Torque)>> continuousTorque = keys.Add(new CurveKey<(ElectricalFrequency Frequency, Fraction Torque)>(
        "continuous-torque",
        "fan.csv",
        "maker's curve of continuous torque: a CSV file with the columns frequency_Hz, torque_percent",
        new CurveColumns("frequency_Hz", "torque_percent", YIsNeverNegative: true),
        (hertz, percent) => (ElectricalFrequency.FromSi(hertz), Fraction.FromPercent(percent)),
        Need.No));

    private readonly Key<PeakVoltageSurvey> peakVoltage = keys.Group("peak-voltage", "that the maker permits at the terminals", new PeakVoltageSection(new()));

    protected override MotorSurvey Build(Values v) => new()
    {
        Kind = v.Get(kind) ?? new(MotorKind.Induction, Provenance.Assumed),
        Count = v.Get(count),
        Plate = v.Needed(plate),
        Inertia = v.Get(inertia),
        ThermalSensor = v.Get(thermalSensor),
        Brake = v.Get(brake),
        Measured = v.Needed(measured),
        ContinuousTorque = v.Get(continuousTorque)?.Points,
        ContinuousTorqueFile = v.Get(continuousTorque)?.File,
        PeakVoltage = v.Get(peakVoltage),
    };
}

/// <summary>Keys of what was measured on the motor.</summary>
internal sealed class MeasurementsSection(KeyList keys) : Section<MotorMeasurements>(keys)
{
    private readonly Key<Datum<Resistance>> windingResistance = keys.Quantity<Resistance>("winding-resistance", "0.70 ohm", "between two terminals", Bound.AboveZero);
    private readonly Key<Datum<Temperature>> windingTemperature = keys.Quantity<Temperature>("winding-temperature", "21 °C", "at that measurement", Bound.Any);
    private readonly Key<Datum<LineCurrent>> noLoadCurrent = keys.Quantity<LineCurrent>("no-load-current", "6.4 A", "at rated voltage and frequency", Bound.AboveZero);
    private readonly Key<Datum<Resistance>> statorResistance = keys.Quantity<Resistance>("stator-resistance", "0.36 ohm", "from auto-tune, per phase of the star equivalent", Bound.AboveZero);
    private readonly Key<Datum<Inductance>> leakageInductance = keys.Quantity<Inductance>("leakage-inductance", "6.6 mH", "from auto-tune, per phase of the star equivalent", Bound.AboveZero);
    private readonly Key<Datum<LineCurrent>> magnetizingCurrent = keys.Quantity<LineCurrent>("magnetizing-current", "6.2 A", "from auto-tune", Bound.AboveZero);

    protected override MotorMeasurements Build(Values v) => new()
    {
        WindingResistance = v.Get(windingResistance),
        WindingTemperature = v.Get(windingTemperature),
        NoLoadCurrent = v.Get(noLoadCurrent),
        StatorResistance = v.Get(statorResistance),
        LeakageInductance = v.Get(leakageInductance),
        MagnetizingCurrent = v.Get(magnetizingCurrent),
    };
}

/// <summary>Keys of the peak voltage that the maker permits.</summary>
internal sealed class PeakVoltageSection(KeyList keys) : Section<PeakVoltageSurvey>(keys)
{
    private readonly Key<Datum<DcVoltage>> voltage = keys.Quantity<DcVoltage>("voltage", "1600 V", "peak, line to line", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<Duration>> riseTime = keys.Quantity<Duration>("rise-time", "0.1 µs", "at which it holds", Bound.AboveZero, Need.Yes);

    protected override PeakVoltageSurvey Build(Values v) => new(v.Needed(voltage), v.Needed(riseTime));
}
