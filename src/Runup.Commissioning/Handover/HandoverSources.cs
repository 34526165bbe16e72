using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Commissioning.Survey;
using Runup.Profiles;

namespace Runup.Commissioning.Handover;

/// <summary>What a handover is put together from.</summary>
public sealed record HandoverSources
{
    /// <summary>The set as surveyed, on its drive.</summary>
    public required JobContext Context { get; init; }

    /// <summary>Checksum of the job file as it is now, in hex; null where it is not known.</summary>
    public string? JobSha256 { get; init; }

    /// <summary>The drive's profile.</summary>
    public required DriveProfile Profile { get; init; }

    /// <summary>Its size.</summary>
    public required DriveSize Size { get; init; }

    /// <summary>What the checks say.</summary>
    public required CheckReport Checks { get; init; }

    /// <summary>The settings with their reasons.</summary>
    public required SettingsPlan Plan { get; init; }

    /// <summary>The settings in the drive's own parameters.</summary>
    public required IReadOnlyList<SheetLine> Sheet { get; init; }

    /// <summary>The set's record, oldest first.</summary>
    public required IReadOnlyList<Recorded> Record { get; init; }

    /// <summary>The steps that a first run of this set has, in order; empty where they are not known.</summary>
    public IReadOnlyList<PlannedStep> Steps { get; init; } = [];

    /// <summary>The job's photos; those that are not among them are not shown.</summary>
    public IReadOnlyList<ReportPhoto> Photos { get; init; } = [];

    /// <summary>When the handover is written.</summary>
    public required DateTimeOffset WrittenAt { get; init; }

    /// <summary>What writes it, with its version.</summary>
    public required string WrittenBy { get; init; }

    internal Job Job => Context.Job;
}

/// <summary>A step that a first run has.</summary>
/// <param name="Step">Its id.</param>
/// <param name="Title">What is done in it.</param>
public sealed record PlannedStep(string Step, string Title);
