using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of where commands come from.</summary>
internal sealed class ControlSection(KeyList keys) : Section<ControlSurvey>(keys)
{
    private static readonly Setting[] Fixed =
    [
        Setting.FixedFrequency1, Setting.FixedFrequency2, Setting.FixedFrequency3, Setting.FixedFrequency4, Setting.FixedFrequency5, Setting.FixedFrequency6, Setting.FixedFrequency7,
    ];

    private readonly Key<Datum<string>> runFrom = keys.Choice("run-from", "bus", "where the run command comes from", Choices.Words("panel", "terminals", "bus"));
    private readonly Key<Datum<string>> runContact = keys.Choice("run-contact", "maintained", "maintained or pulse", Choices.Words("maintained", "pulse"));
    private readonly Key<Datum<string>> referenceFrom = keys.Choice("reference-from", "bus", "where the frequency comes from", Choices.Words("panel", "analogue-1", "analogue-2", "bus", "fixed", "process"));
    private readonly Key<Datum<int>> brakeRelay = keys.Whole("brake-relay", "3", "relay of the drive that the motor's mechanical brake is wired to; left out where the machine's own control opens it", 1, 3);
    private readonly Key<AnalogueSurvey> analogue1 = keys.Group("analogue-1", "first analogue input", new AnalogueSection(new()));
    private readonly Key<AnalogueSurvey> analogue2 = keys.Group("analogue-2", "second analogue input", new AnalogueSection(new()));
    private readonly IReadOnlyList<(Setting Setting, Key<Datum<ElectricalFrequency>> Key)> fixedFrequencies =
        [.. Fixed.Select((s, i) => (s, keys.Quantity<ElectricalFrequency>(s.Name, $"{35 - (5 * i)} Hz", i == 0 ? "what the drive runs at where the reference is fixed" : "another of the drive's fixed frequencies", Bound.Any)))];

    private readonly Key<TerminalsSurvey> terminals = keys.Group("terminals", "functions of what is wired to the drive's terminals", new TerminalsSection(new()));

    protected override ControlSurvey Build(Values v) => new()
    {
        RunFrom = v.Get(runFrom),
        RunContact = v.Get(runContact),
        ReferenceFrom = v.Get(referenceFrom),
        BrakeRelay = v.Get(brakeRelay),
        Analogue1 = v.Get(analogue1),
        Analogue2 = v.Get(analogue2),
        FixedFrequencies = [.. from stated in fixedFrequencies let frequency = v.Get(stated.Key) where frequency is not null select new FixedFrequencySurvey(stated.Setting, frequency)],
        Terminals = v.Get(terminals),
    };
}

/// <summary>Keys of an analogue input.</summary>
internal sealed class AnalogueSection(KeyList keys) : Section<AnalogueSurvey>(keys)
{
    private static readonly string[] Dots = ["..", "-", "–", "…", " - ", " .. ", "..."];
    private static readonly string[] Spaces = [" ", ""];

    private static readonly Choices<string> Signals = new(
        [("0..10 V", "0..10 V"), ("0..20 mA", "0..20 mA"), ("4..20 mA", "4..20 mA")],
        [.. new[] { "0..10 V", "0..20 mA", "4..20 mA" }.SelectMany(s => Variants(s).Select(v => (v, s)))]);

    private readonly Key<Datum<string>> signal = keys.Choice("signal", "4..20 mA", "kind of signal", Signals);
    private readonly Key<Datum<ElectricalFrequency>> low = keys.Quantity<ElectricalFrequency>("low", "0 Hz", "at the low end of the signal", Bound.Any);
    private readonly Key<Datum<ElectricalFrequency>> high = keys.Quantity<ElectricalFrequency>("high", "50 Hz", "at the high end of the signal", Bound.Any);
    private readonly Key<Datum<string>> onLoss = keys.Choice("on-loss", "stop", "when the signal is lost", Choices.Words("stop", "hold", "fixed", "off"));

    protected override AnalogueSurvey Build(Values v) => new(v.Get(signal), v.Get(low), v.Get(high), v.Get(onLoss));

    // 4-20 mA, 4…20 mA, 4..20mA
    private static IEnumerable<string> Variants(string signal) =>
        from dots in Dots
        from space in Spaces
        select signal.Replace("..", dots, StringComparison.Ordinal).Replace(" mA", space + "mA", StringComparison.Ordinal).Replace(" V", space + "V", StringComparison.Ordinal);
}
