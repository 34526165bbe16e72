using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>
/// Leads through the first run while a person runs the motor, at the drive's panel or from the machine's own control: the same steps, checks
/// and predictions as where Runup runs it, and nothing is sent that could move or change anything.
/// </summary>
/// <remarks>The record is the only state: whenever it is cut off, another call goes on. One instance runs once.</remarks>
/// <param name="task">What the first run is about.</param>
/// <param name="records">Where all is kept.</param>
/// <param name="person">Who runs the motor.</param>
/// <param name="again">Steps to be done again although they are done.</param>
/// <param name="progress">Told of each step that ended, or null.</param>
public sealed class FirstRunByPerson(FirstRunTask task, IRecords records, IPersonAtPanel person, IReadOnlyList<string> again, IProgress<StepReport>? progress = null)
{
    private const string Unproved = "run-on-unproved-settings";

    private readonly StepBook book = new(task.Tag, records, person.Name);

    /// <summary>The steps, in order.</summary>
    public FirstRunPlan Plan { get; } = FirstRunPlan.RunByPerson(task);

    /// <summary>Has the readings typed in.</summary>
    public async Task<FirstRunReport> Typed(CancellationToken cancellation) =>
        await WhyNot(cancellation) is { } refusal ? Report(refusal, null) : await Steps(new TypedReadings(task, book, person, records), cancellation);

    /// <summary>Reads them over a link, over which nothing else is sent.</summary>
    public async Task<FirstRunReport> Read(IDriveLinks links, TimeProvider time, CancellationToken cancellation)
    {
        if (await WhyNot(cancellation) is { } refusal)
        {
            return Report(refusal, null);
        }

        var (drive, lost) = await KnownDrive.Open(links, cancellation);
        if (drive is null)
        {
            return Report(new FirstRunEnding.LinkFailed(lost), null);
        }

        await using (drive.Link)
        {
            return await On(new(task, Plan, new ReadingOnly(drive.Link), drive.Identity, records, new NobodyHolds(person), time, book), cancellation);
        }
    }

    private async Task<FirstRunReport> On(FirstRunSession session, CancellationToken cancellation)
    {
        if (await LinkReadings.ReadAll(session, cancellation) is { } lost)
        {
            return Report(new FirstRunEnding.LinkFailed(lost), null);
        }

        var differing = task.Sheet.Lines.Except(task.SourcesBesidePanel).Where(l => session.Held[l.Number] != l.Raw).Select(l => l.Number).ToList();
        if (differing.Count > 0 && await Accepted($"the drive does not hold the sheet ({string.Join(", ", differing)})", cancellation) is { } refused)
        {
            return Report(refused, null);
        }

        var report = await Steps(new LinkReadings(session, person), cancellation);
        if (report.Ending is not FirstRunEnding.LinkFailed)
        {
            // The person may have set something at the panel. Without an answer it is not known who has control.
            await SetUpStep.ReadAll(session, CancellationToken.None);
        }

        return report with { RunSource = await Control.Leave(task.Tag, task.Profile, task.Size, session.Held, records) };
    }

    private async Task<FirstRunReport> Steps(IReadings readings, CancellationToken cancellation)
    {
        var history = StepHistory.Of(await records.Of(task.Tag, cancellation)).Without(again);
        if (history.UnderWay is { } cut && !again.Contains(cut, StringComparer.Ordinal))
        {
            book.GoesOn(cut, history.Readings);
        }

        var todo = Plan.Steps.Where(s => !history.Done.ContainsKey(s.Id)).ToList();
        if (todo.Count < Plan.Steps.Count)
        {
            person.Tell($"{Plan.Steps.Count - todo.Count} of {Plan.Steps.Count} steps are done already and not asked again.");
        }

        var course = new FirstRunCourse(task.Tag, book, records, person, progress);
        var ending = await course.Run(todo, new StepsByPerson(task, Plan, book, readings, person, records) { StopDevice = history.StopDevice }, cancellation);
        return Report(ending, course);
    }

    private async Task<FirstRunEnding?> WhyNot(CancellationToken cancellation)
    {
        if (task.WhyNotTurned is { } forbidden)
        {
            return new FirstRunEnding.RefusedForSafety(forbidden);
        }

        if (Plan.OwnControlOnly is not null && task.WhyNotCoupled is { } coupled)
        {
            return new FirstRunEnding.RefusedForSafety(coupled);
        }

        return WhyUnproved(await records.Of(task.Tag, cancellation)) is { } why ? await Accepted(why, cancellation) : null;
    }

    private async Task<FirstRunEnding?> Accepted(string why, CancellationToken cancellation) =>
        await Confirming.All([OnUnproved(why)], task.Tag, person, records, null, cancellation) is { } unconfirmed
            ? new FirstRunEnding.RefusedForSafety($"{why}; {unconfirmed}")
            : null;

    private static ToConfirm OnUnproved(string why) =>
        new(Unproved, $"{char.ToUpperInvariant(why[0])}{why[1..]}: nobody knows on which settings the motor would run. To go on all the same is your decision; say why.", "before-first-run", NeedsNote: true);

    private static string? WhyUnproved(IReadOnlyList<Recorded> record) => (EntryHistory.Of(record).Open, record.Select(r => r.Body).OfType<RecordBody.EntryEnded>().LastOrDefault()) switch
    {
        (not null, _) => "an entry was begun and is not finished",
        (null, null) => "no entry of the sheet is on record",
        (null, { Failed.Count: > 0 } ended) => $"the entry ended with parameters that are not proved ({string.Join(", ", ended.Failed.Keys)})",
        _ => null,
    };

    private static FirstRunReport Report(FirstRunEnding ending, FirstRunCourse? course) => new()
    {
        Ending = ending,
        Steps = course?.Steps ?? [],
        NotPutBack = new Dictionary<string, string>(StringComparer.Ordinal),
    };
}
