using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>Readings that come from the drive over a link while a person runs the motor.</summary>
internal sealed class LinkReadings(FirstRunSession session, IPersonAtPanel person) : IReadings
{
    public Task<StepEnding> AtStandstill(FirstRunStep step, CancellationToken cancellation) => StandstillStep.Run(session, step, cancellation);

    public async Task<StepEnding?> At(FirstRunStep step, double frequencyHz, Rotation rotation, Coupling coupling, CancellationToken cancellation)
    {
        if (step is not FirstRunStep.Watched)
        {
            var steady = new ToConfirm("runs-steadily", string.Create(CultureInfo.InvariantCulture, $"It runs steadily at {frequencyHz:0.##} Hz."), step.Id);
            if (await Confirming.All([steady], session.Task.Tag, person, session.Records, null, cancellation) is { } why)
            {
                return StepEnding.Refused(why);
            }
        }

        return await WatchedStep.At(session, step, frequencyHz, rotation, coupling, cancellation);
    }

    public async Task<StepEnding> OfRamps(FirstRunStep.Ramps step, CancellationToken cancellation)
    {
        var ready = new ToConfirm("ready-to-start", string.Create(CultureInfo.InvariantCulture, $"{step.FrequencyHz:0.##} Hz is set, the motor stands. Answer yes, and then start it: Runup watches, and says when to stop."), step.Id);
        return await Confirming.All([ready], session.Task.Tag, person, session.Records, null, cancellation) is { } why
            ? StepEnding.Refused(why)
            : await new WatchedRamps(session, step, person.Tell).Run(cancellation);
    }

    public async Task<string?> WhyNotStanding(FirstRunStep step, CancellationToken cancellation)
    {
        var limit = session.RampLimit(session.Plan.Limits.MaximumHz);
        return await Standstill.Seen(session.Link, limit, session.Time, cancellation)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"within {limit.TotalSeconds:0} s the motor was not seen to stand");
    }

    public async Task<StepEnding> AsEntered(CancellationToken cancellation)
    {
        if (await ReadAll(session, cancellation) is { } lost)
        {
            return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost), lost);
        }

        var other = session.Task.SourcesBesidePanel.Where(l => session.Held[l.Number] != l.Raw).Select(l => l.Parameter.ToString()).ToList();
        return other.Count == 0 ? new StepEnding.Passed() : new StepEnding.Failed($"the drive does not hold as entered: {string.Join(", ", other)}");
    }

    /// <summary>Reads all that the drive keeps, and keeps it in the record; why there was no answer, or null.</summary>
    public static async Task<string?> ReadAll(FirstRunSession session, CancellationToken cancellation)
    {
        if (await SetUpStep.ReadAll(session, cancellation) is { } lost)
        {
            return lost;
        }

        var task = session.Task;
        var known = EntryHistory.Of(await session.Records.Of(task.Tag, cancellation)).AsFound.ContainsKey(session.Identity);
        var values = task.Kept.ToDictionary(p => p.Number, p => session.Held[p.Number], StringComparer.Ordinal);
        await session.Records.Append(task.Tag, new RecordBody.ParametersRead(known ? Moments.Read : Moments.AsFound, session.Identity, values), cancellation);
        return null;
    }
}
