using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the rating plate.</summary>
internal sealed class PlateSection(KeyList keys) : Section<PlateSurvey>(keys)
{
    private readonly Key<Datum<string>> standard = keys.Choice("standard", "IEC", "IEC or NEMA", Choices.Words("IEC", "NEMA"));
    private readonly Key<Datum<ShaftPower>> output = keys.Quantity<ShaftPower>("output", "7.5 kW", "rated output at the shaft", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<LineVoltage>> voltage = keys.Quantity<LineVoltage>("voltage", "400 V", "line to line, of the connection in use", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<WindingConnection>> connection = keys.Choice("connection", "delta", "in use: star or delta", Words.Connection);
    private readonly Key<Datum<LineCurrent>> current = keys.Quantity<LineCurrent>("current", "14.4 A", "in the line, of the connection in use", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ElectricalFrequency>> frequency = keys.Quantity<ElectricalFrequency>("frequency", "50 Hz", "rated frequency", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ShaftSpeed>> speed = keys.Quantity<ShaftSpeed>("speed", "1460 rpm", "at full load", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<int>> poles = keys.Whole("poles", "4", "poles, not pairs", 1, 200);
    private readonly Key<Datum<PowerFactor>> powerFactor = keys.Quantity<PowerFactor>("power-factor", "0.83", "at full load", Bound.PartOfWhole);
    private readonly Key<Datum<Efficiency>> efficiency = keys.Quantity<Efficiency>("efficiency", "90.4 %", "at full load", Bound.PartOfWhole);
    private readonly Key<Datum<string>> efficiencyClass = keys.Text("efficiency-class", "IE3", "class of IEC 60034-30-1");
    private readonly Key<IReadOnlyList<OtherRating>> otherRatings = keys.List("other-ratings", "of other connections, printed on the same plate", new OtherRatingSection(new()));
    private readonly Key<Datum<Ratio>> lockedRotorCurrent = keys.Quantity<Ratio>("locked-rotor-current", "7.2", "times rated", Bound.AboveZero);
    private readonly Key<Datum<string>> codeLetter = keys.Choice("code-letter", "J", "of NEC 430.7(B)", Choices.Words([.. "ABCDEFGHJKLMNPRSTUV".Select(c => c.ToString())]));
    private readonly Key<Datum<string>> designLetter = keys.Text("design-letter", "N", "of IEC 60034-12 or NEMA MG 1");
    private readonly Key<Datum<Ratio>> lockedRotorTorque = keys.Quantity<Ratio>("locked-rotor-torque", "2.3", "times rated", Bound.AboveZero);
    private readonly Key<Datum<Ratio>> breakdownTorque = keys.Quantity<Ratio>("breakdown-torque", "2.9", "times rated", Bound.AboveZero);
    private readonly Key<Datum<Ratio>> serviceFactor = keys.Quantity<Ratio>("service-factor", "1.0", "permitted load over rated output", Bound.AboveZero);
    private readonly Key<Datum<string>> insulationClass = keys.Text("insulation-class", "F", "thermal class of the insulation");
    private readonly Key<Datum<string>> cooling = keys.Text("cooling", "IC411", "IC code of IEC 60034-6");
    private readonly Key<Datum<string>> duty = keys.Text("duty", "S1", "S1 to S10 of IEC 60034-1");
    private readonly Key<Datum<bool>> inverterDuty = keys.Flag("inverter-duty", "yes", "marked for operation on an inverter");

    protected override PlateSurvey Build(Values v) => new()
    {
        Standard = v.Get(standard),
        Output = v.Needed(output),
        Voltage = v.Needed(voltage),
        Connection = v.Get(connection),
        Current = v.Needed(current),
        Frequency = v.Needed(frequency),
        Speed = v.Needed(speed),
        Poles = v.Get(poles),
        PowerFactor = v.Get(powerFactor),
        Efficiency = v.Get(efficiency),
        EfficiencyClass = v.Get(efficiencyClass),
        OtherRatings = v.Get(otherRatings) ?? [],
        LockedRotorCurrent = v.Get(lockedRotorCurrent),
        CodeLetter = v.Get(codeLetter),
        DesignLetter = v.Get(designLetter),
        LockedRotorTorque = v.Get(lockedRotorTorque),
        BreakdownTorque = v.Get(breakdownTorque),
        ServiceFactor = v.Get(serviceFactor),
        InsulationClass = v.Get(insulationClass),
        Cooling = v.Get(cooling),
        Duty = v.Get(duty),
        InverterDuty = v.Get(inverterDuty),
    };
}

/// <summary>Keys of a rating for another connection.</summary>
internal sealed class OtherRatingSection(KeyList keys) : Section<OtherRating>(keys)
{
    private readonly Key<Datum<LineVoltage>> voltage = keys.Quantity<LineVoltage>("voltage", "690 V", "line to line", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<WindingConnection>> connection = keys.Choice("connection", "star", "star or delta", Words.Connection);
    private readonly Key<Datum<LineCurrent>> current = keys.Quantity<LineCurrent>("current", "8.3 A", "in the line", Bound.AboveZero);
    private readonly Key<Datum<ElectricalFrequency>> frequency = keys.Quantity<ElectricalFrequency>("frequency", "50 Hz", "rated frequency", Bound.AboveZero);
    private readonly Key<Datum<ShaftPower>> output = keys.Quantity<ShaftPower>("output", "7.5 kW", "rated output", Bound.AboveZero);
    private readonly Key<Datum<ShaftSpeed>> speed = keys.Quantity<ShaftSpeed>("speed", "1460 rpm", "at full load", Bound.AboveZero);

    protected override OtherRating Build(Values v) =>
        new(v.Needed(voltage), v.Get(connection), v.Get(current), v.Get(frequency), v.Get(output), v.Get(speed));
}
