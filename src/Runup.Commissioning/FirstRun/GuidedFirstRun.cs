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
    private readonly List<StepReport> steps = [];

    /// <summary>The steps, in order.</summary>
    public FirstRunPlan Plan { get; } = FirstRunPlan.For(task);

    /// <summary>Does all steps. Cancelling ends the hold, and with it the run.</summary>
    public async Task<FirstRunReport> Run(CancellationToken cancellation)
    {
        if (await WhyNot(cancellation) is { } why)
        {
            return Report(new FirstRunEnding.RefusedForSafety(why), null);
        }

        switch (await links.Open(cancellation))
        {
            case LinkOpening.Failed failed:
                return Report(new FirstRunEnding.LinkFailed(failed.Why), null);
            case LinkOpening.Opened opened:
                await using (opened.Link)
                {
                    var (identity, lost) = await EntrySession.WhoIs(opened.Link, cancellation);
                    return lost is null
                        ? await On(new(task, Plan, opened.Link, identity, records, person, time), cancellation)
                        : Report(new FirstRunEnding.LinkFailed(lost), null);
                }

            default:
                throw new InvalidOperationException("The set of openings is closed.");
        }
    }

    private async Task<string?> WhyNot(CancellationToken cancellation)
    {
        if (!task.Verdict.MayBeBumped)
        {
            return $"the checks forbid to turn the motor: {string.Join(", ", task.Verdict.BumpBlockedBy)}";
        }

        return EntryHistory.Of(await records.Of(task.Tag, cancellation)).Open is not null ? "an entry was cut off; finish it first" : null;
    }

    private async Task<FirstRunReport> On(FirstRunSession session, CancellationToken cancellation)
    {
        FirstRunEnding ending;
        try
        {
            ending = await AllSteps(session, cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            ending = new FirstRunEnding.Stopped(steps.LastOrDefault()?.Step ?? "", "it was interrupted");
        }

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

    private async Task<FirstRunEnding> AllSteps(FirstRunSession session, CancellationToken cancellation)
    {
        foreach (var step in Plan.Steps)
        {
            var again = true;
            while (again)
            {
                again = false;
                switch (await One(session, step, cancellation))
                {
                    case StepEnding.Ends ends:
                        return ends.Ending;
                    case StepEnding.Stopped stopped:
                        again = await Says(new("step-again", $"{step.Title} It was ended: {stopped.Why}. Do it again.", step.Id), session, cancellation);
                        if (!again)
                        {
                            return new FirstRunEnding.Stopped(step.Id, stopped.Why);
                        }

                        break;
                    case StepEnding.Failed failed when !await Says(new("go-on-outside-of-what-is-expected", $"{failed.Why}. Go on all the same, and say why.", step.Id, NeedsNote: true), session, cancellation):
                        return new FirstRunEnding.Stopped(step.Id, failed.Why);
                }
            }
        }

        return new FirstRunEnding.Finished();
    }

    private async Task<StepEnding> One(FirstRunSession session, FirstRunStep step, CancellationToken cancellation)
    {
        await session.Begin(step);
        var (checks, why) = await StepChecks.Confirm(step, task.Tag, person, records, cancellation);
        var ending = checks is null ? Refused(why!) : await Do(session, step, checks, cancellation);
        var report = new StepReport(step.Id, step.Title, ending.Outcome, ending.Remark, [.. session.Readings]);
        steps.Add(report);
        await records.Append(task.Tag, new RecordBody.StepEnded(step.Id, report.Outcome, report.Remark), CancellationToken.None);
        progress?.Report(report);
        return ending;
    }

    private async Task<StepEnding> Do(FirstRunSession session, FirstRunStep step, StepChecks checks, CancellationToken cancellation)
    {
        switch (step)
        {
            case FirstRunStep.Signals:
                session.StopDevice = checks.Notes["machine-stop-tested"];
                return new StepEnding.Passed();
            case FirstRunStep.Standstill:
                return await StandstillStep.Run(session, step, cancellation);
            case FirstRunStep.SetUp:
                return await SetUpStep.Run(session, cancellation);
            case FirstRunStep.LossProof:
                return await new BusLossTest(session, step, checks).Run(cancellation);
            case FirstRunStep.Couple:
                return task.Verdict.MayRunCoupled ? new StepEnding.Passed() : Refused($"the checks forbid to run it coupled: {string.Join(", ", task.Verdict.CoupledBlockedBy)}");
            case FirstRunStep.Watched watched:
                return await WatchedStep.Run(session, watched, cancellation);
            case FirstRunStep.Steady when session.Proof is null:
            case FirstRunStep.Ramps when session.Proof is null:
                return Refused("it is not proved that the drive stops by itself when the bus is lost");
            case FirstRunStep.Steady steady:
                return await SteadyStep.Run(session, steady, checks, session.Proof, cancellation);
            case FirstRunStep.Ramps ramps:
                return await RampsStep.Run(session, ramps, checks, session.Proof, cancellation);
            default:
                throw new InvalidOperationException("The set of steps is closed.");
        }
    }

    private async Task<bool> Says(ToConfirm question, FirstRunSession session, CancellationToken cancellation) =>
        await Confirming.All([question], task.Tag, person, session.Records, null, cancellation) is null;

    private FirstRunReport Report(FirstRunEnding ending, FirstRunSession? session) => new()
    {
        Ending = ending,
        Steps = steps,
        Proof = session?.Proof,
        NotPutBack = new Dictionary<string, string>(StringComparer.Ordinal),
    };

    private static StepEnding.Ends Refused(string why) => new(new FirstRunEnding.RefusedForSafety(why), why);
}
