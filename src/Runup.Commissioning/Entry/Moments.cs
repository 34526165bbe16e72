namespace Runup.Commissioning.Entry;

/// <summary>When all parameters of a drive were read, as the record names it.</summary>
public static class Moments
{
    /// <summary>Before anything was ever written to this drive.</summary>
    public const string AsFound = "as-found";

    /// <summary>Before an entry, of a drive whose values as found are kept already.</summary>
    public const string BeforeEntry = "before-entry";

    /// <summary>After the last write.</summary>
    public const string AfterWrite = "after-write";

    /// <summary>After the drive was off and on again.</summary>
    public const string AfterPowerCycle = "after-power-cycle";

    /// <summary>Read for its own sake, of a drive whose values as found are kept already.</summary>
    public const string Read = "read";
}

/// <summary>How telling the drive to keep its parameters ended, as the record names it.</summary>
public static class StoreOutcomes
{
    /// <summary>The drive took it.</summary>
    public const string Accepted = "accepted";

    /// <summary>The drive refused.</summary>
    public const string Refused = "refused";

    /// <summary>No answer came.</summary>
    public const string Unanswered = "unanswered";

    /// <summary>The drive keeps each value at once.</summary>
    public const string NotNeeded = "not-needed";

    /// <summary>A person set it at the drive, and says so.</summary>
    public const string ByHand = "by-hand";

    internal static string Of(LinkReply<Written> reply) => reply switch
    {
        LinkReply<Written>.Answered => Accepted,
        LinkReply<Written>.Refused => Refused,
        _ => Unanswered,
    };
}
