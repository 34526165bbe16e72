using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the supply at the drive.</summary>
internal sealed class SupplySection(KeyList keys) : Section<SupplySurvey>(keys)
{
    private readonly Key<Datum<LineVoltage>> voltage = keys.Quantity<LineVoltage>("voltage", "400 V", "line to line; of a single-phase supply, between its two conductors", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ElectricalFrequency>> frequency = keys.Quantity<ElectricalFrequency>("frequency", "50 Hz", "of the supply", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<int>> phases = keys.Datum("phases", "3", "1 or 3", new ChoiceForm<int>(Choices.Of(("3", 3), ("1", 1))), null);
    private readonly Key<Datum<ApparentPower>> faultLevel = keys.Quantity<ApparentPower>("fault-level", "12 MVA", "at the drive; or say the transformer or generator that feeds it", Bound.AboveZero);
    private readonly Key<TransformerSurvey> transformer = keys.Group("transformer", "that feeds the drive", new TransformerSection(new()));
    private readonly Key<GeneratorSurvey> generator = keys.Group("generator", "that feeds the drive", new GeneratorSection(new()));
    private readonly Key<CouplingPointSurvey> couplingPoint = keys.Group("coupling-point", "of the installation with the public network, for IEEE 519 only", new CouplingPointSection(new()));
    private readonly Key<Datum<Fraction>> unbalance = keys.Quantity<Fraction>("unbalance", "0.5 %", "of the voltage", Bound.Any);
    private readonly Key<Datum<string>> earthing = keys.Choice("earthing", "TN-S", "system of earthing", Words.Earthing);
    private readonly Key<Datum<bool>> filter = keys.Flag("filter", "no", "radio-interference filter in the drive");
    private readonly Key<ResidualCurrentDeviceSurvey> residualCurrentDevice = keys.Group("residual-current-device", "upstream of the drive", new ResidualCurrentDeviceSection(new()));
    private readonly Key<Datum<LineReactor>> lineReactor = keys.Datum("line-reactor", "3 %", "before the drive: part of its base impedance, or an inductance such as 0.8 mH", new LineReactorForm(), null);

    protected override SupplySurvey Build(Values v) => new()
    {
        Voltage = v.Needed(voltage),
        Frequency = v.Needed(frequency),
        Phases = v.Get(phases),
        FaultLevel = v.Get(faultLevel),
        Transformer = v.Get(transformer),
        Generator = v.Get(generator),
        CouplingPoint = v.Get(couplingPoint),
        Unbalance = v.Get(unbalance),
        Earthing = v.Get(earthing),
        Filter = v.Get(filter),
        ResidualCurrentDevice = v.Get(residualCurrentDevice),
        LineReactorFraction = v.Get(lineReactor) is { Value: LineReactor.Part part } p ? p.As(part.Fraction) : null,
        LineReactorInductance = v.Get(lineReactor) is { Value: LineReactor.Coil coil } c ? c.As(coil.Inductance) : null,
    };

    protected override void Check(Values v, YamlMap map, Desk desk)
    {
        if (v.Has(faultLevel) && (map.Find(transformer.Name) ?? map.Find(generator.Name)) is { } other)
        {
            desk.Note(other, $"stands beside `{faultLevel.Name}`, which tells the same for the drive itself");
        }
    }
}

/// <summary>Keys of a feeding transformer.</summary>
internal sealed class TransformerSection(KeyList keys) : Section<TransformerSurvey>(keys)
{
    private readonly Key<Datum<ApparentPower>> rating = keys.Quantity<ApparentPower>("rating", "630 kVA", "rated power", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<Fraction>> impedance = keys.Quantity<Fraction>("impedance", "4 %", "short-circuit impedance", Bound.AboveZero, Need.Yes);

    protected override TransformerSurvey Build(Values v) => new(v.Needed(rating), v.Needed(impedance));
}

/// <summary>Keys of a feeding generator.</summary>
internal sealed class GeneratorSection(KeyList keys) : Section<GeneratorSurvey>(keys)
{
    private readonly Key<Datum<ApparentPower>> rating = keys.Quantity<ApparentPower>("rating", "200 kVA", "rated power", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<Fraction>> reactance = keys.Quantity<Fraction>("subtransient-reactance", "15 %", "on its own rating", Bound.AboveZero, Need.Yes);

    protected override GeneratorSurvey Build(Values v) => new(v.Needed(rating), v.Needed(reactance));
}

/// <summary>Keys of the coupling point.</summary>
internal sealed class CouplingPointSection(KeyList keys) : Section<CouplingPointSurvey>(keys)
{
    private readonly Key<Datum<ApparentPower>> faultLevel = keys.Quantity<ApparentPower>("fault-level", "150 MVA", "at the coupling point", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<LineCurrent>> demandCurrent = keys.Quantity<LineCurrent>("demand-current", "400 A", "of the whole installation", Bound.AboveZero, Need.Yes);

    protected override CouplingPointSurvey Build(Values v) => new(v.Needed(faultLevel), v.Needed(demandCurrent));
}

/// <summary>Keys of a residual-current device.</summary>
internal sealed class ResidualCurrentDeviceSection(KeyList keys) : Section<ResidualCurrentDeviceSurvey>(keys)
{
    private readonly Key<Datum<LineCurrent>> rating = keys.Quantity<LineCurrent>("rating", "300 mA", "rated residual current", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<string>> type = keys.Choice("type", "B", "AC, A, F, B or B+", Choices.Words("AC", "A", "F", "B", "B+"));

    protected override ResidualCurrentDeviceSurvey Build(Values v) => new(v.Needed(rating), v.Get(type));
}
