namespace Runup.Commissioning.Entry;

/// <summary>What came of a write, as the read-back tells it; a closed set.</summary>
public abstract record WriteOutcome
{
    private WriteOutcome()
    {
    }

    /// <summary>The outcome's name in the record and in JSON.</summary>
    public string Name => this switch
    {
        Verified => "verified",
        VerifiedByEye => "verified-by-eye",
        Differs => "differs",
        Refused => "refused",
        Unverified => "unverified",
        _ => throw new InvalidOperationException("The set of outcomes is closed."),
    };

    /// <summary>Why it is not verified, or null.</summary>
    public abstract string? Why { get; }

    /// <summary>Whether a record's outcome says that the value stood as it was to stand, read back or seen.</summary>
    public static bool IsProof(string name) => name is "verified" or "verified-by-eye";

    /// <summary>Judges a write by its reply and by what was read afterwards. The value read decides wherever there is one.</summary>
    /// <param name="raw">What was written.</param>
    /// <param name="write">The reply to the write.</param>
    /// <param name="readBack">The value read afterwards; null in the answer where the drive does not give it.</param>
    public static WriteOutcome Judge(long raw, LinkReply<Written> write, LinkReply<long?> readBack) => (write, readBack) switch
    {
        (_, LinkReply<long?>.Answered { Value: { } held }) when held == raw => new Verified(),
        (LinkReply<Written>.Refused refused, _) => new Refused(refused.Why),
        (LinkReply<Written>.Unanswered lost, LinkReply<long?>.Answered { Value: { } held }) => new Differs(held, $"no reply to the write ({lost.Why}), and the drive holds another value"),
        (_, LinkReply<long?>.Answered { Value: { } held }) => new Differs(held, "the drive took the write and holds another value"),
        (_, LinkReply<long?>.Answered) => new Unverified("the drive does not give the value back"),
        (_, LinkReply<long?>.Refused refused) => new Unverified($"the drive refuses the read-back: {refused.Why}"),
        (_, LinkReply<long?>.Unanswered lost) => new Unverified($"no read-back: {lost.Why}"),
        _ => throw new InvalidOperationException("The set of replies is closed."),
    };

    /// <summary>The drive holds what was written.</summary>
    public sealed record Verified : WriteOutcome
    {
        /// <inheritdoc/>
        public override string? Why => null;
    }

    /// <summary>A person entered it and saw the drive's display show it; nothing was read over a link.</summary>
    public sealed record VerifiedByEye : WriteOutcome
    {
        /// <inheritdoc/>
        public override string? Why => null;
    }

    /// <summary>The drive holds another value.</summary>
    /// <param name="Held">What it holds.</param>
    /// <param name="Reason">Why that matters, in words.</param>
    public sealed record Differs(long Held, string Reason) : WriteOutcome
    {
        /// <inheritdoc/>
        public override string Why => Reason;
    }

    /// <summary>The drive refused the write.</summary>
    /// <param name="Reason">Its reason, with the exception's number.</param>
    public sealed record Refused(string Reason) : WriteOutcome
    {
        /// <inheritdoc/>
        public override string Why => Reason;
    }

    /// <summary>Nobody knows what the drive holds.</summary>
    /// <param name="Reason">Why not.</param>
    public sealed record Unverified(string Reason) : WriteOutcome
    {
        /// <inheritdoc/>
        public override string Why => Reason;
    }
}
