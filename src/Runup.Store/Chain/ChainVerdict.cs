namespace Runup.Store.Chain;

/// <summary>What came of computing the record's chain again; a closed set.</summary>
public abstract record ChainVerdict
{
    private ChainVerdict()
    {
    }

    /// <summary>Every entry agrees with its hash and with the one before.</summary>
    /// <param name="Entries">How many there are.</param>
    /// <param name="Head">Hash of the last, or 64 zeros where there is none.</param>
    public sealed record Intact(long Entries, string Head) : ChainVerdict;

    /// <summary>An entry was changed, or one before it is missing.</summary>
    /// <param name="Sequence">The first entry that does not agree.</param>
    /// <param name="What">What does not agree, in a sentence.</param>
    public sealed record Broken(long Sequence, string What) : ChainVerdict;

    /// <summary>The chain is in itself intact, but a head that was printed is not in it: entries are missing at its end, or it is another record.</summary>
    /// <param name="Entries">How many there are.</param>
    /// <param name="Head">Hash of the last.</param>
    /// <param name="PrintedHead">The head that was looked for.</param>
    public sealed record HeadMissing(long Entries, string Head, string PrintedHead) : ChainVerdict;

    /// <summary>The record could not be read to its end.</summary>
    /// <param name="What">Why, in a sentence.</param>
    public sealed record Unreadable(string What) : ChainVerdict;
}
