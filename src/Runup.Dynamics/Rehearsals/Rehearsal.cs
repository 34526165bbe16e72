using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>A run of a drive through a script, in simulated time.</summary>
public sealed record Rehearsal
{
    private const double AfterTripS = 0.5;

    /// <summary>What runs.</summary>
    public required DriveSystem System { get; init; }

    /// <summary>The drive's settings.</summary>
    public required ControlSettings Settings { get; init; }

    /// <summary>What is done.</summary>
    public required IReadOnlyList<ScriptStep> Script { get; init; }

    /// <summary>Time between two samples of the trace; at least a millisecond.</summary>
    public Duration SampleEvery { get; init; } = Duration.FromSeconds(0.01);

    /// <summary>Start to a frequency, run there for a while, stop and wait for standstill.</summary>
    /// <param name="frequencyHz">Frequency asked for, in Hz.</param>
    /// <param name="atSpeed">How long to run there.</param>
    /// <param name="atMost">Longest time for each of start and stop.</param>
    public static IReadOnlyList<ScriptStep> StartAndStop(double frequencyHz, Duration atSpeed, Duration atMost) =>
    [
        new ScriptStep.Start(frequencyHz),
        new ScriptStep.UntilAtSpeed(atMost),
        new ScriptStep.Wait(atSpeed),
        new ScriptStep.Stop(),
        new ScriptStep.UntilStandstill(atMost),
    ];

    /// <summary>Runs the script.</summary>
    /// <param name="progress">Told now and then which part of the longest possible run is done, 0 to 1.</param>
    /// <param name="cancellation">Ends the run.</param>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public RehearsalOutcome Run(IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var problems = SystemCheck.Of(System, Settings);
        if (problems.Count > 0)
        {
            return new RehearsalOutcome.Refused(problems);
        }

        var run = new RehearsalRun(this, progress, cancellation);
        foreach (var step in Script)
        {
            run.Do(step);
        }

        run.PassAfterTrip(AfterTripS);
        return new RehearsalOutcome.Ran(run.Result());
    }
}
