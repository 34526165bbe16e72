namespace Runup.Commissioning.Handover;

/// <summary>A parameter as found, as left and from the factory, each as the drive's display shows it, with its unit.</summary>
public sealed record ParameterRow
{
    /// <summary>The make's number.</summary>
    public required string Number { get; init; }

    /// <summary>The name on the make's list.</summary>
    public required string Name { get; init; }

    /// <summary>Its value from the factory.</summary>
    public required string Default { get; init; }

    /// <summary>Its value before anything was written, or null where it is not known.</summary>
    public string? AsFound { get; init; }

    /// <summary>Its value when Runup left, or null where it is not known.</summary>
    public string? AsLeft { get; init; }

    /// <summary>The value as left, in counts, or null.</summary>
    public long? Raw { get; init; }

    /// <summary>The value that the sheet asks for; null where the plan leaves the parameter alone.</summary>
    public string? Wanted { get; init; }

    /// <summary>Whether the value as left is another than the one as found.</summary>
    public bool IsChanged { get; init; }

    /// <summary>Whether the value as left is another than the factory's, or not known.</summary>
    public bool DiffersFromDefault { get; init; }

    /// <summary>Whether the value as left is another than the sheet's.</summary>
    public bool DiffersFromSheet { get; init; }

    /// <summary>The value that the last write was of, or null where none was sent.</summary>
    public string? LastWritten { get; init; }

    /// <summary>Whether it was read as the sheet asks after the drive was off and on; null where the sheet does not ask.</summary>
    public bool? IsKept { get; init; }

    /// <summary>On whose look at the display alone the value as left stands; null where it was read over a link.</summary>
    public string? SeenBy { get; init; }

    /// <summary>Whether nobody ever looked at it: nothing is known of it, and nothing was written to it.</summary>
    public bool IsNotLookedAt { get; init; }

    /// <summary>What came of its last write (verified, verified-by-eye, differs, refused, unverified), or null where none was sent.</summary>
    public string? Written { get; init; }

    /// <summary>Why a write is not verified, or null.</summary>
    public string? Why { get; init; }
}
