namespace Runup.Commissioning.Survey;

/// <summary>One motor-drive-machine set as surveyed; what was not surveyed is null.</summary>
public sealed record Job
{
    /// <summary>Equipment tag.</summary>
    public required string Tag { get; init; }

    /// <summary>What the set is, in words.</summary>
    public string? Title { get; init; }

    /// <summary>Supply at the drive.</summary>
    public required SupplySurvey Supply { get; init; }

    /// <summary>The motor.</summary>
    public required MotorSurvey Motor { get; init; }

    /// <summary>The drive.</summary>
    public required DriveSurvey Drive { get; init; }

    /// <summary>Cable from drive to motor.</summary>
    public required CableSurvey Cable { get; init; }

    /// <summary>The driven machine.</summary>
    public required MachineSurvey Machine { get; init; }

    /// <summary>How it is to run.</summary>
    public required OperationSurvey Operation { get; init; }

    /// <summary>Where commands come from.</summary>
    public required ControlSurvey Control { get; init; }

    /// <summary>The bus to the control system.</summary>
    public required BusSurvey Bus { get; init; }

    /// <summary>Where it stands.</summary>
    public required PlaceSurvey Place { get; init; }

    /// <summary>Photos of the set as a whole.</summary>
    public IReadOnlyList<SetPhoto> Photos { get; init; } = [];
}
