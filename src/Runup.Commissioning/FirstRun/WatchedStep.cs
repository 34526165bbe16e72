using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>The machine is run from its own control; Runup reads and compares, and sends no command of any kind.</summary>
internal static class WatchedStep
{
    private const int Rounds = 5;
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(200);

    public static async Task<StepEnding> Run(FirstRunSession session, FirstRunStep.Watched step, CancellationToken cancellation) =>
        await At(session, step, step.FrequencyHz, step.Rotation, Coupling.Coupled, cancellation) ?? new StepEnding.Passed();

    /// <summary>Reads at steady running; the step's ending where it can't go on, null where all lies within.</summary>
    public static async Task<StepEnding?> At(FirstRunSession session, FirstRunStep step, double frequencyHz, Rotation rotation, Coupling coupling, CancellationToken cancellation)
    {
        List<DriveStatus> read = [];
        while (read.Count < Rounds)
        {
            switch (await session.Link.Status(cancellation))
            {
                case LinkReply<DriveStatus>.Answered answered when answered.Value.State is PowerState.Fault or PowerState.FaultReactionActive:
                    return new StepEnding.Ends(new FirstRunEnding.Tripped(step.Id, answered.Value.Trip), $"the drive tripped: {answered.Value.Trip.Name()}");
                case LinkReply<DriveStatus>.Answered answered:
                    read.Add(answered.Value);
                    break;
                case LinkReply<DriveStatus>.Refused refused:
                    return new StepEnding.Failed($"no readings: {refused.Why}");
                case LinkReply<DriveStatus>.Unanswered lost:
                    return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost.Why), lost.Why);
            }

            await Task.Delay(Pace, session.Time, cancellation);
        }

        var outside = new List<string>();
        foreach (var (kind, name, unit, of) in ReadingNames.All)
        {
            var values = read.Select(of).OfType<double>().ToList();
            // A drive shows its output frequency without a sign, speed and torque with one.
            var asked = rotation == Rotation.Reverse && kind != ReadingKind.OutputFrequency ? -frequencyHz : frequencyHz;
            var expected = session.Task.Predictions.Steady(kind, asked, coupling);
            if (await session.Take(step.Id, $"{name} at {frequencyHz:0.##} Hz", unit, expected, values.Count == 0 ? null : values.Average()))
            {
                outside.Add(name);
            }
        }

        return outside.Count == 0 ? null : new StepEnding.Failed($"outside what is expected: {string.Join(", ", outside)}");
    }
}
