using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>A run of a drive through a script, in simulated time.</summary>
public sealed record Rehearsal
{
    private const double AfterTripS = 0.5;

    private static readonly Duration BeforeGap = Duration.FromSeconds(1);

    /// <summary>How long a drive holds the motor at 0 Hz at the end of a ramp before the output goes off; it counts to the time of a stop.</summary>
    public static Duration HeldAtZero { get; } = Duration.FromSeconds(Control.Sequencer.HoldAtZeroS);

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
    /// <param name="supplyGap">A gap of the supply once it is at speed, after which it may come to speed again; null: none.</param>
    public static IReadOnlyList<ScriptStep> StartAndStop(double frequencyHz, Duration atSpeed, Duration atMost, Duration? supplyGap = null) =>
    [
        new ScriptStep.Start(frequencyHz),
        new ScriptStep.UntilAtSpeed(atMost),
        .. supplyGap is { } gap ? [new ScriptStep.Wait(BeforeGap), new ScriptStep.SupplyGap(gap), new ScriptStep.UntilAtSpeed(atMost)] : Array.Empty<ScriptStep>(),
        new ScriptStep.Wait(atSpeed),
        new ScriptStep.Stop(),
        new ScriptStep.UntilStandstill(atMost),
    ];

    /// <summary>Runs the script.</summary>
    /// <param name="progress">Told now and then which part of the run, as long as it is likely to be, is done, 0 to 1.</param>
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
