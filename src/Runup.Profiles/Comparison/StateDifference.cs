using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Something that two states hold differently: a setting, or a parameter that means none that both know.</summary>
public sealed record StateDifference
{
    /// <summary>The setting that differs; null where only the parameter can be told.</summary>
    public Setting? Setting { get; init; }

    /// <summary>The one state's side.</summary>
    public required StateSide Left { get; init; }

    /// <summary>The other state's side.</summary>
    public required StateSide Right { get; init; }

    /// <summary>Whether the displays differ and yet say the same, such as an output in kW and in hp.</summary>
    public bool SaysTheSame { get; init; }
}

/// <summary>One state's side of a difference.</summary>
/// <param name="Parameters">The parameters that carry it there.</param>
/// <param name="Text">What stands there, with its unit; null where nothing is known.</param>
/// <param name="Value">Its meaning as a setting; null where it has none.</param>
public sealed record StateSide(IReadOnlyList<Parameter> Parameters, string? Text, SettingValue? Value);
