using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>One line written for the guided run or back from it: behind the gate of the drive's state, journalled, read back.</summary>
internal static class ProvenLine
{
    /// <summary>Null when verified, else how the step ends.</summary>
    public static async Task<StepEnding?> Write(FirstRunSession session, EntryLine line, CancellationToken cancellation)
    {
        switch (WriteGate.Judge(await session.Link.Status(cancellation)))
        {
            case WriteGate.Refused refused:
                return new StepEnding.Ends(new FirstRunEnding.RefusedForSafety(refused.Why), refused.Why);
            case WriteGate.NoLink lost:
                return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost.Why), lost.Why);
        }

        var result = await new ProvenWrite(session.Task.Tag, session.Link, session.Records).Of(line.Parameter, session.Held[line.Number], line.Raw);
        session.Held = result.ReadBack is { } raw ? session.Held.With(line.Number, raw) : session.Held.Without(line.Number);
        var why = $"{line.Number} is {result.Outcome.Name}: {result.Outcome.Why}";
        return result switch
        {
            { Outcome: WriteOutcome.Verified } => null,
            { LinkLost: { } gone } => new StepEnding.Ends(new FirstRunEnding.LinkFailed(gone), why),
            _ => new StepEnding.Ends(new FirstRunEnding.RefusedForSafety(why), why),
        };
    }
}
