using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Settings;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the drive's terminals: each is called as its setting, and takes the setting's choices.</summary>
internal sealed class TerminalsSection(KeyList keys) : Section<TerminalsSurvey>(keys)
{
    private static readonly (Setting Terminal, string Key, string Example, string About)[] Known =
    [
        (Setting.DigitalInput1, "digital-input-1", "run-forward", "function of a digital input"),
        (Setting.DigitalInput2, "digital-input-2", "enable", "function of a digital input"),
        (Setting.DigitalInput3, "digital-input-3", "trip-reset", "function of a digital input"),
        (Setting.DigitalInput4, "digital-input-4", "external-trip", "function of a digital input"),
        (Setting.DigitalInput5, "digital-input-5", "none", "function of a digital input"),
        (Setting.DigitalInput6, "digital-input-6", "none", "function of a digital input"),
        (Setting.Relay1, "relay-1", "trip", "function of a relay"),
        (Setting.Relay2, "relay-2", "running", "function of a relay"),
        (Setting.Relay3, "relay-3", "none", "function of a relay"),
        (Setting.AnalogueOutput1Function, "analogue-output-1", "output-frequency", "what an analogue output shows"),
        (Setting.AnalogueOutput2Function, "analogue-output-2", "output-current", "what an analogue output shows"),
    ];

    private readonly IReadOnlyList<(Setting Terminal, Key<Datum<string>> Key)> terminals =
        [.. Known.Select(k => (k.Terminal, keys.Choice(k.Key, k.Example, k.About, Choices.Words([.. ((SettingForm.OneOf)k.Terminal.Form).Choices]))))];

    protected override TerminalsSurvey Build(Values v) =>
        new([.. from terminal in terminals let function = v.Get(terminal.Key) where function is not null select new TerminalFunction(terminal.Terminal, function)]);
}
