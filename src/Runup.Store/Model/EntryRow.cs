namespace Runup.Store.Model;

/// <summary>A row of the record, as stored.</summary>
internal sealed class EntryRow
{
    public required long Sequence { get; init; }

    public required string At { get; init; }

    public required string Tag { get; init; }

    public required string Hash { get; init; }

    public required string Body { get; init; }
}
