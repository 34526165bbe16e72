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

    internal IReadOnlyList<Parameter> Kept => [.. Profile.Parameters.Where(p => p.IsKept)];
}
