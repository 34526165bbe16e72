using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>Writes the job's own values back, motor at standstill, run source last, and proves them.</summary>
internal static class PutBack
{
    private const string Moment = "as-left";

    // Drives hold their output for a moment at 0 Hz and take no parameters meanwhile.
    private static readonly TimeSpan AfterStop = TimeSpan.FromSeconds(1);

    // After a trip the shaft runs out by itself.
    private static readonly TimeSpan RunOut = TimeSpan.FromMinutes(2);

    /// <summary>Parameters that do not hold the job's own value afterwards, with why.</summary>
    public static async Task<IReadOnlyDictionary<string, string>> Run(FirstRunSession session, CancellationToken cancellation)
    {
        await session.Records.Append(session.Task.Tag, new RecordBody.StepBegun(GuidedSettings.PutBackStep), CancellationToken.None);
        var why = await Write(session, cancellation);
        var left = session.Own.Numbers.Where(n => session.Held[n] != session.Own[n])
            .ToDictionary(n => n, _ => why ?? "a later reading differs", StringComparer.Ordinal);
        if (left.Count == 0)
        {
            session.Own = ParameterValues.Empty;
        }

        await session.Records.Append(session.Task.Tag, new RecordBody.StepEnded(GuidedSettings.PutBackStep, left.Count == 0 ? "passed" : "failed", why), CancellationToken.None);
        return left;
    }

    private static async Task<string?> Write(FirstRunSession session, CancellationToken cancellation)
    {
        await Task.Delay(AfterStop, session.Time, cancellation);
        if (!await Standstill.Seen(session.Link, RunOut, session.Time, cancellation))
        {
            return "the motor was not seen to stand";
        }

        List<ToConfirm> checks = [new("at-standstill", "The shaft stands still.", GuidedSettings.PutBackStep), .. Confirming.BeforeTheShaftMayMove(GuidedSettings.PutBackStep)];
        if (await Confirming.All(checks, session.Task.Tag, session.Person, session.Records, null, cancellation) is { } unconfirmed)
        {
            return unconfirmed;
        }

        string? first = null;
        foreach (var parameter in EntryOrder.Of(session.Task.Profile).Where(p => session.Own[p.Number] is { } own && session.Held[p.Number] != own))
        {
            // One that fails does not keep the others from being put back; without a link none can.
            if (await ProvenLine.Write(session, new(parameter, session.Own[parameter.Number]!.Value), cancellation) is { } failed)
            {
                first ??= failed.Remark;
                if (failed is StepEnding.Ends { Ending: FirstRunEnding.LinkFailed })
                {
                    return first;
                }
            }
        }

        return await Prove(session, cancellation) ?? first;
    }

    private static async Task<string?> Prove(FirstRunSession session, CancellationToken cancellation)
    {
        var (values, lost) = await session.Link.ReadAll(session.Task.Kept, cancellation);
        if (values is null)
        {
            return lost;
        }

        session.Held = ParameterValues.From(values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value)));
        await session.Records.Append(session.Task.Tag, new RecordBody.ParametersRead(Moment, session.Identity, values), cancellation);
        return null;
    }
}
