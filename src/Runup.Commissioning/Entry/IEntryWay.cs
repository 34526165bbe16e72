namespace Runup.Commissioning.Entry;

/// <summary>How the steps of an entry are done: over a link, or by a person at the drive's display.</summary>
internal interface IEntryWay
{
    /// <summary>Finds out what the drive holds, keeps it in the record, and settles what an entry that was cut off had done.</summary>
    Task<EntryEnding?> FindOut(EntryHistory history, CancellationToken cancellation);

    /// <summary>Null where these lines may be written now; else how the entry ends.</summary>
    Task<EntryEnding?> MayWrite(IReadOnlyList<EntryLine> lines, CancellationToken cancellation);

    /// <summary>Has each line that differs entered and proved; how the entry ends where it can't go on, else null.</summary>
    Task<EntryEnding?> Write(CancellationToken cancellation);

    /// <summary>Has the drive keep it, takes its power away and looks again; how the entry ends where that is not proved, else null.</summary>
    /// <param name="before">What an earlier entry did that was cut off after the last write; null where something was written now.</param>
    /// <param name="cancellation">Stops the entry.</param>
    Task<EntryEnding?> Keep(OpenEntry? before, CancellationToken cancellation);

    /// <summary>Says something to the person who watches.</summary>
    void Tell(string words);
}
