using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>A person runs the motor straight up and stops it; the drive is read all along, and nothing is sent.</summary>
/// <remarks>Times are as fine as the readings are apart, a tenth of a second and their way over the link.</remarks>
internal sealed class WatchedRamps(FirstRunSession session, FirstRunStep.Ramps step, Action<string> tell)
{
    private const double TurnsHz = 0.05;
    private const double LeavesHz = 0.2;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    private readonly List<RunSample> samples = [];
    private readonly long begun = session.Time.GetTimestamp();

    public async Task<StepEnding> Run(CancellationToken cancellation)
    {
        var limit = session.RampLimit(step.FrequencyHz);
        var plateau = new Plateau(step.FrequencyHz);
        var ending = await Until(s => s.Status.OutputFrequencyHz > TurnsHz, Patience, "the motor was not seen to start", cancellation)
            ?? await Until(plateau.Enough, limit, $"{Hz} Hz was not seen to be reached", cancellation);
        if (ending is not null)
        {
            return await Kept(ending);
        }

        tell($"{Hz} Hz are reached. Stop it now.");
        ending = await Until(s => s.Status.OutputFrequencyHz < step.FrequencyHz - LeavesHz, Patience, "it was not seen to be stopped", cancellation);
        var stopAt = samples.LastOrDefault(s => s.Status.OutputFrequencyHz >= step.FrequencyHz - LeavesHz)?.At ?? TimeSpan.Zero;
        ending ??= await Until(s => Standstill.Is(s.Status), limit, "it was not seen to come to standstill", cancellation);
        if (ending is not null)
        {
            return await Kept(ending);
        }

        var started = samples.Last(s => s.At < samples.First(t => t.Status.OutputFrequencyHz > TurnsHz).At).At;
        await Kept(new StepEnding.Passed());
        return await RampsStep.Compare(session, step, samples, plateau.Reached - started, samples[^1].At - stopAt);
    }

    private string Hz => step.FrequencyHz.ToString("0.##", CultureInfo.InvariantCulture);

    private async Task<StepEnding> Kept(StepEnding ending)
    {
        await session.Keep(step.Id, samples);
        return ending;
    }

    /// <summary>Reads until it is so; the step's ending where it does not come to that.</summary>
    private async Task<StepEnding?> Until(Func<RunSample, bool> isSo, TimeSpan limit, string otherwise, CancellationToken cancellation)
    {
        var from = session.Time.GetTimestamp();
        while (true)
        {
            switch (await session.Link.Status(cancellation))
            {
                case LinkReply<DriveStatus>.Answered { Value: { State: PowerState.Fault or PowerState.FaultReactionActive } tripped }:
                    return new StepEnding.Ends(new FirstRunEnding.Tripped(step.Id, tripped.Trip), $"the drive tripped: {tripped.Trip.Name()}");
                case LinkReply<DriveStatus>.Answered { Value.OutputFrequencyHz: null }:
                    return new StepEnding.LeftOut("the drive does not tell its output frequency");
                case LinkReply<DriveStatus>.Answered answered:
                    samples.Add(new(session.Time.GetElapsedTime(begun), answered.Value));
                    break;
                case LinkReply<DriveStatus>.Refused refused:
                    return new StepEnding.Failed($"no readings: {refused.Why}");
                case LinkReply<DriveStatus>.Unanswered lost:
                    return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost.Why), lost.Why);
            }

            // The first reading is of before: whatever comes after has one to be counted from.
            if (samples.Count == 1 && !Standstill.Is(samples[0].Status))
            {
                return new StepEnding.Failed("the motor did not stand when it was to be started");
            }

            if (samples.Count > 1 && isSo(samples[^1]))
            {
                return null;
            }

            if (session.Time.GetElapsedTime(from) > limit)
            {
                return new StepEnding.Failed(otherwise);
            }

            await Task.Delay(RunHold.Period, session.Time, cancellation);
        }
    }
}
