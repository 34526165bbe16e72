namespace Runup.Store;

/// <summary>What came of opening the record of a site folder; a closed set.</summary>
/// <param name="What">The answer as a sentence for a person, with what would do; empty where all is well.</param>
public abstract record StoreOpening(string What)
{
    /// <summary>The record is open and its chain intact.</summary>
    /// <param name="Records">The record; whoever asked for it disposes of it.</param>
    public sealed record Opened(SqliteRecords Records) : StoreOpening(string.Empty);

    /// <summary>Another program writes this record now.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record InUse(string What) : StoreOpening(What);

    /// <summary>There is no record in the folder, and reading it alone was asked for.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record Absent(string What) : StoreOpening(What);

    /// <summary>The folder lies where a record can't be kept.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record UnfitFolder(string What) : StoreOpening(What);

    /// <summary>The file is no record, or can't be read as one.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record Damaged(string What) : StoreOpening(What);

    /// <summary>An entry was changed or removed after it was recorded.</summary>
    /// <param name="Sequence">The first entry that does not agree.</param>
    /// <param name="What">The sentence for a person.</param>
    public sealed record ChainBroken(long Sequence, string What) : StoreOpening(What);

    /// <summary>A newer Runup wrote the record.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record Newer(string What) : StoreOpening(What);

    /// <summary>The folder or file can't be used: missing, not permitted, disk full, disk failed.</summary>
    /// <param name="What">The sentence for a person.</param>
    public sealed record Unreachable(string What) : StoreOpening(What);
}

/// <summary>What a record is opened for.</summary>
public enum StoreUse
{
    /// <summary>To append: one program at a time.</summary>
    Append,

    /// <summary>To read only, also while another appends.</summary>
    ReadOnly,
}
