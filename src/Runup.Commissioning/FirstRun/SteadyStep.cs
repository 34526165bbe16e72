using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>Runs under one hold at one frequency after the other and reads at each; a reading outside its band ends the climb.</summary>
internal static class SteadyStep
{
    public static async Task<StepEnding> Run(FirstRunSession session, FirstRunStep.Steady step, StepChecks checks, BusLossProof proof, CancellationToken cancellation)
    {
        var highest = step.FrequenciesHz.Max();
        using var hold = await session.Hold(step, highest, cancellation);
        if (hold is null)
        {
            return new StepEnding.Stopped("nobody took hold");
        }

        var permit = RunPermit.ForStep(checks, proof, hold, session.Plan.Limits, highest, step.Rotation);
        var run = new HeldRun(session.Link, permit, hold, session.RampLimit(highest), session.Time);
        var ending = await Climb(session, step, run) ?? (await run.Stop() is { } unstopped ? session.Ending(step, unstopped) : new StepEnding.Passed());
        hold.Release(HoldEnd.StepDone);
        await session.Keep(step.Id, run.Samples);
        return ending;
    }

    // Null when all frequencies were read and lie within; the motor still runs then. Otherwise it was stopped.
    private static async Task<StepEnding?> Climb(FirstRunSession session, FirstRunStep.Steady step, HeldRun run)
    {
        foreach (var frequency in step.FrequenciesHz)
        {
            var plateau = new Plateau(frequency);
            var asked = step.Rotation == Rotation.Reverse ? -frequency : frequency;
            if (await run.Follow(asked, plateau.Enough, session.RampLimit(frequency)) is { } ending)
            {
                return session.Ending(step, ending);
            }

            if (await Compare(session, step, frequency, plateau) is { Count: > 0 } outside)
            {
                var stopped = await run.Stop();
                return stopped is null
                    ? new StepEnding.Failed($"at {frequency:0.##} Hz outside what is expected: {string.Join(", ", outside)}")
                    : session.Ending(step, stopped);
            }
        }

        return null;
    }

    private static async Task<IReadOnlyList<string>> Compare(FirstRunSession session, FirstRunStep.Steady step, double frequency, Plateau plateau)
    {
        var outside = new List<string>();
        foreach (var (kind, name, unit, of) in ReadingNames.All)
        {
            var expected = session.Task.Predictions.Steady(kind, frequency, step.Coupling);

            // The prediction is one of forward running; in reverse, speed and torque change their sign.
            var measured = plateau.Mean(of);
            var signed = step.Rotation == Rotation.Reverse && (kind is ReadingKind.Speed or ReadingKind.Torque) ? -measured : measured;
            if ((expected != Expected.Nothing || measured is not null) && await session.Take(step.Id, $"{name} at {frequency:0.##} Hz", unit, expected, signed))
            {
                outside.Add(name);
            }
        }

        return outside;
    }
}
