using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Survey;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>What the first run is about.</summary>
public sealed record FirstRunTask
{
    /// <summary>The set as surveyed.</summary>
    public required Job Job { get; init; }

    /// <summary>The drive's profile.</summary>
    public required DriveProfile Profile { get; init; }

    /// <summary>Its size.</summary>
    public required DriveSize Size { get; init; }

    /// <summary>The settings that the drive is to keep.</summary>
    public required SettingSet Plan { get; init; }

    /// <summary>The same as entered into the drive.</summary>
    public required EntrySheet Sheet { get; init; }

    /// <summary>What the readings are held against.</summary>
    public required IFirstRunPredictions Predictions { get; init; }

    /// <summary>What the checks permit; nothing is blocked unless it says so.</summary>
    public Verdict Verdict { get; init; } = new([], [], []);

    /// <summary>Whether the checks found that the load can drive the motor.</summary>
    public bool LoadDrivesMotor { get; init; }

    /// <summary>The set's tag.</summary>
    public string Tag => Job.Tag;

    /// <summary>Why the motor may not be turned at all; null where it may.</summary>
    internal string? WhyNotTurned => Verdict.MayBeBumped ? null : $"the checks forbid to turn the motor: {string.Join(", ", Verdict.BumpBlockedBy)}";

    /// <summary>Why the machine may not be run; null where it may.</summary>
    internal string? WhyNotCoupled => Verdict.MayRunCoupled ? null : $"the checks forbid to run it coupled: {string.Join(", ", Verdict.CoupledBlockedBy)}";

    /// <summary>The sheet's lines that say from where the motor is run and its frequency set, where that is another place than the drive's panel.</summary>
    internal IReadOnlyList<EntryLine> SourcesBesidePanel =>
    [
        .. Sheet.Lines.Where(line => new[] { Setting.RunCommandSource, Setting.FrequencyReferenceSource }.Any(setting =>
            Plan.Choice(setting) is not (null or "panel") && Profile.Carrying(setting).Any(p => string.Equals(p.Number, line.Number, StringComparison.Ordinal)))),
    ];

    /// <summary>What a line of the sheet shows on the display.</summary>
    internal string Shown(EntryLine line) =>
        DisplayText.Of(line.Parameter, line.Raw, ParameterValues.Defaults(Profile, Size).With(ParameterValues.From(Sheet.Lines.Select(l => KeyValuePair.Create(l.Number, l.Raw)))));

    internal IReadOnlyList<Parameter> Kept => [.. Profile.Parameters.Where(p => p.IsKept)];
}
