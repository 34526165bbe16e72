using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>Sets what the guided run needs, each write journalled and read back, after the drive was found to hold the sheet.</summary>
internal static class SetUpStep
{
    public static async Task<StepEnding> Run(FirstRunSession session, CancellationToken cancellation)
    {
        var task = session.Task;
        if (await ReadAll(session, cancellation) is { } lost)
        {
            return Lost(lost);
        }

        var record = await session.Records.Of(task.Tag, cancellation);
        if (!EntryHistory.Of(record).AsFound.ContainsKey(session.Identity))
        {
            // Keyed in by hand and never read before: this is what was found, and it is kept before anything is written.
            var found = task.Kept.ToDictionary(p => p.Number, p => session.Held[p.Number], StringComparer.Ordinal);
            await session.Records.Append(task.Tag, new RecordBody.ParametersRead(Moments.AsFound, session.Identity, found), cancellation);
        }

        session.Own = FirstRunHistory.Of(record).Own;
        var own = session.Held.With(session.Own);
        if (task.Sheet.Lines.Where(l => own[l.Number] != l.Raw).Select(l => l.Number).ToList() is { Count: > 0 } missing)
        {
            return StepEnding.Refused($"the drive does not hold the sheet ({string.Join(", ", missing)}); enter it first");
        }

        var (lines, why) = GuidedSettings.For(task, session.Plan.Limits, session.Held);
        if (lines is null)
        {
            return StepEnding.Refused(why!);
        }

        // What another master left in the command word must not run the motor once the bus is the source.
        if (await session.Link.Command(new LinkCommand.Coast(), cancellation) is LinkReply<Written>.Unanswered silent)
        {
            return Lost(silent.Why);
        }

        foreach (var line in lines.Lines.Where(l => session.Held[l.Number] != l.Raw))
        {
            session.Own = session.Own[line.Number] is null && session.Held[line.Number] is { } before ? session.Own.With(line.Number, before) : session.Own;
            if (await ProvenLine.Write(session, line, cancellation) is { } failed)
            {
                return failed;
            }
        }

        return await Proved(session, cancellation);
    }

    public static async Task<string?> ReadAll(FirstRunSession session, CancellationToken cancellation)
    {
        var (values, lost) = await session.Link.ReadAll(session.Task.Kept, cancellation);
        if (values is not null)
        {
            session.Held = ParameterValues.From(values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value)));
        }

        return lost;
    }

    private static async Task<StepEnding> Proved(FirstRunSession session, CancellationToken cancellation)
    {
        if (await ReadAll(session, cancellation) is { } lost)
        {
            return Lost(lost);
        }

        if (GuidedSettings.WhyNot(session.Task, session.Plan.Limits, session.Held) is { } why)
        {
            return StepEnding.Refused(why);
        }

        var read = SettingsReader.Read(session.Task.Profile, session.Task.Size, session.Held);
        session.BusTimeout = TimeSpan.FromSeconds(read.Number(Setting.BusTimeout)!.Value);
        return new StepEnding.Passed();
    }

    private static StepEnding.Ends Lost(string why) => new(new FirstRunEnding.LinkFailed(why), why);
}
