namespace Runup.Commissioning.Entry;

/// <summary>Where a link to the drive is opened; one attempt for each call, never a loop.</summary>
public interface IDriveLinks
{
    /// <summary>Opens a link.</summary>
    Task<LinkOpening> Open(CancellationToken cancellation);
}

/// <summary>What came of opening a link; a closed set.</summary>
public abstract record LinkOpening
{
    private LinkOpening()
    {
    }

    /// <summary>The link stands.</summary>
    /// <param name="Link">The link, owned by the caller.</param>
    public sealed record Opened(IDriveLink Link) : LinkOpening;

    /// <summary>There is no link.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record Failed(string Why) : LinkOpening;
}
