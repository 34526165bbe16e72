using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun;

/// <summary>Runs straight up on the drive's ramp, and stops from there: peaks and times against the rehearsal.</summary>
internal static class RampsStep
{
    public static async Task<StepEnding> Run(FirstRunSession session, FirstRunStep.Ramps step, StepChecks checks, BusLossProof proof, CancellationToken cancellation)
    {
        using var hold = await session.Hold(step, step.FrequencyHz, cancellation);
        if (hold is null)
        {
            return new StepEnding.Stopped("nobody took hold");
        }

        var permit = RunPermit.ForStep(checks, proof, hold, session.Plan.Limits, step.FrequencyHz, Profiles.Rotation.Forward);
        var run = new HeldRun(session.Link, permit, hold, session.RampLimit(step.FrequencyHz), session.Time);
        var plateau = new Plateau(step.FrequencyHz);
        var ending = await run.Follow(step.FrequencyHz, plateau.Enough, session.RampLimit(step.FrequencyHz));
        var stopAt = run.Elapsed;
        ending ??= await run.Stop();
        hold.Release(HoldEnd.StepDone);
        await session.Keep(step.Id, run.Samples);
        if (ending is not null)
        {
            return session.Ending(step, ending);
        }

        var stopped = run.Samples.First(s => s.At >= stopAt && (Standstill.Is(s.Status) || s == run.Samples[^1])).At - stopAt;
        return await Compare(session, step, run.Samples, plateau.Reached, stopped);
    }

    /// <summary>Holds a run-up and stop against the rehearsal.</summary>
    /// <param name="session">The first run.</param>
    /// <param name="step">The step.</param>
    /// <param name="samples">What was read all along.</param>
    /// <param name="reached">From the run command to the frequency asked for, or null.</param>
    /// <param name="stopped">From the stop command to standstill.</param>
    public static async Task<StepEnding> Compare(FirstRunSession session, FirstRunStep.Ramps step, IReadOnlyList<RunSample> samples, TimeSpan? reached, TimeSpan stopped)
    {
        var predicted = session.Task.Predictions.Ramp(step.FrequencyHz, step.Coupling);
        if (predicted is not null)
        {
            await session.Records.Append(session.Task.Tag, new RecordBody.Trend(step.Id, predicted.Columns, predicted.Rows, Predicted: true), CancellationToken.None);
        }

        var outside = new List<string>();
        foreach (var (reading, name, unit, expected) in RampReadings.All)
        {
            double? measured = reading switch
            {
                RampReading.PeakCurrent => samples.Max(s => s.Status.OutputCurrentA),
                RampReading.PeakDcBus => samples.Max(s => s.Status.DcBusV),
                RampReading.TimeToSpeed => reached?.TotalSeconds,
                RampReading.TimeToStop => stopped.TotalSeconds,
                _ => throw new InvalidOperationException("The set of readings is closed."),
            };
            if (await session.Take(step.Id, name, unit, expected(predicted), measured))
            {
                outside.Add(name);
            }
        }

        return outside.Count == 0 ? new StepEnding.Passed() : new StepEnding.Failed($"outside what is expected: {string.Join(", ", outside)}");
    }
}
