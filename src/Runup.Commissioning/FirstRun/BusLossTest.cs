using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.FirstRun;

/// <summary>
/// The first time that the motor turns: at the lowest frequency, uncoupled, renewals are withheld on purpose, and nothing else is sent
/// either, since on many drives any valid frame restarts the time-out.
/// </summary>
internal sealed class BusLossTest(FirstRunSession session, FirstRunStep step, StepChecks checks)
{
    private static readonly TimeSpan Margin = TimeSpan.FromMilliseconds(250);
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMilliseconds(900);
    private static readonly TimeSpan SlopeOver = TimeSpan.FromMilliseconds(300);
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(50);

    /// <summary>Tries with a silence a little longer than the time-out, then with the longest that leaves time to see it within the second.</summary>
    public async Task<StepEnding> Run(CancellationToken cancellation)
    {
        var first = session.BusTimeout + Margin;
        var ending = await Once(first < LongestSilence ? first : LongestSilence, cancellation);
        if (ending is StepEnding.Failed && session.Proof is null)
        {
            ending = await Once(LongestSilence, cancellation);
        }

        return ending is StepEnding.Failed failed ? new StepEnding.Ends(new FirstRunEnding.RefusedForSafety(failed.Why), failed.Why) : ending;
    }

    private async Task<StepEnding> Once(TimeSpan silence, CancellationToken cancellation)
    {
        var hz = session.Plan.Limits.LowestHz;
        using var hold = await session.Hold(step, hz, cancellation);
        if (hold is null)
        {
            return new StepEnding.Stopped("nobody took hold");
        }

        var run = new HeldRun(session.Link, RunPermit.ForProof(checks, hold, session.Plan.Limits), hold, session.RampLimit(hz), session.Time);
        var ending = await run.Follow(hz, new Plateau(hz).Enough, session.RampLimit(hz));
        if (ending is null && await hold.Renewal())
        {
            ending = await run.Renew(hz);
        }

        var result = ending is null ? await Withhold(run, hold, hz, silence, cancellation) : session.Ending(step, ending);
        hold.Release(HoldEnd.StepDone);
        await session.Keep(step.Id, run.Samples);
        return result;
    }

    private async Task<StepEnding> Withhold(HeldRun run, RunHold hold, double hz, TimeSpan silence, CancellationToken cancellation)
    {
        var steady = run.Samples[^1].Status.OutputFrequencyHz ?? hz;
        try
        {
            await Task.Delay(silence - session.Time.GetElapsedTime(run.LastRenewal), session.Time, hold.Lost);
        }
        catch (OperationCanceledException) when (hold.Lost.IsCancellationRequested)
        {
            return session.Ending(step, (await run.Stop(new RunEnding.HoldEnded(hold.End ?? HoldEnd.Silent)))!);
        }

        if (await run.Look() is not { } status)
        {
            return session.Ending(step, (await run.Stop(new RunEnding.NotReached("no reading came after the silence")))!);
        }

        var seen = session.Time.GetElapsedTime(run.LastRenewal);
        if (!Reacts(status, steady))
        {
            return session.Ending(step, (await run.Stop(new RunEnding.NotReached($"the drive ran on {seen.TotalSeconds:0.##} s after the last renewal")))!);
        }

        return await Follow(run, steady, (seen, status), cancellation);
    }

    // Reads on, without commanding: the ramp tells when it began, and no valid frame may bring the motor back.
    private async Task<StepEnding> Follow(HeldRun run, double steadyHz, (TimeSpan At, DriveStatus Status) first, CancellationToken cancellation)
    {
        (TimeSpan At, DriveStatus Status)? second = null;
        var lowest = first.Status.OutputFrequencyHz ?? 0;
        var until = session.Time.GetTimestamp();
        var last = first.Status;
        while (!Stands(last))
        {
            await Task.Delay(Pace, session.Time, cancellation);
            if (await run.Read() is not { } status)
            {
                return session.Ending(step, new RunEnding.FellSilent("no reading came while the drive was stopping by itself"));
            }

            if (status.OutputFrequencyHz > lowest + 0.1)
            {
                return session.Ending(step, (await run.Stop(new RunEnding.NotReached("reading alone brought the motor back after the bus time-out")))!);
            }

            if (session.Time.GetElapsedTime(until) > session.RampLimit(steadyHz))
            {
                return session.Ending(step, (await run.Stop(new RunEnding.NotReached("the drive began to stop and does not come to standstill")))!);
            }

            var at = session.Time.GetElapsedTime(run.LastRenewal);
            second = second is null || at - first.At <= SlopeOver ? (at, status) : second;
            lowest = Math.Min(lowest, status.OutputFrequencyHz ?? lowest);
            last = status;
        }

        return await Judge(first, second, steadyHz, last, cancellation);
    }

    private async Task<StepEnding> Judge((TimeSpan At, DriveStatus Status) first, (TimeSpan At, DriveStatus Status)? second, double steadyHz, DriveStatus last, CancellationToken cancellation)
    {
        // The run command must not lie in the drive any longer. This word resets nothing.
        await session.Link.Command(new LinkCommand.Coast(), cancellation);
        session.Proof = BusLossProof.Judge(first.At, Began(first, second, steadyHz));
        var measured = session.Proof?.BeganAfter ?? first.At;
        await session.Take(step.Id, "last renewal to stop reaction", "s", new(session.BusTimeout.TotalSeconds, null, BusLossProof.Allowed.TotalSeconds), Math.Round(measured.TotalSeconds, 3));
        if (session.Proof is null)
        {
            return new StepEnding.Failed($"the stop reaction was seen only {first.At.TotalSeconds:0.##} s after the last renewal");
        }

        return last.State is PowerState.Fault or PowerState.FaultReactionActive ? await ResetByPerson(last, cancellation) : new StepEnding.Passed();
    }

    private async Task<StepEnding> ResetByPerson(DriveStatus tripped, CancellationToken cancellation)
    {
        var ask = new ToConfirm("trip-of-the-proof-reset-at-the-drive", "The drive tripped on the loss of the bus, as it should. Reset it at the drive; Runup resets no trip.", step.Id);
        var why = await Confirming.All([ask], session.Task.Tag, session.Person, session.Records, null, cancellation);
        var now = await session.Link.Status(cancellation);
        var reset = now is LinkReply<DriveStatus>.Answered { Value.State: not (PowerState.Fault or PowerState.FaultReactionActive) };
        return why is null && reset ? new StepEnding.Passed() : new StepEnding.Ends(new FirstRunEnding.Tripped(step.Id, tripped.Trip), why ?? "the trip of the proof was not reset at the drive");
    }

    private static TimeSpan? Began((TimeSpan At, DriveStatus Status) first, (TimeSpan At, DriveStatus Status)? second, double steadyHz) =>
        first.Status.OutputFrequencyHz is { } f1 and > 0 && second is { } s && s.Status.OutputFrequencyHz is { } f2 and > 0
            ? BusLossProof.RampBegan(ElectricalFrequency.FromHertz(steadyHz), (first.At, ElectricalFrequency.FromHertz(f1)), (s.At, ElectricalFrequency.FromHertz(f2)))
            : null;

    private static bool Reacts(DriveStatus status, double steadyHz) =>
        status.State != PowerState.OperationEnabled || !status.Running || status.OutputFrequencyHz < steadyHz - 0.05;

    private static bool Stands(DriveStatus status) => status.OutputFrequencyHz is { } hz ? hz < 0.05 : !status.Running;
}
