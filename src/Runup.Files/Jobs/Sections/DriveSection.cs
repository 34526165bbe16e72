using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the drive.</summary>
internal sealed class DriveSection(KeyList keys) : Section<DriveSurvey>(keys)
{
    private readonly Key<Datum<string>> profile = keys.Text("profile", "tern", "name of the drive's profile", Need.Yes);
    private readonly Key<Datum<string>> size = keys.Text("size", "\"7.5-400\"", "one of the profile's sizes", Need.Yes);
    private readonly Key<Datum<string>> region = keys.Text("region", "60-hz", "one of the profile's regions, if it tells them apart; without, its first");
    private readonly Key<Datum<string>> overloadCycle = keys.Choice("overload-cycle", "normal", "normal or heavy", Choices.Words("normal", "heavy"));
    private readonly Key<Datum<SwitchingFrequency>> switchingFrequency = keys.Quantity<SwitchingFrequency>("switching-frequency", "4 kHz", "of the inverter", Bound.AboveZero);
    private readonly Key<BrakingResistorSurvey> brakingResistor = keys.Group("braking-resistor", "at the drive's chopper", new BrakingResistorSection(new()));
    private readonly Key<Datum<Fraction>> dcChoke = keys.Quantity<Fraction>("dc-choke", "4 %", "in place of the profile's", Bound.Any);
    private readonly Key<Datum<Capacitance>> busCapacitance = keys.Quantity<Capacitance>("bus-capacitance", "540 µF", "in place of the profile's", Bound.AboveZero);
    private readonly Key<Datum<DcVoltage>> overvoltageTrip = keys.Quantity<DcVoltage>("overvoltage-trip", "820 V", "in place of the profile's", Bound.AboveZero);
    private readonly Key<Datum<DcVoltage>> chopperLevel = keys.Quantity<DcVoltage>("chopper-level", "760 V", "in place of the profile's", Bound.AboveZero);
    private readonly Key<Datum<Duration>> riseTime = keys.Quantity<Duration>("rise-time", "0.1 µs", "of the output voltage, in place of the profile's", Bound.AboveZero);
    private readonly Key<Datum<LineCurrent>> currentLimit = keys.Quantity<LineCurrent>("current-limit", "20 A", "largest output current, in place of the profile's", Bound.AboveZero);

    protected override DriveSurvey Build(Values v) => new()
    {
        Profile = v.Needed(profile),
        Size = v.Needed(size),
        Region = v.Get(region),
        OverloadCycle = v.Get(overloadCycle),
        SwitchingFrequency = v.Get(switchingFrequency),
        BrakingResistor = v.Get(brakingResistor),
        DcChoke = v.Get(dcChoke),
        BusCapacitance = v.Get(busCapacitance),
        OvervoltageTrip = v.Get(overvoltageTrip),
        ChopperLevel = v.Get(chopperLevel),
        RiseTime = v.Get(riseTime),
        CurrentLimit = v.Get(currentLimit),
    };
}

/// <summary>Keys of a braking resistor.</summary>
internal sealed class BrakingResistorSection(KeyList keys) : Section<BrakingResistorSurvey>(keys)
{
    private readonly Key<Datum<Resistance>> resistance = keys.Quantity<Resistance>("resistance", "70 ohm", "of the resistor", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ElectricalPower>> continuousPower = keys.Quantity<ElectricalPower>("continuous-power", "300 W", "that it can carry for ever", Bound.AboveZero);

    protected override BrakingResistorSurvey Build(Values v) => new(v.Needed(resistance), v.Get(continuousPower));
}
