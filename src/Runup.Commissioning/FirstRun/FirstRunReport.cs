using Runup.Commissioning.Records;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>What a first run came to.</summary>
public sealed record FirstRunReport
{
    /// <summary>How it ended.</summary>
    public required FirstRunEnding Ending { get; init; }

    /// <summary>The steps that were begun, in order.</summary>
    public required IReadOnlyList<StepReport> Steps { get; init; }

    /// <summary>That the drive stops by itself when the bus is lost; null where it was not proved.</summary>
    public BusLossProof? Proof { get; init; }

    /// <summary>Parameters that were changed for the guided run and do not hold the job's own value now, with why.</summary>
    public required IReadOnlyDictionary<string, string> NotPutBack { get; init; }

    /// <summary>Where the drive takes its run command from now; null where it is not known.</summary>
    public string? RunSource { get; init; }
}

/// <summary>What a step came to.</summary>
/// <param name="Step">The step's id.</param>
/// <param name="Title">What was done.</param>
/// <param name="Outcome">passed, failed, stopped or refused.</param>
/// <param name="Remark">What a person should know, or null.</param>
/// <param name="Readings">Its readings, each against its prediction.</param>
public sealed record StepReport(string Step, string Title, string Outcome, string? Remark, IReadOnlyList<RecordBody.ReadingTaken> Readings);

/// <summary>How a first run ended; a closed set.</summary>
public abstract record FirstRunEnding
{
    private FirstRunEnding()
    {
    }

    /// <summary>All steps were done, and the job's own settings are in force again.</summary>
    public sealed record Finished : FirstRunEnding;

    /// <summary>A rule of safety forbids to go on.</summary>
    /// <param name="Why">Which, in words.</param>
    public sealed record RefusedForSafety(string Why) : FirstRunEnding;

    /// <summary>The link is gone.</summary>
    /// <param name="Why">In words.</param>
    public sealed record LinkFailed(string Why) : FirstRunEnding;

    /// <summary>The person ended it.</summary>
    /// <param name="Step">In which step.</param>
    /// <param name="Why">In words.</param>
    public sealed record Stopped(string Step, string Why) : FirstRunEnding;

    /// <summary>The drive tripped. Runup resets no trip.</summary>
    /// <param name="Step">In which step.</param>
    /// <param name="Cause">Its cause.</param>
    public sealed record Tripped(string Step, TripCause Cause) : FirstRunEnding;

    /// <summary>A stop was not seen to be obeyed; nothing more is sent on the link.</summary>
    /// <param name="Step">In which step.</param>
    /// <param name="Why">In words.</param>
    public sealed record FellSilent(string Step, string Why) : FirstRunEnding;
}
