using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun;

/// <summary>
/// Leads through the first run, one step at a time, each after its checks were confirmed by name, each reading against its prediction.
/// The only place from which a motor is run, and only while a person holds.
/// </summary>
/// <remarks>Whatever way it ends, the settings that were changed for it are put back where the link and the motor permit, and it is said who has control.</remarks>
public sealed class GuidedFirstRun(FirstRunTask task, IDriveLinks links, IRecords records, IFirstRunPerson person, TimeProvider time, IProgress<StepReport>? progress = null)
{
    private FirstRunCourse? course;

    /// <summary>The steps, in order.</summary>
    public FirstRunPlan Plan { get; } = FirstRunPlan.For(task);

    /// <summary>Does all steps. Cancelling ends the hold, and with it the run.</summary>
    public async Task<FirstRunReport> Run(CancellationToken cancellation)
    {
        if (await WhyNot(cancellation) is { } why)
        {
            return Report(new FirstRunEnding.RefusedForSafety(why), null);
        }

        var (drive, lost) = await KnownDrive.Open(links, cancellation);
        if (drive is null)
        {
            return Report(new FirstRunEnding.LinkFailed(lost), null);
        }

        await using (drive.Link)
        {
            return await On(new(task, Plan, drive.Link, drive.Identity, records, person, time), cancellation);
        }
    }

    private async Task<string?> WhyNot(CancellationToken cancellation)
    {
        var open = EntryHistory.Of(await records.Of(task.Tag, cancellation)).Open;
        return task.WhyNotTurned ?? (open is null ? null : "an entry was cut off; finish it first");
    }

    private async Task<FirstRunReport> On(FirstRunSession session, CancellationToken cancellation)
    {
        course = new(task.Tag, session.Book, records, person, progress);
        var ending = await course.Run(Plan.Steps, new GuidedSteps(session), cancellation);
        IReadOnlyDictionary<string, string> notPutBack = session.Own.Numbers.ToDictionary(n => n, _ => "the link is gone or silent", StringComparer.Ordinal);
        if (session.Own.Count > 0 && ending is not (FirstRunEnding.LinkFailed or FirstRunEnding.FellSilent))
        {
            notPutBack = await PutBack.Run(session, CancellationToken.None);
        }

        if (ending is FirstRunEnding.Finished && notPutBack.Count > 0)
        {
            ending = new FirstRunEnding.Stopped(GuidedSettings.PutBackStep, "the job's own settings are not all in force");
        }

        if (Plan.OwnControlOnly is not null && ending is not (FirstRunEnding.LinkFailed or FirstRunEnding.FellSilent))
        {
            // Nothing was set for such a run, so nothing was read; who has control is still to be told. Without an answer it is not known.
            await SetUpStep.ReadAll(session, CancellationToken.None);
        }

        var source = await Control.Leave(task.Tag, task.Profile, task.Size, session.Held, records);
        return Report(ending, session) with { NotPutBack = notPutBack, RunSource = source };
    }

    private FirstRunReport Report(FirstRunEnding ending, FirstRunSession? session) => new()
    {
        Ending = ending,
        Steps = course?.Steps ?? [],
        Proof = session?.Proof,
        NotPutBack = new Dictionary<string, string>(StringComparer.Ordinal),
    };
}
