using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Handover;

/// <summary>Hears a set's entries one after another and tells their story.</summary>
internal sealed class RecordTelling
{
    private readonly List<At<RecordBody.Confirmed>> confirmations = [];
    private readonly List<At<RecordBody.FindingAccepted>> accepted = [];
    private readonly List<string> order = [];
    private readonly Dictionary<string, StepStory> steps = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WriteStory> writes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> held = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> eyes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, At<RecordBody.ParametersRead>> found = new(StringComparer.Ordinal);
    private RecordStory story = new();
    private EntryStory entry = new();
    private bool entering;
    private bool cycled;

    public void Hear(Recorded recorded)
    {
        story = story with { Head = new ChainHead(recorded.Sequence, recorded.At, recorded.Hash, (story.Head?.Entries ?? 0) + 1, story.Head?.First ?? recorded.At) };
        switch (recorded.Body)
        {
            case RecordBody.JobTaken job:
                story = story with { Job = new(recorded.At, job) };
                break;
            case RecordBody.Confirmed confirmed:
                confirmations.Add(new(recorded.At, confirmed));
                break;
            case RecordBody.FindingAccepted acceptance:
                accepted.RemoveAll(a => string.Equals(a.Body.Finding, acceptance.Finding, StringComparison.Ordinal));
                accepted.Add(new(recorded.At, acceptance));
                break;
            case RecordBody.ControlLeft control:
                story = story with { Control = new(recorded.At, control) };
                break;
            case RecordBody.ParametersRead read:
                Read(new(recorded.At, read));
                break;
            case RecordBody.ParameterSeen seen:
                Hold(seen.Parameter, seen.Raw, seen.SeenBy);
                break;
            case RecordBody.StepBegun or RecordBody.ReadingTaken or RecordBody.Trend or RecordBody.StepEnded:
                FirstRun(recorded);
                break;
            default:
                Entry(recorded);
                break;
        }
    }

    public RecordStory Story() => story with
    {
        AsLeft = held,
        ByEye = eyes,
        Entry = entry with { Writes = writes },
        Steps = [.. order.Select(id => steps[id])],
        Confirmations = confirmations,
        Accepted = accepted,
    };

    private void Read(At<RecordBody.ParametersRead> read)
    {
        // Of a drive that was put in another's place, what it was found with counts, and nothing of the other's.
        if (!string.Equals(story.LastRead?.Body.Identity, read.Body.Identity, StringComparison.Ordinal))
        {
            held.Clear();
            eyes.Clear();
        }

        found[read.Body.Identity] = found.TryGetValue(read.Body.Identity, out var first) ? AndWhatWasNotLookedAt(first, read) : read;
        story = story with { AsFound = found[read.Body.Identity], LastRead = read };
        if (read.Body.Moment is Moments.AfterPowerCycle && cycled)
        {
            entry = entry with { Kept = read };
        }

        foreach (var (number, value) in read.Body.Values)
        {
            Hold(number, value, read.Body.SeenBy);
        }
    }

    // What a person did not look at first is still as found when it is read later, as long as nothing was written.
    private At<RecordBody.ParametersRead> AndWhatWasNotLookedAt(At<RecordBody.ParametersRead> first, At<RecordBody.ParametersRead> later) => writes.Count > 0 ? first : first with
    {
        Body = first.Body with
        {
            Values = later.Body.Values.Concat(first.Body.Values.Where(v => v.Value is not null)).GroupBy(v => v.Key, v => v.Value, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal),
        },
    };

    private void Hold(string number, long? value, string? seenBy = null)
    {
        eyes.Remove(number);
        if (value is not null && seenBy is not null)
        {
            eyes[number] = seenBy;
        }

        if (value is { } raw)
        {
            held[number] = raw;
        }
        else
        {
            held.Remove(number);
        }
    }

    private void Entry(Recorded recorded)
    {
        switch (recorded.Body)
        {
            case RecordBody.EntryBegun begun:
                entering = true;
                entry = entry with { Begun = entry.Begun ?? recorded.At, Resumed = entry.Resumed + (begun.Resumed ? 1 : 0), SheetSha256 = begun.SheetSha256, Ended = null };
                break;
            case RecordBody.WriteIntended intended:
                writes[intended.Parameter] = new(recorded.At, intended.Raw, null);
                if (entering)
                {
                    cycled = false;
                    entry = entry with { Kept = null };
                }

                Hold(intended.Parameter, null);
                break;
            case RecordBody.WriteEnded ended:
                writes[ended.Parameter] = writes.TryGetValue(ended.Parameter, out var write) ? write with { Ended = ended } : new(recorded.At, ended.ReadBack ?? 0, ended);
                Hold(ended.Parameter, ended is { Outcome: "verified", ReadBack: null } ? writes[ended.Parameter].Raw : ended.ReadBack, ended.SeenBy);
                break;
            case RecordBody.StoreAsked stored:
                entry = entry with { Stored = stored.Outcome };
                break;
            case RecordBody.PowerCycleSeen:
                cycled = true;
                entry = entry with { PowerCycled = recorded.At };
                break;
            case RecordBody.EntryEnded ended:
                entering = false;
                entry = entry with { Ended = new(recorded.At, ended) };
                break;
        }
    }

    private void FirstRun(Recorded recorded)
    {
        switch (recorded.Body)
        {
            case RecordBody.StepBegun begun:
                steps[begun.Step] = Fresh(begun.Step, recorded.At) with { RunBy = begun.RunBy, Attempts = steps.TryGetValue(begun.Step, out var before) ? before.Attempts + 1 : 1 };
                break;
            case RecordBody.ReadingTaken reading:
                Change(reading.Step, recorded.At, s => s with { Readings = [.. s.Readings.Where(r => !string.Equals(r.Quantity, reading.Quantity, StringComparison.Ordinal)), reading] });
                break;
            case RecordBody.Trend { Predicted: true } trend:
                Change(trend.Step, recorded.At, s => s with { Predicted = trend });
                break;
            case RecordBody.Trend trend:
                Change(trend.Step, recorded.At, s => s with { Measured = trend });
                break;
            case RecordBody.StepEnded ended:
                Change(ended.Step, recorded.At, s => s with { Ended = ended });
                break;
        }
    }

    private void Change(string id, DateTimeOffset at, Func<StepStory, StepStory> change) =>
        steps[id] = change(steps.TryGetValue(id, out var step) ? step : Fresh(id, at));

    private StepStory Fresh(string id, DateTimeOffset at)
    {
        if (!order.Contains(id, StringComparer.Ordinal))
        {
            order.Add(id);
        }

        return new StepStory { Step = id, Title = id.Replace('-', ' '), Begun = at };
    }
}
