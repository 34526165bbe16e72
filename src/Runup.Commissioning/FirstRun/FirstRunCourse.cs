using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun;

/// <summary>
/// The course of every first run, whichever way it goes: one step at a time, each after its checks were confirmed by name; one that
/// was not as expected goes on only where a person says why.
/// </summary>
internal sealed class FirstRunCourse(string tag, StepBook book, IRecords records, IPerson person, IProgress<StepReport>? progress)
{
    /// <summary>What is asked where a step was not as expected.</summary>
    public const string GoOn = "go-on-outside-of-what-is-expected";

    private readonly List<StepReport> steps = [];

    /// <summary>The steps that were begun and ended, in order.</summary>
    public IReadOnlyList<StepReport> Steps => steps;

    /// <summary>Does these steps; cancelling ends it as stopped in the one under way.</summary>
    public async Task<FirstRunEnding> Run(IReadOnlyList<FirstRunStep> planned, IFirstRunWay way, CancellationToken cancellation)
    {
        try
        {
            return await All(planned, way, cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            return new FirstRunEnding.Stopped(book.Step ?? "", "it was interrupted");
        }
    }

    private async Task<FirstRunEnding> All(IReadOnlyList<FirstRunStep> planned, IFirstRunWay way, CancellationToken cancellation)
    {
        foreach (var step in planned)
        {
            var again = true;
            while (again)
            {
                again = false;
                switch (await One(step, way, cancellation))
                {
                    case StepEnding.Ends ends:
                        return ends.Ending;
                    case StepEnding.Stopped stopped:
                        again = await Says(new("step-again", $"{step.Title} It was ended: {stopped.Why}. Do it again.", step.Id), cancellation);
                        if (!again)
                        {
                            return new FirstRunEnding.Stopped(step.Id, stopped.Why);
                        }

                        break;
                    case StepEnding.Failed failed when !await Says(new(GoOn, $"{failed.Why}. Go on all the same, and say why.", step.Id, NeedsNote: true), cancellation):
                        return new FirstRunEnding.Stopped(step.Id, failed.Why);
                }
            }
        }

        return new FirstRunEnding.Finished();
    }

    private async Task<StepEnding> One(FirstRunStep step, IFirstRunWay way, CancellationToken cancellation)
    {
        var leftOut = await way.LeavesOut(step, cancellation);
        await book.Begin(step);
        var ending = leftOut is null ? await Checked(step, way, cancellation) : new StepEnding.LeftOut(leftOut);
        var report = new StepReport(step.Id, step.Title, ending.Outcome, ending.Remark, [.. book.Readings]);
        steps.Add(report);
        await records.Append(tag, new RecordBody.StepEnded(step.Id, report.Outcome, report.Remark), CancellationToken.None);
        progress?.Report(report);
        return ending;
    }

    private async Task<StepEnding> Checked(FirstRunStep step, IFirstRunWay way, CancellationToken cancellation)
    {
        var (checks, why) = await StepChecks.Confirm(step, tag, person, records, cancellation);
        return checks is null ? StepEnding.Refused(why!) : await way.Do(step, checks, cancellation);
    }

    private async Task<bool> Says(ToConfirm question, CancellationToken cancellation) =>
        await Confirming.All([question], tag, person, records, null, cancellation) is null;
}
