using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the cable from drive to motor.</summary>
internal sealed class CableSection(KeyList keys) : Section<CableSurvey>(keys)
{
    private readonly Key<Datum<Length>> length = keys.Quantity<Length>("length", "65 m", "from drive to motor", Bound.Any);
    private readonly Key<Datum<CrossSection>> section = keys.Quantity<CrossSection>("section", "6 mm²", "of one conductor; or 10 AWG", Bound.AboveZero);
    private readonly Key<Datum<string>> conductor = keys.Choice("conductor", "copper", "copper or aluminium", Words.Conductors);
    private readonly Key<Datum<bool>> screened = keys.Flag("screened", "yes", "whether the cable has a screen");
    private readonly Key<Datum<Resistance>> surgeImpedance = keys.Quantity<Resistance>("surge-impedance", "80 ohm", "from the maker", Bound.AboveZero);
    private readonly Key<Datum<LinearSpeed>> waveSpeed = keys.Quantity<LinearSpeed>("wave-speed", "150 m/µs", "from the maker", Bound.AboveZero);
    private readonly Key<Datum<string>> outputDevice = keys.Choice("output-device", "none", "at the drive's output", Choices.Words("none", "reactor", "dv-dt-filter", "sine-filter"));
    private readonly Key<Datum<bool>> outputSwitch = keys.Flag("output-switch", "no", "switch or contactor between drive and motor");

    protected override CableSurvey Build(Values v) => new()
    {
        Length = v.Get(length),
        Section = v.Get(section),
        Conductor = v.Get(conductor),
        Screened = v.Get(screened),
        SurgeImpedance = v.Get(surgeImpedance),
        WaveSpeed = v.Get(waveSpeed),
        OutputDevice = v.Get(outputDevice),
        OutputSwitch = v.Get(outputSwitch),
    };
}
