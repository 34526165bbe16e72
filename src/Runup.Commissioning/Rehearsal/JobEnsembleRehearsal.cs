using Runup.Commissioning.Checks;
using Runup.Commissioning.Diagnosis;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.Rehearsal;

/// <summary>The rehearsal of a set with every motor that its plate may stand for.</summary>
/// <param name="Middle">The rehearsal with the circuit that fits the plate.</param>
/// <param name="Ensemble">The same orders, at the same times, with each of the motors.</param>
public sealed record JobEnsembleRehearsal(RehearsalResult Middle, EnsembleResult Ensemble)
{
    // Members that are slower to stop than the circuit of the plate get this much more time, of the whole run and in s.
    private const double MoreTime = 0.1;
    private const double MoreSeconds = 1;
    private const int PointsOfBands = 400;

    /// <summary>Runs it after a rehearsal by the plate's circuit alone, whose times of orders all members share; null where no motor is known.</summary>
    /// <param name="context">The job.</param>
    /// <param name="plan">Its settings.</param>
    /// <param name="profile">The drive's family.</param>
    /// <param name="size">Its size.</param>
    /// <param name="middle">The rehearsal by the plate's circuit.</param>
    /// <param name="members">How many motors.</param>
    /// <param name="seed">Of the draw of motors: the same seed gives the same ones.</param>
    /// <param name="progress">Told now and then which part is done.</param>
    /// <param name="cancellation">Ends it.</param>
    public static JobEnsembleRehearsal? Of(
        JobContext context, SettingsPlan plan, DriveProfile profile, DriveSize size, RehearsalResult middle, int members, ulong seed, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(middle);
        if (RehearsalSystem.Of(context) is not { } system || context.Nameplate is not { } plate || KnownMotor.Of(context.Job.Motor, plate, seed: seed) is not { Now: var known })
        {
            return null;
        }

        var control = ControlSettings.From(JobRehearsal.Held(plan, profile, size), system.Drive);
        var endS = middle.Trace.TimeS[^1];
        var length = Duration.FromSeconds(endS + (MoreTime * endS) + MoreSeconds);
        var result = new EnsembleRehearsal
        {
            System = system,
            Motors = [.. known.Sample(members).Select(motor => RehearsalSystem.Parallel(motor, context.MotorCount))],
            Settings = control,
            Orders = middle.Orders,
            Length = length,
            SampleEvery = Duration.FromSeconds(Math.Max(0.001, Math.Ceiling(length.Seconds / PointsOfBands * 1000) / 1000)),
        }.Run(progress: progress, cancellation: cancellation);
        return new JobEnsembleRehearsal(middle, result);
    }
}
