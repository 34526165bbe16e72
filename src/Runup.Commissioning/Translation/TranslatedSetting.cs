using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Translation;

/// <summary>What becomes of a setting, or of a parameter without meaning, on another drive.</summary>
public sealed record TranslatedSetting
{
    /// <summary>The setting; null for a parameter of the old drive that means none.</summary>
    public Setting? Setting { get; init; }

    /// <summary>What the old drive's parameters hold; empty where it has none.</summary>
    public IReadOnlyList<TranslatedParameter> Old { get; init; } = [];

    /// <summary>What the new drive's parameters are to hold; empty where it has none.</summary>
    public IReadOnlyList<TranslatedParameter> New { get; init; } = [];

    /// <summary>What becomes of it.</summary>
    public required Fate Fate { get; init; }

    /// <summary>What a person should know, or null.</summary>
    public string? Note { get; init; }

    /// <summary>What the old drive shows; null where it has none.</summary>
    public string? OldText => Text(Old);

    /// <summary>What the new drive is to show; null where it has none.</summary>
    public string? NewText => Text(New);

    private static string? Text(IReadOnlyList<TranslatedParameter> parameters) => parameters.Count == 0 ? null : string.Join(", ", parameters.Select(p => p.Text ?? "choose"));
}

/// <summary>A parameter with what its display shows.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Text">What the display shows, with its unit; null where a person has to choose.</param>
public sealed record TranslatedParameter(Parameter Parameter, string? Text);

/// <summary>What becomes of a setting on another drive.</summary>
public enum Fate
{
    /// <summary>One parameter says the same.</summary>
    Kept,

    /// <summary>Said otherwise: worked out with other parameters, or chosen together with other settings.</summary>
    Converted,

    /// <summary>The new drive has no parameter for it.</summary>
    NotOffered,

    /// <summary>The new drive cannot say just this, or says several things by it: a person has to decide.</summary>
    NeedsDecision,

    /// <summary>The new drive asks for it, and the old one has no counterpart.</summary>
    Required,
}

/// <summary>The fates' names in JSON.</summary>
public static class FateNames
{
    /// <summary>The fate's name as a mapping, such as <c>not-offered</c>.</summary>
    public static string Name(this Fate fate) => fate switch
    {
        Fate.Kept => Mapping.Direct.Name(),
        Fate.Converted => Mapping.Converted.Name(),
        Fate.NotOffered => Mapping.NotOffered.Name(),
        Fate.NeedsDecision => Mapping.NeedsChoice.Name(),
        Fate.Required => "new",
        _ => throw new ArgumentOutOfRangeException(nameof(fate), fate, null),
    };
}
