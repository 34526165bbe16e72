using Runup.Commissioning.Records;

namespace Runup.Commissioning.Handover;

/// <summary>A step of the first run, in its last attempt.</summary>
public sealed record StepStory
{
    /// <summary>The step's id.</summary>
    public required string Step { get; init; }

    /// <summary>What is done in it.</summary>
    public required string Title { get; init; }

    /// <summary>How often it was begun.</summary>
    public int Attempts { get; init; } = 1;

    /// <summary>When its last attempt began.</summary>
    public required DateTimeOffset Begun { get; init; }

    /// <summary>Who ran the motor in it, at the panel or from the machine's own control; null where Runup did, while a person held.</summary>
    public string? RunBy { get; init; }

    /// <summary>How it ended; null where the record breaks off before.</summary>
    public RecordBody.StepEnded? Ended { get; init; }

    /// <summary>Its readings, in order.</summary>
    public IReadOnlyList<RecordBody.ReadingTaken> Readings { get; init; } = [];

    /// <summary>What was read all along, or null.</summary>
    public RecordBody.Trend? Measured { get; init; }

    /// <summary>What was computed for it, or null.</summary>
    public RecordBody.Trend? Predicted { get; init; }

    /// <summary>By whom its readings were typed in, and from what they were read; null where they came over a link.</summary>
    public string? Typed
    {
        get
        {
            var sources = from reading in Readings
                          where reading is { TypedBy: not null, ReadFrom: not null }
                          group reading.Quantity by (reading.TypedBy, reading.ReadFrom) into alike
                          orderby alike.Count() descending
                          select alike;
            var told = sources.ToList();
            return told.Count == 0 ? null : string.Join("; ", told.Select((s, place) => place == 0
                ? $"Typed in by {s.Key.TypedBy} from {s.Key.ReadFrom}"
                : $"from {s.Key.ReadFrom}{(s.Key.TypedBy == told[0].Key.TypedBy ? "" : $" by {s.Key.TypedBy}")}: {string.Join(", ", s)}")) + ".";
        }
    }

    /// <summary>Whether the motor turns its machine in it.</summary>
    public bool IsCoupled => Step.StartsWith("coupled", StringComparison.Ordinal) || Step is "couple";

    /// <summary>Whether the machine is run in it from its own control, and Runup only reads. Such a machine is never uncoupled for the first run.</summary>
    public bool IsFromOwnControl => Step.StartsWith("own-control", StringComparison.Ordinal);

    /// <summary>Whether it passed.</summary>
    public bool IsPassed => Ended is { Outcome: "passed" };
}
