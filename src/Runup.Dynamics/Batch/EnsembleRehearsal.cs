using System.Runtime.Intrinsics;
using Runup.Dynamics.Batch;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>One run of many sets that differ in their motors alone: what a start and stop will look like when the motor is known no better than its plate.</summary>
/// <remarks>
/// Every member gets the same orders at the same times, as from a person who watches one of them. The members run side by side in the lanes of
/// wide registers and on all processors, on the same source as a single simulation; how many processors there are does not change a digit.
/// </remarks>
public sealed record EnsembleRehearsal
{
    /// <summary>What the members have in common; its motor is not used.</summary>
    public required DriveSystem System { get; init; }

    /// <summary>The motors, one for each member.</summary>
    public required IReadOnlyList<EquivalentCircuit> Motors { get; init; }

    /// <summary>The drive's settings.</summary>
    public required ControlSettings Settings { get; init; }

    /// <summary>The orders, ascending in time.</summary>
    public required IReadOnlyList<TimedOrder> Orders { get; init; }

    /// <summary>How long the run is.</summary>
    public required Duration Length { get; init; }

    /// <summary>Time between two points of the bands; at least a millisecond.</summary>
    public Duration SampleEvery { get; init; } = Duration.FromSeconds(0.05);

    /// <summary>Runs it.</summary>
    /// <param name="atMostThreads">How many processors it may use; −1 for all.</param>
    /// <param name="progress">Told now and then which part is done, 0 to 1.</param>
    /// <param name="cancellation">Ends the run.</param>
    /// <exception cref="InvalidOperationException">There is no motor.</exception>
    /// <exception cref="ArgumentException">A set can't be simulated: see <see cref="SystemCheck"/>.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public EnsembleResult Run(int atMostThreads = -1, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        if (Motors.Count == 0)
        {
            throw new InvalidOperationException("There is no motor to rehearse with.");
        }

        foreach (var motor in Motors)
        {
            SystemCheck.Require(SystemCheck.Of(System with { Motor = motor }, Settings), nameof(Motors));
        }

        var options = new ParallelOptions { MaxDegreeOfParallelism = atMostThreads, CancellationToken = cancellation };
        return Vector512.IsHardwareAccelerated
            ? new EnsembleRun<Eight>(this, options, progress).Result()
            : new EnsembleRun<Four>(this, options, progress).Result();
    }
}
